using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;

namespace Seasonwright.Core.Rules.OfAthlete;

/// <summary>Absence days; date of full-training release; number of full team sessions until the next match.</summary>
internal static class SessionsBeforeFirstMatch
{
    public static readonly Figure MinAbsenceDays = Figure.Number("min_absence_days", 8, FigureUnit.Days);
    public static readonly Figure MinSessions = Figure.Number("min_sessions", 6, FigureUnit.Count);
    public static readonly Figure MaxMinutes = Figure.Number("max_minutes", 45, FigureUnit.Minutes);

    public static Rule Rule { get; } = new("sessions-before-first-match")
    {
        Scope = RuleScope.Athlete,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.Bengtsson2020, Sources.ReturnComment],
        Figures = [MinAbsenceDays, MinSessions, MaxMinutes],
        Needs = Needs.Reports,
        LooksAtPlayers = Looks,
    };

    private static IEnumerable<Look> Looks(SquadPlan squad, Figures figures) =>
        from player in squad.Players
        from back in Comeback.Of(player.Reports)
        where back.DaysUntilFull >= figures.Number(MinAbsenceDays)
        let full = back.Full!.Value
        let match = squad.MatchesOf(player).FirstOrDefault(match => match.Day >= full)
        // From the release to the first match, whichever of the days is asked about.
        where match is not null && squad.Span.Overlaps(new DaySpan(full, match.Day!.Value)) && squad.Plan.WeekOf(full) is not null
        select Look(squad, player, back, match, figures);

    private static Look Look(SquadPlan squad, Player player, Comeback back, Match match, Figures figures)
    {
        var day = match.Day!.Value;
        var place = Place.Of(player, squad.Plan.WeekOf(day)!);
        var sessions = new DaySpan(back.Full!.Value, day).Days().SelectMany(one => squad.DayOf(player, one).Fits)
            .Count(fit => fit is { Kind: FitKind.AsPlanned, Session.IsOurs: false } && (fit.Session.Day < day || match.KickOff > fit.Session.Begins));
        if (Judge(back.DaysUntilFull!.Value, sessions, figures) is not { } severity) return new Fine(place);
        // Practices that nobody put on a day may make up for what is missing.
        if (squad.Plan.Weeks.Any(week => week.Days.Last >= back.Full && week.Days.First <= day && !week.HasPractices)) return new TooLittle(place, "missing.practices");
        return new Breach(place, "few", severity, sessions, figures.Number(MinSessions))
        {
            Figure = MinSessions.Name,
            Numbers = [player.Athlete.Name, back.DaysUntilFull, sessions, day, figures.Number(MinSessions)],
        };
    }

    /// <param name="daysAway">Before the return to full training.</param>
    /// <param name="fullSessions">With the team since then, before the match.</param>
    public static Severity? Judge(int daysAway, int fullSessions, Figures figures) =>
        daysAway >= figures.Number(MinAbsenceDays) && fullSessions < figures.Number(MinSessions) ? Severity.Warning : null;
}
