using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>What the coach asks of a proposal and the season does not hold. Everything has a default.</summary>
public sealed record Wishes
{
    /// <summary>Weeks with something that must hold, beside the weeks locked in the season. Where both speak, this does.</summary>
    public ValueList<WeekWish> Weeks { get; init; } = ValueList<WeekWish>.Empty;

    /// <summary>Weeks as they stand: a repaired plan leaves them only for good reason.</summary>
    public ValueList<WeekWish> Kept { get; init; } = ValueList<WeekWish>.Empty;

    /// <summary>What the season's own brief asks for.</summary>
    public static Wishes Of(Season season) => new()
    {
        LargestWeek = season.Brief.LargestWeek.Value,
        Boldness = season.Brief.Boldness,
        Start = season.Brief.Start,
        WeeksBetweenCompetitions = season.Brief.WeeksBetween,
        Tests = season.Brief.Tests,
        Tapers = season.Brief.Tapers ?? [],
        Time = season.Brief.Time ?? [],
    };

    /// <summary>These wishes for a plan that is repaired from a day on: every week stands as it was planned, and only as many weeks around what has happened are open as it takes.</summary>
    /// <param name="stands">The plan as it was agreed, with the calendar it was made for. What was changed in it by hand since is kept to as well.</param>
    /// <param name="now">The season with what has happened.</param>
    public Wishes Repairing(Season stands, Season now, DateOnly from, int keepWeight = UsualKeepWeight)
    {
        var kept = Disruption.Undisrupted(stands, now);
        return this with
        {
            From = from,
            KeepWeight = keepWeight,
            Kept = kept.Weeks.Select(week => new WeekWish(week.Id, kept.PhaseOf(week)?.Phase.Kind, kept.KindOf(week.Id), kept.TargetOf(week.Id))).ToValueList(),
            Stands = kept,
            Disrupted = Disruption.Weeks(stands, now),
            Reach = keepWeight switch { <= 0 => null, < UsualKeepWeight => Solver.Reach.Around(2 * UsualReach), UsualKeepWeight => Solver.Reach.Around(UsualReach), _ => Solver.Reach.Around(UsualReach / 2) },
        };
    }

    /// <summary>Weeks in which something has happened since the plan was made.</summary>
    public ValueList<WeekId> Disrupted { get; init; } = ValueList<WeekId>.Empty;

    /// <summary>The plan that is repaired, with the calendar it was made for; null for a plan that is made anew.</summary>
    public Season? Stands { get; init; }

    /// <summary>So many weeks before and after those are open at most, and the others stay as they are; null for all.</summary>
    public Reach? Reach { get; init; }

    /// <summary>Four weeks, a block, may be open around what has happened. Common practice, no source.</summary>
    private const int UsualReach = 4;

    private const int UsualKeepWeight = 1000;

    /// <summary>As dear as staying gets.</summary>
    public const int HighestKeepWeight = 10_000;

    /// <summary>What is not asked for this once: to see what a condition costs, or to have a plan where all together have none.</summary>
    public Relaxed LeftOut { get; init; } = Relaxed.None;

    /// <summary>How dear it is to leave what stands, per mille of usual, 0 to 10,000: the slider "keep my plan".</summary>
    public int KeepWeight { get; init; } = UsualKeepWeight;

    public ValueList<MatchTaper> Tapers { get; init; } = ValueList<MatchTaper>.Empty;

    /// <summary>The time there is to train, by phase.</summary>
    public ValueList<PhaseTime> Time { get; init; } = ValueList<PhaseTime>.Empty;

    /// <summary>Test days at most; null for as many as the season asks for.</summary>
    public int? Tests { get; init; }

    /// <summary>The most a week may hold, in points, 40 to 200. Weeks whose matches alone weigh more are a fact.</summary>
    public int LargestWeek { get; init; } = Brief.Default.LargestWeek.Value;

    public Boldness Boldness { get; init; }

    /// <summary>How the squad comes into the season; null for the team's figure (rule return-after-break-volume, season_start).</summary>
    public StartLevel? Start { get; init; }

    /// <summary>Weeks that began before this day are facts and stay as they are entered; null plans the whole season.</summary>
    public DateOnly? From { get; init; }

    /// <summary>A stretch of so many whole weeks without an official match parts two competition periods, 2 to 20. Common practice, no source.</summary>
    public int WeeksBetweenCompetitions { get; init; } = Brief.UsualWeeksBetween;
}
