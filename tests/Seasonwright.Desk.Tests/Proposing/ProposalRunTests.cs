using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk.Proposing;
using Seasonwright.Solver;

namespace Seasonwright.Desk.Tests.Proposing;

/// <summary>Runs of the engine: they belong to the season, can be told that it is enough, and end when nobody looks.</summary>
public class ProposalRunTests
{
    [Fact]
    public async Task A_run_ends_with_plans_that_the_season_takes()
    {
        await using var desk = await Desk.OpenAsync();
        var run = desk.Workspace.Runs.Begin(await AskedAsync(desk, 3));
        await run.Ended;
        Assert.Equal(RunStatus.Done, run.State.Status);
        Assert.NotEmpty(run.State.Plans);
        Assert.Same(run, desk.Workspace.Runs.Of(run.Asked.Season.Id));
        Assert.All(run.State.Plans, plan => Assert.All(run.Planned(plan).Weeks, week => Assert.NotNull(run.Planned(plan).KindOf(week.Id))));
    }

    [Fact]
    public async Task A_part_of_a_plan_is_its_weeks_and_tracks_alone()
    {
        await using var desk = await Desk.OpenAsync();
        var run = desk.Workspace.Runs.Begin(await AskedAsync(desk, 1));
        await run.Ended;
        var edits = run.Part(run.State.Plans[0], week => week is 2 or 3, track => track == ProposedTrack.Loads);
        Assert.NotEmpty(edits);
        Assert.All(edits, edit => Assert.Contains(Assert.IsType<SetWeekLoad>(edit).First, new[] { Desk.Weeks[2], Desk.Weeks[3] }));
    }

    [Fact]
    public async Task Enough_keeps_the_first_plan_and_looks_for_no_other()
    {
        await using var desk = await Desk.OpenAsync();
        var run = desk.Workspace.Runs.Begin(await AskedAsync(desk, 3));
        run.Changed += run.Keep;
        await run.Ended;
        Assert.Equal(RunStatus.Kept, run.State.Status);
        Assert.Single(run.State.Plans);
    }

    [Fact]
    public async Task A_run_goes_on_half_a_minute_without_a_viewer_and_ends_then()
    {
        await using var desk = await Desk.OpenAsync();
        using var go = new ManualResetEventSlim();
        var told = new TaskCompletionSource();
        var run = desk.Workspace.Runs.Begin(await AskedAsync(desk, 1));
        run.Changed += () =>
        {
            told.TrySetResult();
            go.Wait();
        };
        var viewer = run.Watch();
        await told.Task;
        desk.Clock.Advance(TimeSpan.FromMinutes(10));
        viewer.Dispose();
        desk.Clock.Advance(TimeSpan.FromSeconds(29));
        Assert.Equal(RunStatus.AtWork, run.State.Status);
        desk.Clock.Advance(TimeSpan.FromSeconds(2));
        go.Set();
        await run.Ended;
        Assert.Equal((RunStatus.Stopped, 0), (run.State.Status, run.State.Plans.Count));
    }

    [Fact]
    public async Task A_new_run_ends_the_one_before()
    {
        await using var desk = await Desk.OpenAsync();
        var asked = await AskedAsync(desk, 3);
        using var go = new ManualResetEventSlim();
        var first = desk.Workspace.Runs.Begin(asked);
        // At work until the second has begun.
        first.Changed += go.Wait;
        var second = desk.Workspace.Runs.Begin(asked);
        go.Set();
        await Task.WhenAll(first.Ended, second.Ended);
        Assert.Equal(RunStatus.Stopped, first.State.Status);
        Assert.Equal(RunStatus.Done, second.State.Status);
    }

    private static async Task<Asked> AskedAsync(Desk desk, int plans)
    {
        var open = (await desk.Workspace.SeasonAsync(await desk.StartAsync()))!;
        var matches = Enumerable.Range(0, 6).Select(week => new SetMatch(new Match(new($"m{week}"), new DateOnly(2027, 8, 14).AddDays(7 * week), Opponent: "Turnes", Venue: Venue.Home)));
        Assert.IsType<Seasonwright.Desk.Streams.Kept>(await open.Stream.ApplyAsync(desk.Runa, new(Guid.NewGuid(), open.Stream.State.Number, [.. matches])));
        return Asked.ForPlan(open.Season, open.Setup, new DateOnly(2027, 6, 1), plans);
    }
}
