using Google.OrTools.Sat;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>The week stage of the engine: our sessions around matches and practices. The same week gives the same layout, to the last minute.</summary>
public static class WeekProposals
{
    /// <summary>One worker, a fixed seed and a limit in work, not in seconds. Without probing and symmetries all of 198 weeks of four clubs were proven, five were not with them; the others tried (weaker or no linear relaxation, no presolve, pseudo costs, cores) took longer or left more open.</summary>
    internal const string Parameters = "num_search_workers:1 random_seed:1 linearization_level:2 cp_model_probing_level:0 symmetry_level:0 max_deterministic_time:2";

    /// <returns>A layout for every week: what it cannot keep it pays for and tells. Without sessions, and with the reason, where nothing is to be laid out.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled before any was found.</exception>
    public static WeekProposal Of(WeekProblem problem, CancellationToken cancel = default) => Of(problem, Parameters, cancel);

    /// <param name="parameters">Of the solver; others than usual are only measured with.</param>
    internal static WeekProposal Of(WeekProblem problem, string parameters, CancellationToken cancel = default)
    {
        if (problem.Stop is { } stop) return new WeekProposal(problem, [], [], [], 0, 0, true, [new WeekReason(WeekWords.Say(stop), "")]);
        cancel.ThrowIfCancellationRequested();
        var model = new WeekModel(problem);
        using var solver = new CpSolver { StringParameters = parameters };
        using var stopped = cancel.Register(solver.StopSearch);
        var status = solver.Solve(model.Model);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
        {
            cancel.ThrowIfCancellationRequested();
            throw new InvalidOperationException($"A week that may pay for everything it breaks was not found: {status}.");
        }
        var sessions = WeekSlots.Of(problem, model.Sessions(solver)).Concat(problem.Tests).OrderBy(session => session.Day).ThenBy(session => session.Slot).ThenBy(session => session.Kind).ToValueList();
        var proposal = new WeekProposal(problem, sessions, [], model.Asked(solver).ToValueList(), (long)Math.Round(solver.ObjectiveValue), (long)Math.Ceiling(solver.BestObjectiveBound - 0.001), status == CpSolverStatus.Optimal, []);
        return proposal with { Reasons = sessions.Select(session => WeekReasons.Of(proposal, session).ToValueList()).ToValueList(), Short = WeekReasons.Short(proposal).ToValueList() };
    }

    /// <summary>What keeps a session from another place: the conditions of the list that the model keeps to.</summary>
    /// <param name="session">One of the proposal's, or one that is there already; it is taken from its place first.</param>
    /// <returns>None where it can lie there.</returns>
    public static ValueList<WeekReason> WhyNot(WeekProposal proposal, WeekSession session, int day, DaySlot slot) => WeekReasons.WhyNot(proposal, session, day, slot).Distinct().ToValueList();
}
