using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Solver.Tests;

/// <summary>How a plan is painted over the one that stands: what the coach has named stays named.</summary>
public class PaintingTests
{
    private static readonly DateOnly Monday = new(2027, 7, 5);

    /// <summary>A league of two halves with five weeks between, the first two of them off.</summary>
    private static readonly Season Season = Seasons.Made([
        Seasons.Start(Monday, 28),
        .. Enumerable.Range(7, 8).Concat(Enumerable.Range(20, 6)).Select(week => Seasons.Match(Monday.AddDays(7 * week - 2), Importance.Regular, "m")),
        Seasons.Event(EventKind.Holiday, new(Monday.AddDays(7 * 14), Monday.AddDays(7 * 16 - 1)), 0)]);

    private static readonly Season Planned = Plans.After(Season, Proposals.Of(Season, Seasons.Team, new Wishes(), 1, Id)[0].Edits);

    [Fact]
    public void Weeks_off_between_two_competition_periods_are_a_transition()
    {
        Assert.Equal([PhaseKind.Transition, PhaseKind.Transition], new[] { 15, 16 }.Select(PhaseOf));
        Assert.NotEqual(PhaseKind.Transition, PhaseOf(17));
        Assert.Equal([PhaseKind.Competition, PhaseKind.Competition], new[] { 14, 20 }.Select(PhaseOf));

        static PhaseKind PhaseOf(int week) => Planned.PhaseOf(Planned.Weeks[week - 1])!.Phase.Kind;
    }

    [Fact]
    public void A_repair_keeps_the_ids_and_names_of_runs_that_it_lengthens_or_shortens()
    {
        var named = Plans.After(Planned, [
            .. Planned.Phases.Select((run, at) => new RenamePhase(run.Id, $"phase {at}")),
            .. Planned.Blocks.Select((run, at) => new RenameBlock(run.Id, $"block {at}"))]);
        // The second half begins a week earlier.
        var repaired = Repaired(named, new MoveMatch(Season.Matches.Last().Id, Monday.AddDays(7 * 19 - 2)));
        Assert.NotEqual(named.Phases.Select(Bounds), repaired.Phases.Select(Bounds));
        foreach (var run in named.Phases.Where(run => repaired.Phases.Any(other => other.Phase.Kind == run.Phase.Kind && other.First.Number <= run.Last.Number && other.Last.Number >= run.First.Number)))
            Assert.Contains((run.Id, run.Phase), repaired.Phases.Select(other => (other.Id, other.Phase)));
        Assert.True(repaired.Phases.Count(run => run.Phase.Name is not null) >= named.Phases.Length - 1);
        var (before, after) = (named.Blocks.ToDictionary(run => run.Id), repaired.Blocks.Where(run => named.Blocks.Any(old => old.Id == run.Id)).ToList());
        Assert.InRange(after.Count, before.Count - 2, before.Count);
        Assert.All(after, run => Assert.Equal(before[run.Id].Block, run.Block));

        static (int, int) Bounds(PhaseRun run) => (run.First.Number, run.Last.Number);
    }

    [Fact]
    public void A_break_that_stands_stays_one_where_the_pause_becomes_too_short_to_part_two_periods()
    {
        var repaired = Repaired(Planned, new MoveMatch(Season.Matches.Last().Id, Monday.AddDays(7 * 18 - 2)));
        Assert.Equal([PhaseKind.Competition, PhaseKind.Transition, PhaseKind.Transition], Enumerable.Range(14, 3).Select(week => repaired.PhaseOf(repaired.Weeks[week - 1])!.Phase.Kind));
    }

    /// <summary>A run that begins in weeks that are over goes on as the same run.</summary>
    [Fact]
    public void What_has_begun_goes_on_under_its_name()
    {
        var competition = Planned.Phases.First(run => run.Phase.Kind == PhaseKind.Competition);
        var cut = Plans.After(Planned, [new RenamePhase(competition.Id, "First half"), new ErasePhase(Planned.Weeks[9].Id, Planned.Weeks[13].Id, new("rest"))]);
        var again = Plans.After(cut, Proposals.Of(cut, Seasons.Team, new Wishes { From = Planned.Weeks[9].Days.First }, 1, Id)[0].Edits);
        var run = again.PhaseOf(again.Weeks[8])!;
        Assert.Equal((competition.Id, "First half", competition.First.Number, competition.Last.Number), (run.Id, run.Phase.Name, run.First.Number, run.Last.Number));
    }

    /// <summary>Locked weeks part no run: what stands on both sides of them is one.</summary>
    [Fact]
    public void A_locked_week_in_the_middle_parts_no_run()
    {
        var locked = Plans.After(Planned, [new LockWeeks(Planned.Weeks[9].Id, Planned.Weeks[9].Id, Locked: true), new LockWeeks(Planned.Weeks[11].Id, Planned.Weeks[11].Id, Locked: true)]);
        var again = Plans.After(locked, Proposals.Of(locked, Seasons.Team, new Wishes(), 1, Id)[0].Edits);
        var competition = locked.PhaseOf(locked.Weeks[9])!;
        Assert.Equal(competition, again.PhaseOf(again.Weeks[9]));
        Assert.Equal(locked.Phases.Length, again.Phases.Length);
    }

    private static Season Repaired(Season stands, SeasonEdit happened)
    {
        var now = Plans.After(stands, [happened]);
        return Plans.After(now, Proposals.Of(now, Seasons.Team, new Wishes().Repairing(stands, now, Monday), 1, Id)[0].Edits);
    }

    private static string Id(string kind, string key) => $"{kind}-{key}";
}
