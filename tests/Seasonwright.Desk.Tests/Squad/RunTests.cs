using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Squad;
using Seasonwright.Desk.Streams;
using Seasonwright.Desk.Workouts;

namespace Seasonwright.Desk.Tests;

/// <summary>Running tests told, refused and taken back, and the home programme they are for. The clock stands at Wednesday 20 October 2027, 07:00.</summary>
public sealed class RunTests
{
    private static readonly DateOnly Today = new(2027, 10, 20);

    [Fact]
    public async Task A_test_is_told_once_and_taken_back()
    {
        await using var desk = await Desk.OpenAsync();
        var (open, ida) = await PlayerAsync(desk);
        var (team, gesture) = (open.Setup.Id, Guid.NewGuid());
        for (var time = 0; time < 2; time++) Assert.IsType<Kept>(await desk.Workspace.TellRunAsync(team, gesture, ida, Today, 1_500, 375));
        var test = Assert.Single(await RunsAsync(desk, team));
        Assert.Equal((gesture, Today, 4m), (test.Id, test.Day, test.Speed));
        // Somebody else's is not theirs to take back.
        Assert.IsType<Kept>(await desk.Workspace.TakeBackRunAsync(team, new("nobody"), gesture));
        Assert.Single(await RunsAsync(desk, team));
        Assert.IsType<Kept>(await desk.Workspace.TakeBackRunAsync(team, ida, gesture));
        Assert.Empty(await RunsAsync(desk, team));
        Assert.IsType<NotDone>(await desk.Workspace.TellRunAsync(team, Guid.NewGuid(), new("nobody"), Today, 1_500, 375));
    }

    [Fact]
    public async Task What_cannot_be_is_told_by_field_and_nothing_is_kept()
    {
        await using var desk = await Desk.OpenAsync();
        var (open, ida) = await PlayerAsync(desk);
        foreach (var (day, metres, seconds, told) in new[]
        {
            (Today.AddDays(1), 1_500, 375, "run-test-day run-day"), (Today.AddYears(-11), 1_500, 375, "run-test-day run-day"),
            (Today, 0, 375, "run-test-metres run-metres"), (Today, 4_001, 900, "run-test-metres run-metres"), (Today, -1_500, 375, "run-test-metres run-metres"),
            (Today, 1_500, 0, "run-test-time run-time"), (Today, 1_500, 25, "run-test-time run-time"), (Today, 1_500, 901, "run-test-time run-time"),
            (Today, 4_000, 200, "run-test-speed run-time"), (Today, 900, 899, "run-test-speed run-time"),
            (Today.AddDays(1), 0, 0, "run-test-day run-day, run-test-metres run-metres, run-test-time run-time"),
        })
            Assert.Equal(told, string.Join(", ", Assert.IsType<NotDone>(await desk.Workspace.TellRunAsync(open.Setup.Id, Guid.NewGuid(), ida, day, metres, seconds)).Reasons.Select(reason => $"{reason.Id} {reason.Subject}")));
        Assert.Empty(await RunsAsync(desk, open.Setup.Id));
    }

    [Fact]
    public async Task A_programme_is_written_handed_out_as_a_draft_until_it_is_published_and_removed()
    {
        await using var desk = await Desk.OpenAsync();
        var (open, ida) = await PlayerAsync(desk);
        var programme = new HomeProgramme(new("h"), "Autumn break", Today.AddDays(5), 2, HomeKit.Nothing, [new(DayOfWeek.Monday, null, new HomeRun(1, 1_200, WorkUnit.Seconds, new Percent(70)))]);
        Assert.IsType<Kept>(await open.WriteHomeAsync(desk.Runa, Guid.NewGuid(), programme, open.Stream.State.Number));
        Assert.Null(await desk.Workspace.HomeAsync(open, new("none")));
        var home = await desk.Workspace.HomeAsync(open, programme.Id);
        Assert.True(home!.Shared.Edition.IsDraft);
        Assert.Equal("Ida Norlund", Assert.Single(home.Sheets).Name);
        Assert.Empty((await desk.Workspace.HomeAsync(open, programme.Id, new("nobody")))!.Sheets);
        Assert.IsType<Kept>(await open.Stream.ApplyAsync(desk.Runa, new Gesture(Guid.NewGuid(), open.Stream.State.Number, [new Publish(null)])));
        Assert.False((await desk.Workspace.HomeAsync(open, programme.Id, ida))!.Shared.Edition.IsDraft);
        Assert.IsType<Kept>(await open.RemoveHomeAsync(desk.Runa, Guid.NewGuid(), programme.Id));
        Assert.Null(await desk.Workspace.HomeAsync(open, programme.Id));
    }

    [Fact]
    public async Task A_programme_that_cannot_be_is_refused_and_nothing_is_changed()
    {
        await using var desk = await Desk.OpenAsync();
        var (open, _) = await PlayerAsync(desk);
        var sled = new Workout(new("sled"), "Sled", [new(PartKind.Straight, [new(new("a"), new("wrestling"), new(3, 20, WorkUnit.Seconds, Effort.Free))], 60)], Progression.None);
        Assert.IsType<Kept>(await open.Stream.ApplyAsync(desk.Runa, new Gesture(Guid.NewGuid(), open.Stream.State.Number, [new SetWorkout(sled with { Parts = [] })])));
        var (before, programme) = (open.Season, new HomeProgramme(new("h"), "Break", Today, 7, HomeKit.Nothing, [new(DayOfWeek.Monday, sled.Id)]));
        // A workout of nothing has nothing that can be done.
        Assert.Equal("home-nothing", Assert.Single(Assert.IsType<NotDone>(await open.WriteHomeAsync(desk.Runa, Guid.NewGuid(), programme, open.Stream.State.Number)).Reasons).Id);
        Assert.Equal("home-weeks", Assert.Single(Assert.IsType<NotDone>(await open.WriteHomeAsync(desk.Runa, Guid.NewGuid(), programme with { Days = [new(DayOfWeek.Monday, null, new HomeRun(1, 600, WorkUnit.Seconds, new Percent(70)))] }, open.Stream.State.Number)).Reasons).Id);
        Assert.Equal(before, open.Season);
    }

    private static async Task<IReadOnlyList<RunTest>> RunsAsync(Desk desk, TeamId team) => [.. (await desk.Workspace.RosterAsync(team)).SelectMany(player => player.Runs)];

    private static async Task<(OpenSeason Open, PersonId Person)> PlayerAsync(Desk desk)
    {
        var open = await desk.SeasonAsync(await desk.StartAsync());
        var draft = new AthleteDraft(null, "Norlund", "Ida", "4", [], Today.AddYears(-24), 6, null, Today, null, null, []);
        return (open, (await desk.Workspace.PutAthleteAsync(open.Setup.Id, Guid.NewGuid(), draft with { IsAnother = true })).Person);
    }
}
