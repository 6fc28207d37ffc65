using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Sessions within 48 h after match end for athletes with >= min_minutes played.</summary>
internal static class DayAfterMatchHard
{
    public static readonly Figure MinMinutes = Figure.Number("min_minutes", 60, FigureUnit.Minutes);
    public static readonly Figure FirstH = Figure.Number("first_h", 36, FigureUnit.Hours);
    public static readonly Figure SecondH = Figure.Number("second_h", 48, FigureUnit.Hours);
    public static readonly Figure MaxRpeFirst = Figure.Number("max_rpe_first", 4, FigureUnit.Rpe);

    public static Rule Rule { get; } = new("day-after-match-hard")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.Confirmed,
        Sources = [Sources.Silva2018, Sources.Silva2018Conclusion],
        Figures = [MinMinutes, FirstH, SecondH, MaxRpeFirst],
        Rising = [[FirstH, SecondH]],
        Needs = Needs.Reports,
        Looks = Looks,
    };

    /// <summary>For athletes who play the whole match; who played how long waits for reports.</summary>
    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        var limits = Limits.Of(figures);
        var unknown = plan.Matches.Where(match => plan.WeekOf(match.Day!.Value.AddDays(1)) is { HasOurs: false, HasPractices: false });
        return BetterSession.Mended(plan, plan.Sessions, session => Judge(plan, session, limits)).Concat(unknown.Select(match => new TooLittle(Place.Of(plan, match), "missing.sessions")));
    }

    internal static Func<Session, bool> Against(Plan plan, Figures figures)
    {
        var limits = Limits.Of(figures);
        return session => Judge(plan, session, limits) is Breach;
    }

    /// <summary>Null for a session that follows no match closely.</summary>
    private static Look? Judge(Plan plan, Session session, Limits limits)
    {
        if (plan.LastMatch(session) is not { } match || HoursApart.After(match, session) is var hours && hours.Count >= limits.Second) return null;
        var isMostTiring = SessionUse.IsHeavy(session, plan.Setup) || SessionContent.IsSprint(session, plan.Setup);
        var isFirst = hours.Count < limits.First;
        var isTooMuch = isFirst
            ? isMostTiring || SessionContent.IsJumps(session) || SessionContent.IsIntervals(session, plan.Setup)
            : isMostTiring;
        var isTooHard = isFirst && session.Rpe.Value > limits.MostRpe;
        if (!isTooMuch && !isTooHard) return new Fine(Place.Of(plan, session));
        if (match.Day == session.Day && match.KickOff is null) return new TooLittle(Place.Of(plan, session), "missing.kick-off");
        return new Breach(Place.Of(plan, session), isTooMuch ? isFirst ? "content" : "second" : "effort", isFirst ? Severity.Warning : Severity.Caution,
            isTooMuch ? hours.Count : session.Rpe.Value, isTooMuch ? isFirst ? limits.First : limits.Second : limits.MostRpe)
        {
            Numbers = [new NamedSession(session), hours, match.Day, isFirst ? limits.First : limits.Second, limits.MostRpe],
            Figure = (isTooMuch ? isFirst ? FirstH : SecondH : MaxRpeFirst).Name,
            Beyond = isTooMuch ? limits.Second - hours.Count : null,
            Whose = plan.NamesOf(session.Groups),
        };
    }

    private readonly record struct Limits(decimal First, decimal Second, decimal MostRpe)
    {
        public static Limits Of(Figures figures) => new(figures.Number(FirstH), Math.Max(figures.Number(FirstH), figures.Number(SecondH)), figures.Number(MaxRpeFirst));
    }
}
