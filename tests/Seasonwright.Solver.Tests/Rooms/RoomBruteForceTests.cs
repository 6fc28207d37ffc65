using Seasonwright.Core.Rooms;

namespace Seasonwright.Solver.Tests;

/// <summary>The model against every layout of small rooms.</summary>
public class RoomBruteForceTests(ITestOutputHelper output)
{
    [Fact]
    public void The_model_finds_the_best_layout_of_small_rooms()
    {
        var count = int.Parse(Environment.GetEnvironmentVariable("SMALL") ?? "60", System.Globalization.CultureInfo.InvariantCulture);
        long tried = 0, missed = 0, locked = 0;
        for (var seed = 1; seed <= count; seed++)
        {
            var week = RoomWeeks.Small(seed);
            var brute = new RoomBruteForce(week);
            var best = brute.Best();
            var proposal = RoomProposals.Of(week, TestContext.Current.CancellationToken);
            Assert.True(proposal.IsFewest && proposal.IsProven, $"seed {seed}");
            Assert.True((best.Missed, best.Cost) == (proposal.Unplaced.Count, proposal.Cost), $"seed {seed}: {best} by trying all, {proposal.Unplaced.Count} and {proposal.Cost} proposed");
            Assert.Equal(best.Unlike, brute.Unlike(team => proposal.Unplaced.Count(one => team.Sessions.Any(ask => ask.Id == one.Session))));
            Assert.Equal(proposal.Cost, proposal.Bound);
            Assert.Equal(best.Missed, proposal.Fewest);
            // What is locked stays, and whatever clashes was locked.
            Assert.All(week.Placed.Where(one => one.At.IsLocked), one => Assert.Contains(one, proposal.Week.Placed.Select(now => (now.Team with { Sessions = one.Team.Sessions }, now.Ask, now.At))));
            var isLocked = week.Placed.Where(one => one.At.IsLocked).Select(one => one.Ask.Id).ToHashSet();
            Assert.All(RoomClash.Of(proposal.Week), clash => Assert.Subset(isLocked, clash.Sessions.ToHashSet()));
            tried += brute.Tried;
            missed += best.Missed;
            locked += isLocked.Count;
        }
        output.WriteLine($"{tried} layouts, {missed} sessions left out, {locked} locked");
        // The small rooms do ask for what the laws are about.
        Assert.True(tried > 10_000 && missed > 10 && locked > 5);
    }
}
