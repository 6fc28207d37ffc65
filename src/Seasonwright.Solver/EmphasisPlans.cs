using Google.OrTools.Sat;

namespace Seasonwright.Solver;

/// <summary>Stage B of the engine: how much each quality gets, block by block, and when the squad is tested. A level holds through its block, so that lines are long; light weeks step down by their kind.</summary>
public static class EmphasisPlans
{
    private const string Parameters = "num_search_workers:1 random_seed:1 linearization_level:2 max_deterministic_time:2";

    /// <returns>Emphasis and tests for every structure: what they cannot keep they pay for and tell.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled before any were found.</exception>
    public static EmphasisPlan Best(Problem problem, Structure structure, LoadPlan loads, CancellationToken cancel = default)
    {
        cancel.ThrowIfCancellationRequested();
        var model = new EmphasisModel(problem, structure, loads);
        using var solver = new CpSolver { StringParameters = Parameters };
        using var stop = cancel.Register(solver.StopSearch);
        var status = solver.Solve(model.Model);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
        {
            cancel.ThrowIfCancellationRequested();
            throw new InvalidOperationException($"Emphasis that may pay for everything it breaks was not found: {status}.");
        }
        return new EmphasisPlan(model.Levels(solver), model.Tests(solver), (long)solver.ObjectiveValue, (long)Math.Ceiling(solver.BestObjectiveBound), status == CpSolverStatus.Optimal, [.. model.Short(solver).Select(one => one with { IsForced = IsForced(problem, structure, loads, one, cancel) })]) { Moved = model.Moved };
    }

    /// <summary>Whether no emphasis keeps a condition, whatever it pays for the others.</summary>
    private static bool IsForced(Problem problem, Structure structure, LoadPlan loads, Breach breach, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        using var solver = new CpSolver { StringParameters = Parameters };
        using var stop = cancel.Register(solver.StopSearch);
        var status = solver.Solve(new EmphasisModel(problem, structure, loads, breach).Model);
        cancel.ThrowIfCancellationRequested();
        return status == CpSolverStatus.Infeasible;
    }
}
