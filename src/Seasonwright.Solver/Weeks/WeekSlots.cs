using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>
/// Slots of the sessions of ours, once their days are known: the slot before practice, two on a day in the order in which they serve
/// each other, and never a heavy session earlier in the day than one two days before. Common practice, no source.
/// </summary>
internal static class WeekSlots
{
    private static readonly SessionKind[] Order =
    [
        SessionKind.Test, SessionKind.Speed, SessionKind.Power, SessionKind.Activation, SessionKind.SmallDose, SessionKind.LowerStrength, SessionKind.Hypertrophy, SessionKind.UpperStrength,
        SessionKind.Intervals, SessionKind.Endurance, SessionKind.Prevention, SessionKind.Recovery,
    ];

    public static DaySlot BeforePractice(DaySlot practice) => practice == DaySlot.Afternoon ? DaySlot.Morning : DaySlot.Afternoon;

    /// <returns>The placed sessions with their slots, by day and slot.</returns>
    public static List<WeekSession> Of(WeekProblem problem, IEnumerable<WeekSession> placed)
    {
        List<WeekSession> done = [];
        foreach (var day in placed.GroupBy(session => session.Day).OrderBy(day => day.Key))
        {
            var ours = day.OrderBy(session => Array.IndexOf(Order, session.Kind)).ToList();
            var taken = problem.FixedOn(day.Key).Select(session => session.Slot).ToHashSet();
            // A third session shares a slot with what is there: gym and practice may follow each other.
            var slots = Enum.GetValues<DaySlot>().Where(slot => !taken.Contains(slot)).Concat(Enum.GetValues<DaySlot>().Where(taken.Contains)).Take(Math.Max(ours.Count, 3 - taken.Count)).Order().ToList();
            var chosen = Runs(slots, ours.Count).MinBy(some => Cost(problem, done, ours, some))!;
            done.AddRange(ours.Zip(chosen, (session, slot) => session with { Slot = slot }));
        }
        return done;
    }

    private static IEnumerable<List<DaySlot>> Runs(List<DaySlot> slots, int count)
    {
        for (var mask = 0; mask < 1 << slots.Count; mask++)
            if (int.PopCount(mask) == count) yield return [.. slots.Where((_, at) => (mask & 1 << at) != 0)];
    }

    private static int Cost(WeekProblem problem, List<WeekSession> done, List<WeekSession> ours, List<DaySlot> slots)
    {
        var usual = BeforePractice(problem.PracticeSlot);
        return ours.Zip(slots, (session, slot) => (Stands(session) is { } stands ? slot == stands.Slot ? 0 : 3 : slot == usual ? 0 : 1)
            + (session.IsHeavy && problem.Fixed.Concat(done).Any(other => other.IsHeavy && other.Day == session.Day - problem.Limits.Spacing && other.Slot > slot) ? 10 : 0)
            + (session.IsHeavy && problem.Fixed.Any(other => other.IsHeavy && other.Day == session.Day + problem.Limits.Spacing && other.Slot < slot) ? 10 : 0)
            + (session.IsJumps && problem.Fixed.Concat(done).Any(other => other.IsJumps && (other.Day == session.Day - problem.Limits.JumpSpacing && other.Slot > slot || other.Day == session.Day + problem.Limits.JumpSpacing && other.Slot < slot)) ? 10 : 0)
            + (session.Kind == SessionKind.Speed && problem.Fixed.Concat(done).Any(other => (other.Kind == SessionKind.Speed || other.IsHeavy) && other.Day == session.Day - problem.Limits.SprintSpacing && other.Slot > slot) ? 10 : 0)
            // Fast work comes before practice, recovery after it.
            + (session.Kind is SessionKind.Speed or SessionKind.Power && problem.FixedOn(session.Day).Any(other => other.Slot <= slot) ? 4 : 0)).Sum();

        // What stands keeps its part of the day, and with it its clock.
        WeekSession? Stands(WeekSession session) => problem.Standing.FirstOrDefault(stands => stands.Day == session.Day && stands.Kind == session.Kind);
    }
}
