using Microsoft.Extensions.Time.Testing;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Demo;
using Seasonwright.Desk.Proposing;
using Seasonwright.Desk.Tests.Demo;
using Seasonwright.Solver;

namespace Seasonwright.Desk.Tests.Proposing;

/// <summary>Both ways on are worked out once for all who look, as a run that can be stopped.</summary>
public sealed class WaysRunTests : IDisposable
{
    private static readonly DateOnly Today = new(2027, 10, 18);

    private static readonly (Season Season, Setup Setup) Demo = DemoSeasonTests.Played(DemoSeason.Make(new(2027, 7, 5)));

    private static readonly Match Round2 = Demo.Season.AllMatches.First(match => match is { Status: MatchStatus.Conditional, Condition.On: not null });

    private readonly ProposalRuns runs = new(new FakeTimeProvider());

    public void Dispose() => runs.Dispose();

    [Fact]
    public async Task All_who_look_see_one_run_until_the_season_changes()
    {
        var run = Of(Demo.Season);
        Assert.Same(run, Of(Demo.Season));
        await run.Ended;
        Assert.Equal((RunStatus.Done, Branches.Plans), (run.State.Status, run.State.Made));
        Assert.NotNull(run.State.Both);
        Assert.Same(run, Of(Demo.Season));
        var other = Of(Done(new SetNote(new Note(new("note"), Seasonwright.Core.Calendar.DaySpan.Of(Today), "Anything"))));
        Assert.NotSame(run, other);
        other.Stop();
        await other.Ended;
    }

    [Fact]
    public async Task Each_plan_is_told_and_a_run_that_was_stopped_is_begun_anew()
    {
        using var go = new ManualResetEventSlim();
        List<int> made = [];
        var run = Of(Demo.Season);
        run.Changed += () =>
        {
            made.Add(run.State.Made);
            go.Wait();
        };
        run.Stop();
        go.Set();
        await run.Ended;
        Assert.Equal(RunStatus.Stopped, run.State.Status);
        Assert.Null(run.State.Both);
        var again = Of(Demo.Season);
        Assert.NotSame(run, again);
        again.Changed += () => made.Add(again.State.Made);
        await again.Ended;
        Assert.Equal(RunStatus.Done, again.State.Status);
        Assert.True(made.SequenceEqual(made.Order()) && made[^1] == Branches.Plans, string.Join(' ', made));
    }

    /// <summary>The decision falls in the last week.</summary>
    [Fact]
    public async Task Where_no_week_is_left_there_is_nothing_and_no_fault()
    {
        var decides = Demo.Season.Match(Round2.Condition!.On!.Value)!;
        var last = Demo.Season.Days!.Value.Last;
        var run = Of(Done(new SetMatch(decides with { Day = last.AddDays(-3), KickOff = null }), new SetMatch(Round2 with { Day = last, KickOff = null })));
        await run.Ended;
        Assert.Equal(RunStatus.Done, run.State.Status);
        Assert.Null(run.State.Both);
    }

    private WaysRun Of(Season season) => runs.BothWays(Asked.ForPlan(season, Demo.Setup, Today, 1), Round2.Id);

    private static Season Done(params SeasonEdit[] edits) => edits.Aggregate(Demo.Season, (current, edit) => current.With(Assert.IsType<Accepted>(Decider.Decide(current, edit)).Step));
}
