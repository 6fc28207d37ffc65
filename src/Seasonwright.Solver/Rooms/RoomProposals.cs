using Google.OrTools.Sat;
using Seasonwright.Core;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>The room stage of the engine: start times for all teams' sessions in one room. The same week gives the same answer.</summary>
public static class RoomProposals
{
    /// <summary>One worker, a fixed seed and a limit in work, not in seconds. So 25 weeks took 22 s; with probing and symmetries 31 s, with a weaker relaxation 39 s and one proof less.</summary>
    internal const string Parameters = "num_search_workers:1 random_seed:1 linearization_level:2 cp_model_probing_level:0 symmetry_level:0 max_deterministic_time:4";

    /// <returns>A place for as many sessions as can be, and of those layouts the one nearest to the wishes. Locked sessions stay, whatever they clash with.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled before any layout was found.</exception>
    public static RoomProposal Of(RoomWeek week, CancellationToken cancel = default) => Of(week, Parameters, cancel);

    /// <param name="parameters">Of the solver; others than usual are only measured with.</param>
    internal static RoomProposal Of(RoomWeek week, string parameters, CancellationToken cancel = default)
    {
        var model = new RoomModel(week);
        model.AimAtFewest();
        var fewest = Solve(model, parameters, [], cancel);
        model.AimAtWishes(fewest.Objective);
        var nearest = Solve(model, parameters, fewest.Slots, cancel);
        var proposed = week.With(ask => RoomModel.IsLocked(ask) ? ask.Place : nearest.Slots.TryGetValue(ask.Id, out var slot) ? slot.PlaceIn(week) : null);
        var told = new RoomTold(proposed);
        return new(
            proposed,
            proposed.Asks.Where(one => one.Ask.Place is null).Select(one => told.Unplaced(one.Team, one.Ask)).ToValueList(),
            proposed.Asks.Select(one => told.Moved(one.Team, one.Ask)).OfType<RoomReasons>().ToValueList(),
            told.Binding().ToValueList(),
            model.SessionsIn(fewest.Bound), fewest.IsProven, nearest.Objective, (long)Math.Ceiling(nearest.Bound - 0.001), nearest.IsProven);
    }

    /// <summary>What keeps a session from another start as the week stands: the conditions that the model keeps to.</summary>
    /// <returns>None where it can begin there.</returns>
    public static ValueList<WeekReason> WhyNot(RoomWeek week, SessionId session, DateOnly day, TimeOnly start)
    {
        var (team, ask) = week.Asks.First(one => one.Ask.Id == session);
        return new RoomTold(week).WhyNot(team, ask, RoomSlot.Of(week, day, start));
    }

    private static (long Objective, double Bound, bool IsProven, Dictionary<SessionId, RoomSlot> Slots) Solve(RoomModel model, string parameters, Dictionary<SessionId, RoomSlot> from, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        model.Begin(from);
        using var solver = new CpSolver { StringParameters = parameters };
        using var stopped = cancel.Register(solver.StopSearch);
        var status = solver.Solve(model.Model);
        if (status is CpSolverStatus.Optimal or CpSolverStatus.Feasible) return ((long)Math.Round(solver.ObjectiveValue), solver.BestObjectiveBound, status == CpSolverStatus.Optimal, model.Slots(solver));
        cancel.ThrowIfCancellationRequested();
        throw new InvalidOperationException($"A room's week that may leave sessions out was not found: {status}.");
    }
}
