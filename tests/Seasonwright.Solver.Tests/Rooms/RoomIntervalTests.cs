using Seasonwright.Core;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Rooms;

namespace Seasonwright.Solver.Tests;

/// <summary>
/// Where every session has one possible time and each needs one coach, the room stage is the scheduling of intervals on so many alike
/// machines, of which the answer is known. The most intervals that k machines hold: M. C. Carlisle and E. L. Lloyd, "On the
/// k-coloring of intervals", Discrete Applied Mathematics 59 (1995) 225-235, whose greedy way (by their starts, dropping of more than k at
/// once the one that ends last) is written out here from memory. That as many machines as the deepest overlap hold all of them is a textbook's result, from memory.
/// </summary>
public class RoomIntervalTests
{
    private static (RoomWeek Week, List<(int From, int To)> Intervals) Drawn(int seed, int coaches)
    {
        var random = new Random(seed);
        List<(int From, int To)> intervals = [.. Enumerable.Range(0, random.Next(8, 26)).Select(_ => (From: random.Next(14, 38), Length: random.Next(1, 5))).Select(one => (one.From, one.From + one.Length))];
        var teams = intervals.Select((interval, at) => new Core.Rooms.RoomTeam(new($"t{at}"), $"Team {at}",
        [
            new(new($"s{at}"), "Session", 1, new Minutes(30 * (interval.To - interval.From)), Windows: [new(RoomWeeks.Monday, Clock.Time(30 * interval.From), Clock.Time(30 * interval.To))]),
        ])).ToValueList();
        return (new(RoomWeeks.Monday, RoomWeeks.Room(500, coaches, (DayOfWeek.Monday, 7, 23)), teams), intervals);
    }

    private static int Most(List<(int From, int To)> intervals, int machines)
    {
        List<(int From, int To)> running = [];
        var dropped = 0;
        foreach (var interval in intervals.OrderBy(one => one.From))
        {
            running.RemoveAll(one => one.To <= interval.From);
            running.Add(interval);
            if (running.Count <= machines) continue;
            running.Remove(running.MaxBy(one => one.To));
            dropped++;
        }
        return intervals.Count - dropped;
    }

    private static int Deepest(List<(int From, int To)> intervals) => Enumerable.Range(0, 48).Max(half => intervals.Count(one => one.From <= half && half < one.To));

    [Fact]
    public void As_many_intervals_find_a_place_as_so_many_machines_hold()
    {
        var leftOut = 0;
        for (var seed = 1; seed <= 60; seed++)
        {
            var coaches = seed % 5 + 1;
            var (week, intervals) = Drawn(seed, coaches);
            var proposal = RoomProposals.Of(week, TestContext.Current.CancellationToken);
            Assert.Equal(Most(intervals, coaches), proposal.Week.Placed.Count());
            Assert.True(proposal.IsFewest);
            leftOut += proposal.Unplaced.Count;
        }
        Assert.True(leftOut > 100, $"{leftOut}");
    }

    [Fact]
    public void All_find_a_place_with_as_many_coaches_as_sessions_overlap_and_not_with_one_less()
    {
        for (var seed = 1; seed <= 20; seed++)
        {
            var deepest = Deepest(Drawn(seed, 1).Intervals);
            Assert.Empty(RoomProposals.Of(Drawn(seed, deepest).Week, TestContext.Current.CancellationToken).Unplaced);
            if (deepest > 1) Assert.NotEmpty(RoomProposals.Of(Drawn(seed, deepest - 1).Week, TestContext.Current.CancellationToken).Unplaced);
        }
    }
}
