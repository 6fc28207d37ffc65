using System.Collections.Immutable;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules;

/// <summary>A season as rules see it: its weeks with all they ask for, its matches in order, its absences.</summary>
internal sealed class Plan
{
    /// <summary>A week of fewer days is none to compare by.</summary>
    public const int FewestDays = 4;

    private readonly ImmutableArray<int> sinceAbsence;

    public Plan(Season season, Setup setup)
    {
        Season = season;
        Setup = setup;
        Matches = [.. season.Matches.Where(match => match.IsOnOneDay && match.Status != MatchStatus.Conditional)];
        Events = [.. season.Events];
        var phases = season.Phases;
        var inWeeks = season.AllMatches.Where(match => match.Day is not null && !match.IsOff)
            .Select(match => (Week: season.WeekOf(match.Day!.Value), Match: match)).Where(pair => pair.Week is not null)
            .ToLookup(pair => pair.Week!.Number, pair => pair.Match);
        Weeks = [.. season.Weeks.Select(week => PlanWeek.Of(season, setup, week, PhaseOf(phases, week), [.. inWeeks[week.Number]], Events))];
        Sessions = [.. season.Sessions.Where(session => !session.IsCancelled)];
        sinceAbsence = [.. Counted()];
    }

    public Season Season { get; }

    public Setup Setup { get; }

    public ImmutableArray<PlanWeek> Weeks { get; }

    /// <summary>
    /// Matches played on one known day, in order. Those that depend on another match count for their week's load and not here: a
    /// gap to a match that may never be played is no finding.
    /// </summary>
    public ImmutableArray<Match> Matches { get; }

    public IEnumerable<Match> Official => Matches.Where(match => match.IsOfficial);

    public ImmutableArray<Event> Events { get; }

    /// <summary>Sessions that take place, by day and start.</summary>
    public ImmutableArray<Session> Sessions { get; }

    public Athletes Athletes { get => field ??= new Athletes(Season, Sessions); }

    /// <summary>The names of groups, null for everyone.</summary>
    public string? NamesOf(ValueList<GroupId>? groups) =>
        groups is null ? null : string.Join(", ", groups.Select(group => Season.Groups.FirstOrDefault(line => line.Id == group)?.Name ?? group.Text));

    /// <summary>What rules of days are against, asked of a session wherever it might lie.</summary>
    public ImmutableArray<Func<Session, bool>> RulesOfDays { get => field.IsDefault ? field = BetterSession.Rules(this) : field; }

    /// <summary>What was found to be better for a session, see <see cref="BetterSession"/>.</summary>
    public Dictionary<SessionId, ValueList<SeasonEdit>> Better { get; } = [];

    public bool HasPhases => Weeks.Any(week => week.Phase is not null);

    public bool HasEmphasis => Weeks.Any(week => week.HasEmphasis);

    /// <summary>What a rule that reads emphasis says where nobody entered any.</summary>
    public IEnumerable<Look> WithoutEmphasis => Weeks.Any(week => week.IsTraining) ? [new TooLittle(Place.Of(Weeks[0], Weeks[^1]), "missing.emphasis")] : [];

    /// <summary>AU that are one point: one per cent of the squad's normal hard week.</summary>
    public decimal Point => Setup.ReferenceWeek.Au / 100m;

    public PlanWeek? WeekOf(DateOnly day) => Season.WeekOf(day) is { } week ? Weeks[week.Number - 1] : null;

    /// <summary>The next match that a session comes before: on its own day where it kicks off later, or where nobody knows when.</summary>
    public Match? NextMatch(Session session)
    {
        for (var at = FirstFrom(session.Day); at < Matches.Length; at++)
            if (Matches[at].Day > session.Day || Matches[at].KickOff is not { } kickOff || kickOff >= session.Begins) return Matches[at];
        return null;
    }

    /// <summary>The last match that a session comes after: on its own day where it kicked off before, or where nobody knows when.</summary>
    public Match? LastMatch(Session session)
    {
        for (var at = FirstFrom(session.Day.AddDays(1)) - 1; at >= 0; at--)
            if (Matches[at].Day < session.Day || Matches[at].KickOff is not { } kickOff || kickOff < session.Begins) return Matches[at];
        return null;
    }

    public bool HasMatchOn(DateOnly day) => FirstFrom(day) is var at && at < Matches.Length && Matches[at].Day == day;

    /// <summary>What rules about our sessions say of the weeks before matches in which none is laid out.</summary>
    public IEnumerable<Look> WithoutSessions => Matches.Where(match => WeekOf(match.Day!.Value.AddDays(-1)) is { HasOurs: false }).Select(match => new TooLittle(Place.Of(this, match), "missing.sessions"));

    /// <summary>The week before; null for the first.</summary>
    public PlanWeek? Before(PlanWeek week) => week.Number > 1 ? Weeks[week.Number - 2] : null;

    /// <summary>The last weeks before a week with team training, as many as there are up to a count: what a week off leaves of a mean says nothing of what the squad is used to.</summary>
    public IEnumerable<PlanWeek> TrainedBefore(PlanWeek week, int count) => Weeks.Take(week.Number - 1).Where(other => other.IsTraining).TakeLast(count);

    /// <summary>
    /// Full weeks since the squad came back from its last absence of the length that restarts comparisons; the first week back has 0.
    /// A week of fewer than four days, as at the start of a season, counts for none.
    /// </summary>
    public int SinceAbsence(PlanWeek week) => sinceAbsence[week.Number - 1];

    /// <summary>Days off right before a week, without end at the start of a season unless training was kept up.</summary>
    public int DaysAwayBefore(PlanWeek week)
    {
        var away = Weeks.Take(week.Number - 1).Reverse().TakeWhile(other => !other.IsTraining).ToList();
        return away.Count == week.Number - 1 && sinceAbsence[0] == 0 ? int.MaxValue : away.Sum(other => other.Days.Length);
    }

    /// <summary>The last normal weeks before a week, latest first, as many as there are up to a count; in the competition those of the competition with exactly one match, like with like.</summary>
    public List<PlanWeek> NormalBefore(PlanWeek week, int count) =>
        [.. Weeks.Take(week.Number - 1).Reverse().Where(other => other.IsNormal && other.Training > 0 && (!week.IsCompetition || other.IsCompetition && other.Matches.Length == 1)).Take(count)];

    /// <summary>The runs of weeks next to each other for which something holds.</summary>
    public IEnumerable<List<PlanWeek>> Runs(Func<PlanWeek, bool> holds)
    {
        List<PlanWeek> run = [];
        foreach (var week in Weeks)
        {
            if (holds(week)) run.Add(week);
            else if (run.Count > 0)
            {
                yield return run;
                run = [];
            }
        }
        if (run.Count > 0) yield return run;
    }

    /// <summary>
    /// The first matches of the clusters of key matches that a taper is wanted for: matches close together are one, and going back
    /// from the last cluster each is kept that leaves room, up to the most.
    /// </summary>
    public IReadOnlyList<Match> TaperedFor { get => field ??= [.. Rules.OfSeason.PeaksTooMany.Wanted(this)]; }

    /// <summary>Edits that bring a kind of quality up to so many exposures in weeks that have fewer; none where the team plans no such quality.</summary>
    public IEnumerable<SeasonEdit> Emphasise(IEnumerable<PlanWeek> weeks, QualityKind kind, decimal exposures) =>
        Setup.Qualities.FirstOrDefault(quality => quality.Kind == kind) is { } quality
            ? SideBySide(weeks.Where(week => week.Exposures(kind) < exposures)).Select(run => new SetEmphasis(run[0].Id, run[^1].Id, quality.Id, (Emphasis)Math.Min((int)exposures, (int)Emphasis.Focus)))
            : [];

    /// <summary>Edits that bring a kind of quality down to so many exposures in weeks that have more.</summary>
    public IEnumerable<SeasonEdit> Ease(IEnumerable<PlanWeek> weeks, QualityKind kind, Emphasis most) =>
        from week in weeks
        from quality in Setup.Qualities
        where quality.Kind == kind && Season.EmphasisOf(week.Id, quality.Id) > most
        select new SetEmphasis(week.Id, week.Id, quality.Id, most);

    private static List<List<PlanWeek>> SideBySide(IEnumerable<PlanWeek> weeks)
    {
        List<List<PlanWeek>> runs = [];
        foreach (var week in weeks)
        {
            if (runs.Count > 0 && runs[^1][^1].Number == week.Number - 1) runs[^1].Add(week);
            else runs.Add([week]);
        }
        return runs;
    }

    /// <summary>AU rounded to a load that a week may have.</summary>
    public static Load LoadOf(decimal au) => new((int)Math.Clamp(Math.Round(au, MidpointRounding.AwayFromZero), 0, Load.Most));

    /// <summary>A load in points, rounded to whole ones as it is shown.</summary>
    public decimal Points(decimal au) => Math.Round(au / Point, MidpointRounding.AwayFromZero);

    private int FirstFrom(DateOnly day)
    {
        var (first, end) = (0, Matches.Length);
        while (first < end)
        {
            var middle = (first + end) / 2;
            if (Matches[middle].Day < day) first = middle + 1;
            else end = middle;
        }
        return first;
    }

    private static PhaseRun? PhaseOf(ImmutableArray<PhaseRun> phases, SeasonWeek week) =>
        phases.FirstOrDefault(run => run.First.Number <= week.Number && week.Number <= run.Last.Number);

    private IEnumerable<int> Counted()
    {
        var figures = new Figures(OfAthlete.ReturnAfterBreakVolume.Rule.Id, Setup);
        var longest = figures.Number(OfAthlete.ReturnAfterBreakVolume.MinAbsenceDays);
        // Far back where training was kept over the summer.
        var since = figures.Text(OfAthlete.ReturnAfterBreakVolume.SeasonStart) == OfAthlete.ReturnAfterBreakVolume.Kept ? Frame.MostWeeks : 0;
        var away = 0;
        foreach (var week in Weeks)
        {
            if (!week.IsTraining) away += week.Days.Length;
            else
            {
                if (away >= longest) since = 0;
                away = 0;
            }
            yield return since;
            if (week.IsTraining && week.Days.Length >= FewestDays) since++;
        }
    }
}
