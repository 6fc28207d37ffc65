using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>The engine: stage A, C and B, one after the other, and the edits that follow. The same season, setup and wishes give the same proposal, to the last id.</summary>
public static class Proposals
{
    /// <param name="id">The id of something new, by its kind ("phase", "block", "test") and by what makes it one of its kind; the same for the same.</param>
    /// <returns>The best proposal found; where no plan keeps all that is asked, the one that breaks least. Null for a season that is not started.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static Proposal? Of(Season season, Setup setup, Wishes wishes, Func<string, string, string> id, CancellationToken cancel = default)
    {
        var problem = Problem.Of(season, setup, wishes);
        if (Structures.LeastBroken(problem, cancel) is not { } structure) return null;
        var loads = LoadPlans.Best(problem, structure, cancel);
        var emphasis = EmphasisPlans.Best(problem, structure, loads, cancel);
        return new Proposal(structure, loads, emphasis, ProposedEdits.Of(season, setup, problem, structure, loads, emphasis, id));
    }
}
