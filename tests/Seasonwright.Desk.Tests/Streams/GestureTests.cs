using System.Collections.Immutable;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk.Streams;
using Seasonwright.Store.Log;
using Seasonwright.Wire;

namespace Seasonwright.Desk.Tests.Streams;

public class GestureTests
{
    [Fact]
    public async Task A_gesture_sent_again_gets_its_first_answer_whatever_happened_since_and_whatever_it_holds_now()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        var gesture = Desk.Gesture(open, Desk.Load(3, 2000));
        var first = await open.Stream.ApplyAsync(desk.Runa, gesture);
        await open.Stream.ApplyAsync(desk.Tove, Desk.Gesture(open, Desk.Load(3, 2100)));
        Assert.Equal(first, await open.Stream.ApplyAsync(desk.Runa, gesture));
        Assert.Equal(first, await open.Stream.ApplyAsync(desk.Runa, gesture with { Edits = [Desk.Load(4, 900)] }));
        await desk.RestartAsync();
        open = await desk.SeasonAsync(open.Season.Id);
        Assert.Equal(first, await open.Stream.ApplyAsync(desk.Runa, gesture));
        Assert.Equal((2100, null), (Desk.Au(open, 3), Desk.Au(open, 4)));
        Assert.Equal(new long[] { 1, 2, 3 }, (await desk.Workspace.Folder.Log.ReadAllAsync(open.Stream.Id)).Select(entry => entry.Number));
    }

    [Fact]
    public async Task Sent_by_several_connections_at_once_it_is_kept_once()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        var gesture = Desk.Gesture(open, Desk.Load(3, 2000), Desk.Load(4, 2100));
        var answers = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(() => open.Stream.ApplyAsync(desk.Runa, gesture))));
        Assert.All(answers, answer => Assert.Equal(new Kept(3), answer));
        Assert.Equal(3, (await desk.Workspace.Folder.Log.ReadAllAsync(open.Stream.Id)).Length);
    }

    [Fact]
    public async Task Edits_of_one_gesture_stand_and_fall_together()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        var before = open.Season;
        var answer = await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, Desk.Load(3, 2000), new LockWeeks(Desk.Weeks[3], Desk.Weeks[3], true), Desk.Load(4, 2000)));
        Assert.Equal("week-locked", Assert.Single(Assert.IsType<NotDone>(answer).Reasons).Id);
        Assert.Same(before, open.Season);
        Assert.Single(await desk.Workspace.Folder.Log.ReadAllAsync(open.Stream.Id));
    }

    [Fact]
    public async Task A_gesture_that_changes_nothing_is_acknowledged_and_not_logged()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, Desk.Load(3, 2000)));
        Assert.Equal(new Kept(2), await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, Desk.Load(3, 2000))));
        Assert.Equal(2, (await desk.Workspace.Folder.Log.ReadAllAsync(open.Stream.Id)).Length);
    }

    [Fact]
    public async Task An_edit_of_another_kind_of_stream_is_refused()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        Assert.Equal("edit-elsewhere", Assert.Single(Assert.IsType<NotDone>(await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new SetTeamName("Other")))).Reasons).Id);
        Assert.Equal("edit-elsewhere", Assert.Single(Assert.IsType<NotDone>(await open.TeamStream.ApplyAsync(desk.Runa, Desk.Gesture(open, Desk.Load(1, 1)))).Reasons).Id);
    }

    /// <summary>The disk kept the gesture, but its answer never came (a fault after the commit): the log is ahead of memory.</summary>
    [Theory, InlineData(true), InlineData(false)]
    public async Task What_the_log_holds_beyond_memory_is_taken_over(bool isSentAgain)
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        var gesture = Desk.Gesture(open, Desk.Load(3, 2000));
        var accepted = Assert.IsType<Accepted>(Decider.Decide(open.Season, (SeasonEdit)gesture.Edits[0]));
        var hash = FactHash.Of(open.Season.Facts).Follow(accepted.Step).Hex;
        var entry = new NewEntry(LogText.Version, LogText.Of(gesture.Edits[0]), LogText.Of(accepted.Step), hash);
        Assert.IsType<AppendOutcome.Appended>(await desk.Workspace.Folder.Log.AppendAsync(
            new AppendRequest(gesture.Id, "runa", [new StreamAppend(open.Stream.Id, open.Stream.State.Number, [entry])])));

        if (isSentAgain) Assert.Equal(new Kept(2), await open.Stream.ApplyAsync(desk.Runa, gesture));
        else Assert.Equal(new Kept(3), await open.Stream.ApplyAsync(desk.Tove, Desk.Gesture(open, Desk.Load(4, 1900))));
        Assert.Equal((2000, isSentAgain ? null : 1900), (Desk.Au(open, 3), Desk.Au(open, 4)));
        Assert.IsType<Kept>(await open.Stream.UndoAsync(desk.Runa, Guid.NewGuid()));
        Assert.Null(Desk.Au(open, 3));
    }
}
