using System.Runtime.ExceptionServices;
using Google.OrTools.Sat;

namespace Seasonwright.Solver;

/// <summary>
/// Stage C of the engine: the loads of a structure. The structure carried only the level reached; here every rule that remembers more
/// (the weeks before together, the mean of the last normal ones) is held to as the rulebook reads it, and no key match is given up for
/// the others.
/// </summary>
public static class LoadPlans
{
    /// <summary>One worker, a fixed seed and a limit in work, not in seconds: the same input gives the same loads. A gap of 0.1 % ends the search: the last of it took most of the time; probing and looking for symmetries took longer than they saved.</summary>
    private const string Rewritten = "num_search_workers:1 random_seed:1 linearization_level:2 relative_gap_limit:0.001 max_deterministic_time:0.4 cp_model_probing_level:0 symmetry_level:0";

    /// <summary>The model is searched as it is written: rewriting it first cost a third of the time over 51 seasons and left two of them with 2 % and more open, where 0.05 % was the most without. With a repair of the demo it was the other way round: 14 % were left as written and none when rewritten.</summary>
    internal const string Parameters = Rewritten + " cp_model_presolve:false";

    /// <summary>A search that ends with more open is made a second time, the other way.</summary>
    private const double Wide = 0.01;

    /// <param name="tell">Called with each better loads that are found.</param>
    /// <param name="enough">Cancelled when the best loads so far shall do.</param>
    /// <returns>Loads for every structure: what they cannot keep they pay for and tell.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled before any loads were found.</exception>
    public static LoadPlan Best(Problem problem, Structure structure, Action<LoadPlan>? tell = null, CancellationToken enough = default, CancellationToken cancel = default)
    {
        var loads = Best(problem, structure, Parameters, tell, enough, cancel);
        if (loads.Gap <= Wide || enough.IsCancellationRequested) return loads;
        var rewritten = Best(problem, structure, Rewritten, null, enough, cancel);
        return (rewritten.Value > loads.Value ? rewritten : loads) with { Bound = Math.Min(rewritten.Bound, loads.Bound) };
    }

    /// <param name="parameters">Of the solver; others than usual are only measured with.</param>
    internal static LoadPlan Best(Problem problem, Structure structure, string parameters, Action<LoadPlan>? tell = null, CancellationToken enough = default, CancellationToken cancel = default)
    {
        cancel.ThrowIfCancellationRequested();
        var model = new LoadModel(problem, structure);
        using var solver = new CpSolver { StringParameters = parameters };
        using var stop = cancel.Register(solver.StopSearch);
        using var found = new Found(solver, so => tell?.Invoke(new LoadPlan(model.Points(so.Value), (long)so.ObjectiveValue(), (long)Math.Ceiling(so.BestObjectiveBound()), false, [])), enough);
        var status = solver.Solve(model.Model, found);
        found.Fault?.Throw();
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
        {
            cancel.ThrowIfCancellationRequested();
            throw new InvalidOperationException($"Loads that may pay for everything they break were not found: {status}.");
        }
        var points = model.Points(one => solver.Value(one));
        return new LoadPlan(points, (long)solver.ObjectiveValue, (long)Math.Ceiling(solver.BestObjectiveBound), status == CpSolverStatus.Optimal, [.. model.Short(solver).Select(one => one with { IsForced = IsForced(problem, structure, one, cancel) })]);
    }

    /// <summary>Whether no loads of these weeks keep a condition, whatever they pay for the others.</summary>
    private static bool IsForced(Problem problem, Structure structure, Breach breach, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        using var solver = new CpSolver { StringParameters = Rewritten };
        using var stop = cancel.Register(solver.StopSearch);
        var status = solver.Solve(new LoadModel(problem, structure, breach).Model);
        cancel.ThrowIfCancellationRequested();
        return status == CpSolverStatus.Infeasible;
    }

    /// <summary>Hears of each solution; only from the first on can it be enough.</summary>
    private sealed class Found(CpSolver solver, Action<CpSolverSolutionCallback> tell, CancellationToken enough) : CpSolverSolutionCallback
    {
        private CancellationTokenRegistration? ending;

        /// <summary>What the listener threw: it must not leave through the solver, which is no managed code, so it waits here until the search has ended.</summary>
        public ExceptionDispatchInfo? Fault { get; private set; }

        public override void OnSolutionCallback()
        {
            try
            {
                tell(this);
                ending ??= enough.Register(solver.StopSearch);
            }
            catch (Exception fault)
            {
                Fault ??= ExceptionDispatchInfo.Capture(fault);
                solver.StopSearch();
            }
        }

        protected override void Dispose(bool disposing)
        {
            ending?.Dispose();
            base.Dispose(disposing);
        }
    }
}
