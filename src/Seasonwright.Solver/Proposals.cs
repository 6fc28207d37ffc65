using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>The engine: stage A, C and B, one after the other, and the edits that follow. The same season, setup and wishes give the same proposals, to the last id.</summary>
public static class Proposals
{
    /// <summary>Plans that stand beside each other differ in so many weeks at least: one week apart they only move an unloading week.</summary>
    private const int WeeksApart = 4;

    /// <param name="count">How many at most, 1 and more: the best first, any two differ in the phase or kind of four weeks or more.</param>
    /// <param name="id">The id of something new, by its kind ("phase", "block", "test") and by what makes it one of its kind; the same for the same.</param>
    /// <param name="watch">Hears how far the work is; null for nobody.</param>
    /// <returns>Where no plan keeps all that is asked, the one that breaks least, with what clashes. None for a season that is not started.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static ValueList<Proposal> Of(Season season, Setup setup, Wishes wishes, int count, Func<string, string, string> id, Watch? watch = null, CancellationToken cancel = default)
    {
        watch ??= Watch.None;
        var problem = Problem.Of(season, setup, wishes);
        if (problem.Weeks.Count == 0) return [];
        var structures = count > 1 ? Structures.Several(problem, count, WeeksApart, cancel) : Structures.Best(problem, cancel: cancel) is { } best ? [best] : [];
        if (structures.Count > 0)
        {
            var found = structures.TakeWhile((_, at) => at == 0 || !watch.Enough.IsCancellationRequested).Select(structure => Found(structure, null)).ToValueList();
            if (wishes.Kept.Count == 0) return found;
            var unavoidable = Unavoidable(season, setup, wishes, cancel);
            return found.Select(proposal => proposal with { Unavoidable = unavoidable }).ToValueList();
        }
        if (wishes.Wider() is { } wider) return Of(season, setup, wider, count, id, watch, cancel);
        var clash = Clashes.Explained(problem, cancel);
        return [Found(clash.LeastBroken, clash)];

        Proposal Found(Structure structure, Clash? clash)
        {
            var none = EmphasisPlan.None(problem);
            watch.Tell(Stage.Loads, Made(structure, LoadPlan.Of(structure), none, clash));
            var loads = LoadPlans.Best(problem, structure, found => watch.Tell(Stage.Loads, Made(structure, found, none, clash)), watch.Enough, cancel);
            watch.Tell(Stage.Emphasis, Made(structure, loads, none, clash));
            return Made(structure, loads, EmphasisPlans.Best(problem, structure, loads, cancel), clash);
        }

        Proposal Made(Structure structure, LoadPlan loads, EmphasisPlan emphasis, Clash? clash)
        {
            var proposal = new Proposal(wishes, structure, loads, emphasis, clash, clash is null ? [] : Reasons.Of(problem, clash), [], [], ProposedEdits.Of(season, setup, problem, structure, loads, emphasis, _ => true, id));
            return proposal with { Reasons = Reasons.Of(problem, proposal) };
        }
    }

    /// <summary>The weeks that do not stay as they stand even where leaving them is three times as dear.</summary>
    private static ValueList<int> Unavoidable(Season season, Setup setup, Wishes wishes, CancellationToken cancel)
    {
        var problem = Problem.Of(season, setup, wishes with { KeepWeight = Math.Min(10_000, 3 * Math.Max(1000, wishes.KeepWeight)) });
        if (Structures.Best(problem, cancel: cancel) is not { } structure) return [];
        var loads = LoadPlans.Best(problem, structure, cancel: cancel);
        return problem.Weeks.Where(week => !week.IsSettled && week.Kept is { } kept && (Other(kept.Phase, structure.Weeks[week.Index].Phase) || Other(kept.Kind, structure.Weeks[week.Index].Kind) || Other(kept.Points, loads.Points[week.Index]))).Select(week => week.Index).ToValueList();

        // Peak is a label of the engine.
        static bool Other<T>(T? kept, T now) where T : struct => kept is { } stands && !stands.Equals(now is PhaseKind.Peak ? PhaseKind.Competition : now);
    }

    /// <summary>The edits that bring some weeks of a proposal into the season it was made for, and only some of its tracks.</summary>
    /// <param name="weeks">Whether a week is taken, by its index.</param>
    /// <param name="tracks">What of them is taken.</param>
    public static ValueList<SeasonEdit> Part(Season season, Setup setup, Proposal proposal, Func<int, bool> weeks, Func<ProposedTrack, bool> tracks, Func<string, string, string> id) =>
        ProposedEdits.Of(season, setup, Problem.Of(season, setup, proposal.Wishes), proposal.Structure, proposal.Loads, proposal.Emphasis, weeks, id).Where(edit => tracks(ProposedEdits.TrackOf(edit))).ToValueList();
}
