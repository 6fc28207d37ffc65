using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>Which weeks a week is held against, told from kinds and calendar alone; weeks by index.</summary>
internal sealed class Comparison
{
    /// <summary>The first two weeks back are held to their ceilings and not to a rise.</summary>
    public const int WeeksBack = 2;

    /// <summary>unloading-size and taper-volume look back so far.</summary>
    public const int WeeksBeforeUnloading = 3, WeeksBeforeTaper = 2;

    /// <summary>The level a new block starts from, per mille of the one reached.</summary>
    public const int NewBlock = 850;

    /// <summary>Points a week rises in its block, rises to an overload, and may fall in the competition.</summary>
    public const int Step = 2, StepToOverload = 5, Fall = 12;

    /// <summary>Fewer days than these count for no week since an absence.</summary>
    private const int FewestDays = 4;

    private readonly Problem problem;
    private readonly IReadOnlyList<StructureWeek> weeks;
    private readonly int[] since;

    public Comparison(Problem problem, Structure structure)
    {
        (this.problem, weeks) = (problem, structure.Weeks);
        since = [.. Since()];
    }

    public bool IsTraining(int week) => weeks[week].Kind is not (WeekKind.Break or WeekKind.Transition) && !problem.Weeks[week].IsLost;

    public bool IsCompetition(int week) => weeks[week].Phase is PhaseKind.Competition or PhaseKind.Peak;

    /// <summary>Full weeks since the last absence that restarts comparisons; the first week back has 0.</summary>
    public int SinceAbsence(int week) => since[week];

    /// <summary>The last week before that a rise counts from.</summary>
    public int? Reference(int week) => Before(week, other => IsTraining(other) && problem.Weeks[other].Days == 7 && weeks[other].Kind is not (WeekKind.Unloading or WeekKind.Taper or WeekKind.Reduced));

    /// <summary>The last weeks before with team training, as many as there are up to a count: what a week off leaves of a mean says nothing of what the squad is used to.</summary>
    public IReadOnlyList<int> TrainedBefore(int week, int count) => [.. Enumerable.Range(0, week).Reverse().Where(IsTraining).Take(count)];

    /// <summary>The taper that ends with a week: it and the taper weeks right before it.</summary>
    public IReadOnlyList<int> TaperTo(int week) => [.. Enumerable.Range(0, week + 1).Reverse().TakeWhile(other => weeks[other].Kind == WeekKind.Taper).Reverse()];

    public int? OneMatchWeekBefore(int week) => Before(week, other => problem.Weeks[other].Matches.Count == 1 && IsNormal(other));

    /// <summary>The last normal weeks, latest first; in the competition those of it with exactly one match.</summary>
    public IReadOnlyList<int> NormalBefore(int week, int count) =>
        [.. Enumerable.Range(0, week).Reverse().Where(other => IsNormal(other) && (!IsCompetition(week) || IsCompetition(other) && problem.Weeks[other].Matches.Count == 1)).Take(count)];

    /// <summary>What a week back is held to: points where nothing was trained before, else a share per mille of the mean of weeks before.</summary>
    public (int Points, int Share, IReadOnlyList<int> Before, int Margin)? CeilingOf(int week)
    {
        if (!IsTraining(week)) return null;
        var (limits, off) = (problem.Limits, Before(week, other => !IsTraining(other)));
        if (since[week] < WeeksBack)
        {
            var isFirst = since[week] == 0;
            if (off is not { } last || weeks[last].Kind == WeekKind.Transition || !Enumerable.Range(0, last).Any(IsTraining))
                return (isFirst ? limits.ReturnPoints.First : limits.ReturnPoints.Second, 0, [], limits.MatchMargins.Long);
            var normal = Enumerable.Range(0, last).Reverse().Where(IsNormal).Take(WeeksBeforeTaper).ToList();
            if (normal.Count > 0) return (0, isFirst ? limits.ReturnShares.First : limits.ReturnShares.Second, normal, limits.MatchMargins.Long);
        }
        return off == week - 1 && week > 0 && NormalBefore(week, WeeksBeforeTaper) is { Count: > 0 } before ? (0, limits.WeekOffShare, before, limits.MatchMargins.WeekOff) : null;
    }

    /// <summary>The week that this one must not fall below, by a share per mille and points, where the structure asks for it; null where none binds it.</summary>
    public (Condition Condition, int From, int Share, int Points)? ProgressFrom(int week)
    {
        bool Asks(Condition condition) => weeks[week].Bounds.Any(bound => bound.Condition == condition);
        if (Asks(Condition.NoAbruptDrop)) return (Condition.NoAbruptDrop, week - 1, 1000, -Fall);
        if (Asks(Condition.RisingBack)) return (Condition.RisingBack, week - 1, 1000, 0);
        if (Asks(Condition.Progression)) return (Condition.Progression, week - 1, 1000, weeks[week].Kind == WeekKind.Overload ? StepToOverload : Step);
        return Asks(Condition.NewBlock) && Before(week, SetsLevel) is { } level ? (Condition.NewBlock, level, NewBlock, 0) : null;
    }

    /// <summary>Days off right before a week, without end at the start of a season unless training was kept up.</summary>
    public int DaysAwayBefore(int week)
    {
        var days = 0;
        for (var other = week - 1; other >= 0; other--)
        {
            if (IsTraining(other)) return days;
            days += problem.Weeks[other].Days;
        }
        return problem.Start == StartLevel.Kept ? days : int.MaxValue;
    }

    /// <summary>The first day back of the last absence that restarts comparisons; null where training was kept up.</summary>
    public DateOnly? FirstDayBack(int week)
    {
        for (var other = week; other >= 0; other--)
            if (IsBack(other) && !(other > 0 && IsBack(other - 1))) return problem.Weeks[other].First;
        return null;
    }

    /// <summary>Building weeks in a row up to this one as the rulebook counts them: introductory, re-entry, reduced and congested weeks neither count nor end the count.</summary>
    public int BuildingRunTo(int week)
    {
        var count = 0;
        if (IsHold(week) || !IsBuilding(week)) return 0;
        for (var other = week; other >= 0 && IsTraining(other) && (IsHold(other) || IsBuilding(other)); other--)
            if (!IsHold(other)) count++;
        return count;
    }

    private bool IsBack(int week) => IsTraining(week) && since[week] == 0;

    private bool IsHold(int week) => weeks[week].Kind is WeekKind.Introductory or WeekKind.ReEntry or WeekKind.Reduced or WeekKind.Congested;

    private bool IsBuilding(int week) => weeks[week].Kind is WeekKind.Building or WeekKind.Overload or WeekKind.Competition;

    private bool SetsLevel(int week) => weeks[week].Kind is WeekKind.Introductory or WeekKind.Building or WeekKind.Overload or WeekKind.Competition or WeekKind.ReEntry;

    private bool IsNormal(int week) => weeks[week].Kind is WeekKind.Introductory or WeekKind.Building or WeekKind.Overload or WeekKind.Competition && problem.Weeks[week].Matches.Count <= 1;

    private static int? Before(int week, Func<int, bool> holds)
    {
        for (var other = week - 1; other >= 0; other--)
            if (holds(other)) return other;
        return null;
    }

    private IEnumerable<int> Since()
    {
        var (full, away) = (problem.Start == StartLevel.Kept ? problem.Weeks.Count + 60 : 0, 0);
        foreach (var week in problem.Weeks)
        {
            if (!IsTraining(week.Index)) away += week.Days;
            else
            {
                if (away >= problem.Limits.AbsenceDays) full = 0;
                away = 0;
            }
            yield return full;
            if (IsTraining(week.Index) && week.Days >= FewestDays) full++;
        }
    }
}
