using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>What a step is worth, in units.</summary>
internal static class Value
{
    /// <summary>The part that the load does not change.</summary>
    /// <param name="run">Loading weeks in the run with this one.</param>
    public static long Fixed(WeekFacts facts, Stand from, Move move, int run)
    {
        long value = 0;
        if (move.Kind.IsLoading()) value += facts.Goal[(int)move.Phase];
        else if (move.Kind is not (WeekKind.Break or WeekKind.Transition)) value += facts.Goal[(int)move.Phase] / 2;

        // A break or the season's end ends a run whenever it comes; what the plan itself ends should be neither short nor long.
        if (from.Mode.IsLoad() && (move.Kind == WeekKind.Unloading || move is { Kind: WeekKind.Taper, Variant: not Variant.FullLast }))
        {
            // Congested weeks alone are no block to unload from, unless there are two of them or more.
            var least = move.Kind == WeekKind.Unloading && !facts.IsFirstLight ? 1 : 0;
            value -= Worth.Block(Math.Max(least, from.Mode.Run()), from.Phase == PhaseKind.Competition);
        }
        if (move.Kind == WeekKind.Overload) value -= Worth.Block(run, isCompetition: false);
        if (move.Kind == WeekKind.Taper && from.Mode == Mode.Unloading) value -= Worth.TaperAfterUnloading;
        if (move.Phase != from.Phase && !facts.IsCycleStart && facts.IsPreparation && (move.Kind == WeekKind.Unloading || move.Kind.IsLoading() && from.Mode.Run() > 0)) value -= Worth.PhaseChangeInBlock;
        if (move.Kind != WeekKind.Unloading) return value;
        if (facts.Week.Matches.Count == 1) value -= Worth.UnloadingWithMatch;
        if (facts.IsLastBeforeCompetition) value -= Worth.UnloadingBeforeCompetition;
        if (facts.IsBeforeRest) value -= Worth.UnloadingBeforeRest;
        else if (facts.IsFirstLight) value += Worth.UnloadingAfterCongestion;
        return value;
    }

    /// <summary>The part that it does.</summary>
    /// <param name="guide">In tenths of a point.</param>
    public static long Of(WeekFacts facts, Stand from, Move move, int points, int guide)
    {
        var value = facts.Weight * (points - facts.Week.MatchPoints) - Worth.FromGuide(Math.Abs(10 * points - guide));
        if (move.Kind == WeekKind.Competition && Demands.FollowsCompetitionWeek(facts, from)) value -= Worth.Change * Math.Abs(points - from.Reached);
        return value;
    }

    /// <summary>What it costs to leave what stands: another kind and another phase ...</summary>
    public static long ChangeOfKind(Problem problem, WeekFacts facts, Move move)
    {
        if (problem.KeepWeight == 0 || facts.Week.Kept is not { } kept || facts.Week.Index < problem.FirstOpen) return 0;
        long change = 0;
        if (kept.Kind is { } kind && kind != move.Kind) change += Worth.AnotherKind;
        if (kept.Phase is { } phase && phase != move.Phase) change += Worth.AnotherPhase;
        return change * problem.KeepWeight / 1000;
    }

    /// <summary>... every point, and more for more than a few.</summary>
    public static long ChangeOfLoad(Problem problem, WeekFacts facts, int points)
    {
        if (problem.KeepWeight == 0 || facts.Week.Kept is not { } kept || facts.Week.Index < problem.FirstOpen) return 0;
        long change = 0;
        if (kept.Points is { } before && Math.Abs(points - before) is > 0 and var moved) change += Worth.EveryPoint * moved + (moved > Worth.FewPoints ? Worth.MoreThanFew : 0);
        return change * problem.KeepWeight / 1000;
    }
}
