using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules;

/// <summary>The reduced days before a match, told from whole weeks.</summary>
/// <param name="Weeks">The weeks they lie in, in order.</param>
/// <param name="Days">Unbroken days of reduced load that end on the day before the match.</param>
internal sealed record Taper(IReadOnlyList<PlanWeek> Weeks, int Days)
{
    private const int DaysOfShortTaper = 7;

    /// <summary>From this day of the week on, the first being 0, most of the seven days before a match lie in its own week.</summary>
    private const int FirstLateDay = 4;

    /// <summary>
    /// The taper before a match. Where the match's own week is reduced, its days before the match count and the reduced weeks
    /// before it; where only the week before is and the match comes early in its own, the days from MD-7 on do and the weeks
    /// before that one. Before a match later in its week a full week lies between: that is no taper.
    /// </summary>
    /// <param name="share">At this share of the normal weeks before, a week counts as reduced whatever it is called.</param>
    public static Taper Before(Plan plan, Match match, decimal share, int referenceWeeks)
    {
        var own = plan.WeekOf(match.Day!.Value)!;
        List<PlanWeek> reduced = [];
        for (var week = plan.Before(own); week is not null && IsReduced(plan, week, share, referenceWeeks); week = plan.Before(week)) reduced.Insert(0, week);
        var here = match.Day.Value.DayNumber - own.Days.First.DayNumber;
        if (IsReduced(plan, own, share, referenceWeeks)) return new Taper([.. reduced, own], here + reduced.Sum(week => week.Days.Length));
        return reduced.Count == 0 || here >= FirstLateDay ? new Taper([], 0) : new Taper(reduced, DaysOfShortTaper + reduced.SkipLast(1).Sum(week => week.Days.Length));
    }

    /// <summary>The week that holds most of the days MD-7 to MD-1: the match's own from its fifth day on, else the one before.</summary>
    public static PlanWeek? WeekFor(Plan plan, Match match)
    {
        var own = plan.WeekOf(match.Day!.Value)!;
        return match.Day.Value.DayNumber - own.Days.First.DayNumber >= FirstLateDay ? own : plan.Before(own);
    }

    private static bool IsReduced(Plan plan, PlanWeek week, decimal share, int referenceWeeks)
    {
        if (week.Kind == WeekKind.Taper) return true;
        if (!week.IsTraining || week.IsHold || week.Training is not { } training) return false;
        var before = plan.NormalBefore(week, referenceWeeks).Select(other => other.Training!.Value).ToList();
        return before.Count > 0 && training <= share * before.Average();
    }
}
