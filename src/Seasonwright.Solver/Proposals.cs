using Seasonwright.Core;
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
    /// <returns>Where no plan keeps all that is asked, the one that breaks least, with what clashes. None for a season that is not started.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static ValueList<Proposal> Of(Season season, Setup setup, Wishes wishes, int count, Func<string, string, string> id, CancellationToken cancel = default)
    {
        var problem = Problem.Of(season, setup, wishes);
        if (problem.Weeks.Count == 0) return [];
        var structures = count > 1 ? Structures.Several(problem, count, WeeksApart, cancel) : Structures.Best(problem, cancel: cancel) is { } best ? [best] : [];
        if (structures.Count > 0) return structures.Select(structure => Of(structure, null)).ToValueList();
        var clash = Clashes.Of(problem, cancel)!;
        return [Of(clash.LeastBroken, clash)];

        Proposal Of(Structure structure, Clash? clash)
        {
            var loads = LoadPlans.Best(problem, structure, cancel);
            var emphasis = EmphasisPlans.Best(problem, structure, loads, cancel);
            var proposal = new Proposal(structure, loads, emphasis, clash, clash is null ? [] : Reasons.Of(problem, clash), [], ProposedEdits.Of(season, setup, problem, structure, loads, emphasis, id));
            return proposal with { Reasons = Reasons.Of(problem, proposal) };
        }
    }
}
