using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>Stage A of the engine: the structure of a season.</summary>
public static class Structures
{
    /// <summary>What may be paid for broken conditions, from little to all there is: most clashes are small, and a small budget leaves little to look at.</summary>
    private static readonly long[] Budgets = [2 * Worth.Broken, 6 * Worth.Broken, 20 * Worth.Broken, long.MaxValue];

    /// <summary>The best structure that keeps every condition; null when there is none, or no week to plan.</summary>
    /// <param name="relaxed">Conditions that are not asked for; null for those that the problem leaves out.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static Structure? Best(Problem problem, Relaxed? relaxed = null, CancellationToken cancel = default) => Solve(problem, relaxed ?? problem.LeftOut, budget: 0, cancel);

    /// <summary>
    /// The best structure and others, best first; fewer where there are not so many, none where there is no plan. Each other one is the
    /// best that gives some week another phase or kind than the first does; asked for one week apart, the second is the second best.
    /// </summary>
    /// <param name="weeksApart">In so many weeks at least any two of them differ in phase or kind; 1 or more.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static ValueList<Structure> Several(Problem problem, int count, int weeksApart = 1, CancellationToken cancel = default) =>
        new StructureSearch(problem, problem.LeftOut, budget: 0).Several(count, Math.Max(1, weeksApart), cancel).Select(path => Read(problem, problem.LeftOut, path)).ToValueList();

    /// <summary>The structure that breaks least, each condition at its price: nothing where nothing must be broken. There is one for every season with weeks.</summary>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static Structure? LeastBroken(Problem problem, CancellationToken cancel = default) => Best(problem, problem.LeftOut, cancel) ?? Broken(problem, cancel);

    /// <summary>The same where it is known that something must be broken.</summary>
    internal static Structure? Broken(Problem problem, CancellationToken cancel)
    {
        Structure? structure = null;
        foreach (var budget in Budgets) structure ??= Solve(problem, problem.LeftOut, budget, cancel);
        return structure;
    }

    private static Structure? Solve(Problem problem, Relaxed relaxed, long budget, CancellationToken cancel) =>
        new StructureSearch(problem, relaxed, budget).Best(cancel) is { } path ? Read(problem, relaxed, path) : null;

    /// <summary>Walks a path again and says of every week what bounds it and what it goes against.</summary>
    internal static Structure Read(Problem problem, Relaxed relaxed, Path path)
    {
        var (facts, demands) = (SeasonFacts.Of(problem), new Demands(problem, relaxed));
        List<StructureWeek> weeks = [];
        List<Breach> broken = [];
        var stand = Stand.Before(problem);
        var (block, ended, worth) = (0, false, 0L);
        var peak = PeakFrom(problem, facts);
        foreach (var week in facts)
        {
            var (move, points) = (path.Steps[weeks.Count].Move, path.Steps[weeks.Count].Points);
            demands.Judge(week, stand, move);
            var kind = week.Week.Lock?.Kind is { } locked && Demands.IsByCalendar(locked) && Demands.IsByCalendar(move.Kind) ? locked : move.Kind;
            var goesOn = kind == WeekKind.Break && weeks.Count > 0 && weeks[^1].Kind == WeekKind.Break;
            if (weeks.Count > 0 && (ended && !goesOn || stand.Phase != move.Phase || week.IsCycleStart)) block++;
            ended = kind is WeekKind.Unloading or WeekKind.Break || move is { Kind: WeekKind.Taper, Variant: not (Variant.FullEarlier or Variant.BeforeMany) };
            var phase = move.Phase == PhaseKind.Competition && weeks.Count >= peak.From && weeks.Count <= peak.Last ? PhaseKind.Peak : move.Phase;
            worth += Value.Fixed(week, stand, move, demands.Run) - Value.ChangeOfKind(problem, week, move);
            broken.AddRange(demands.Broken.Select(one => new Breach(one.Condition, weeks.Count, 10 * one.Amount)));
            broken.AddRange(demands.Given.Select(one => new Breach(one.Condition, weeks.Count, 10 * one.Amount, IsForced: true)));
            broken.AddRange(demands.Loads.Select(one => new Breach(one.Condition, weeks.Count, Math.Max(one.Least - 10 * points, 10 * points - one.Most))).Where(one => one.Beyond > 0));
            var guide = Guide.Of(problem, week, move, demands.Run, demands.Training, demands.Ceiling, demands.Range.Least);
            weeks.Add(new(weeks.Count, phase, kind, move.Variant, block, points, demands.Range, guide, demands.Loads.ToValueList()));
            stand = Moves.After(problem.Limits, week, stand, move, demands.Ceiling, points, demands.Run);
        }
        return new(weeks.ToValueList(), path.Value, worth, broken.ToValueList());
    }

    /// <summary>From the first week of the last taper to the week of the last key match of its cluster; nothing without a taper.</summary>
    private static (int From, int Last) PeakFrom(Problem problem, WeekFacts[] facts)
    {
        var last = Array.FindLastIndex(facts, week => week.Taper != Variant.None);
        if (last < 0) return (problem.Weeks.Count, -1);
        var end = (Week: last, Day: (DateOnly?)null);
        foreach (var (week, day) in problem.Weeks.Skip(last).SelectMany(week => week.Matches.Where(match => match.IsKey).Select(match => (week.Index, match.Date))))
            if (end.Day is not { } before || day.DayNumber - before.DayNumber <= problem.Limits.ClusterDays) end = (week, day);
        var first = last;
        while (first > 0 && facts[first - 1].Taper is Variant.FullEarlier or Variant.BeforeMany) first--;
        return (first, end.Week);
    }
}
