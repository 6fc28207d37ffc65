using System.Diagnostics;
using Seasonwright.Core;
using Seasonwright.Core.Rooms;

namespace Seasonwright.Solver.Tests;

/// <summary>Laws of the room stage on made-up weeks, judged by Core's clashes, which the engine does not see.</summary>
public class RoomProposalTests(ITestOutputHelper output)
{
    /// <summary>Teams, sessions each, places, coaches; the last ones ask for more than the room holds.</summary>
    public static TheoryData<string, int, int, int, int, bool> Rooms => new()
    {
        { "12 teams x 3, 40 places", 12, 3, 40, 3, false },
        { "20 teams x 3, 60 places", 20, 3, 60, 4, false },
        { "12 teams x 3, evenings", 12, 3, 40, 2, true },
        { "20 teams x 3, evenings", 20, 3, 40, 2, true },
        { "20 teams x 3, evenings, 1 coach", 20, 3, 40, 1, true },
    };

    [Theory]
    [MemberData(nameof(Rooms))]
    public void No_condition_is_broken_and_more_find_a_place_than_by_hand(string name, int teams, int sessions, int places, int coaches, bool isTight)
    {
        var count = int.Parse(Environment.GetEnvironmentVariable("COUNT") ?? "2", System.Globalization.CultureInfo.InvariantCulture);
        for (var seed = 1; seed <= count; seed++)
        {
            var week = RoomWeeks.Club(seed, teams, sessions, RoomWeeks.Usual(places, coaches), isTight);
            var began = Stopwatch.GetTimestamp();
            var proposal = RoomProposals.Of(week, TestContext.Current.CancellationToken);
            var took = Stopwatch.GetElapsedTime(began);
            var hand = RoomGreedy.Of(week);
            Assert.Empty(RoomClash.Of(proposal.Week));
            Assert.Empty(RoomClash.Of(hand.Week));
            Assert.Equal(week.With(_ => null), proposal.Week.With(_ => null));
            Assert.Equal(week.Asks.Count() - proposal.Week.Placed.Count(), proposal.Unplaced.Count);
            Assert.InRange(proposal.Unplaced.Count, proposal.Fewest, hand.Missed);
            if (proposal.IsFewest) Assert.Equal(proposal.Fewest, proposal.Unplaced.Count);
            if (proposal.IsProven && proposal.Unplaced.Count == 0 && hand.Missed == 0) Assert.InRange(proposal.Cost, proposal.Bound, hand.Cost);
            Assert.All(proposal.Unplaced, one => Assert.NotEmpty(one.Reasons));
            if (proposal.Unplaced.Count == 0) Assert.Empty(proposal.Binding);
            if (teams > 12 && isTight) Assert.NotEmpty(proposal.Binding);
            output.WriteLine($"room {name}: seed {seed} {took.TotalMilliseconds:0} ms asked {week.Asks.Count()} missed {proposal.Unplaced.Count} fewest {proposal.Fewest} {proposal.IsFewest} cost {proposal.Cost} bound {proposal.Bound} {proposal.IsProven} hand {hand.Missed} {hand.Cost}");
            if (seed == 1)
            {
                foreach (var one in proposal.Unplaced.Take(3)) output.WriteLine($"  {one.Sentence}");
                foreach (var one in proposal.Moved.Take(3)) output.WriteLine($"  {one.Sentence}");
                foreach (var one in proposal.Binding) output.WriteLine($"  {one}");
            }
        }
    }
}
