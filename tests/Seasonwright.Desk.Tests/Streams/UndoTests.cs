using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Tests.Streams;

public class UndoTests
{
    private static Task<Answer> Do(OpenSeason open, Actor who, params Edit[] edits) => open.Stream.ApplyAsync(who, Desk.Gesture(open, edits));

    private static Task<Answer> Undo(OpenSeason open, Actor who) => open.Stream.UndoAsync(who, Guid.NewGuid());

    private static Task<Answer> Redo(OpenSeason open, Actor who) => open.Stream.RedoAsync(who, Guid.NewGuid());

    private static string Refusal(Answer answer) => Assert.Single(Assert.IsType<NotDone>(answer).Reasons).Id;

    [Fact]
    public async Task Everyone_takes_back_their_own_also_after_a_restart()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        await Do(open, desk.Runa, Desk.Load(1, 1000), Desk.Load(2, 1100));
        await Do(open, desk.Tove, Desk.Load(3, 1200));
        await Do(open, desk.Runa, Desk.Load(4, 1300));

        Assert.Equal(new Kept(6), await Undo(open, desk.Runa));
        await desk.RestartAsync();
        open = await desk.SeasonAsync(open.Season.Id);
        Assert.True(open.Stream.CanUndo(desk.Runa) && open.Stream.CanRedo(desk.Runa));
        Assert.Equal(new Kept(7), await Undo(open, desk.Runa));
        Assert.Equal((null, null, 1200, null), (Desk.Au(open, 1), Desk.Au(open, 2), Desk.Au(open, 3), Desk.Au(open, 4)));
        Assert.Equal("undo-none", Refusal(await Undo(open, desk.Runa)));

        await desk.RestartAsync();
        open = await desk.SeasonAsync(open.Season.Id);
        Assert.False(open.Stream.CanUndo(desk.Runa));
        await Redo(open, desk.Runa);
        await Redo(open, desk.Runa);
        Assert.Equal("redo-none", Refusal(await Redo(open, desk.Runa)));
        Assert.Equal((1000, 1100, 1200, 1300), (Desk.Au(open, 1), Desk.Au(open, 2), Desk.Au(open, 3), Desk.Au(open, 4)));
        Assert.False(open.Stream.CanRedo(desk.Tove));
    }

    [Fact]
    public async Task Taking_back_and_bringing_back_as_often_as_one_likes_gives_the_same_two_states()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        var before = open.Season.Facts;
        await Do(open, desk.Runa, Desk.Load(1, 1000));
        var after = open.Season.Facts;
        for (var i = 0; i < 3; i++)
        {
            await Undo(open, desk.Runa);
            Assert.Equal(before, open.Season.Facts);
            await Redo(open, desk.Runa);
            Assert.Equal(after, open.Season.Facts);
        }
    }

    [Fact]
    public async Task A_new_gesture_forgets_what_could_be_brought_back_but_only_the_persons_own()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        await Do(open, desk.Runa, Desk.Load(1, 1000));
        await Do(open, desk.Tove, Desk.Load(2, 1000));
        await Undo(open, desk.Runa);
        await Undo(open, desk.Tove);
        await Do(open, desk.Tove, Desk.Load(3, 1000));
        Assert.False(open.Stream.CanRedo(desk.Tove));
        Assert.Equal("redo-none", Refusal(await Redo(open, desk.Tove)));
        Assert.IsType<Kept>(await Redo(open, desk.Runa));
    }

    [Fact]
    public async Task Refused_when_a_later_change_stands_on_it_naming_the_change_and_who_made_it()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        await Do(open, desk.Runa, Desk.Load(1, 1000), Desk.Load(2, 1000));
        await Do(open, desk.Tove, Desk.Load(2, 1700));
        await Do(open, desk.Tove, Desk.Load(3, 900));
        var now = open.Season;
        var refusal = Assert.Single(Assert.IsType<NotDone>(await Undo(open, desk.Runa)).Reasons);
        Assert.Equal("undo-overtaken", refusal.Id);
        Assert.Contains("Tove Marrin", refusal.Sentence, StringComparison.Ordinal);
        Assert.Contains("week 2", refusal.Sentence, StringComparison.Ordinal);
        Assert.Contains(Desk.PercentOf(open, 1700), refusal.Sentence, StringComparison.Ordinal);
        Assert.Same(now, open.Season);

        await Undo(open, desk.Tove);
        await Undo(open, desk.Tove);
        Assert.IsType<Kept>(await Undo(open, desk.Runa));
        Assert.Null(Desk.Au(open, 2));
    }

    [Fact]
    public async Task Overtaken_by_somebody_elses_undo_it_says_what_was_undone()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        await Do(open, desk.Tove, Desk.Load(1, 1000));
        await Do(open, desk.Runa, Desk.Load(1, 1500));
        await Undo(open, desk.Runa);
        await Undo(open, desk.Tove);
        var refusal = Assert.Single(Assert.IsType<NotDone>(await Redo(open, desk.Runa)).Reasons);
        Assert.Contains("Tove Marrin", refusal.Sentence, StringComparison.Ordinal);
        Assert.Contains(Desk.PercentOf(open, 1000), refusal.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_start_of_a_season_is_not_taken_back()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        Assert.False(open.Stream.CanUndo(desk.Runa));
        Assert.Equal("undo-none", Refusal(await Undo(open, desk.Runa)));
        Assert.True(open.Season.IsStarted);
        await desk.RestartAsync();
        Assert.False((await desk.SeasonAsync(open.Season.Id)).Stream.CanUndo(desk.Runa));
    }

    [Fact]
    public async Task A_publication_stands_and_is_passed_over_also_after_a_restart()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        await Do(open, desk.Runa, Desk.Load(1, 1000));
        await Do(open, desk.Runa, new Publish("For the board"));
        await Do(open, desk.Runa, Desk.Load(2, 1100));
        await Do(open, desk.Runa, new Publish());
        Assert.Equal(new Kept(6), await Undo(open, desk.Runa));
        await desk.RestartAsync();
        open = await desk.SeasonAsync(open.Season.Id);
        Assert.Equal(new Kept(7), await Undo(open, desk.Runa));
        Assert.Equal((null, null, 2), (Desk.Au(open, 1), Desk.Au(open, 2), open.Season.LastPublication?.Number));
        Assert.False(open.Stream.CanUndo(desk.Runa));
        var published = await open.PublishedAsync();
        Assert.Equal(1100, published!.Season.TargetOf(Desk.Weeks[1])?.Au);

        // What was taken back before a publication can be brought back after it.
        await Do(open, desk.Runa, new Publish());
        Assert.IsType<Kept>(await Redo(open, desk.Runa));
        Assert.IsType<Kept>(await Redo(open, desk.Runa));
        Assert.Equal((1000, 1100, 3), (Desk.Au(open, 1), Desk.Au(open, 2), open.Season.LastPublication?.Number));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Of_a_gesture_that_publishes_and_edits_only_the_edit_is_taken_back(bool isPublicationFirst)
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        Edit[] edits = [new Publish(), Desk.Load(1, 1000)];
        await Do(open, desk.Runa, isPublicationFirst ? edits : [.. edits.Reverse()]);
        await desk.RestartAsync();
        open = await desk.SeasonAsync(open.Season.Id);
        Assert.IsType<Kept>(await Undo(open, desk.Runa));
        Assert.Equal((null, 1), (Desk.Au(open, 1), open.Season.LastPublication?.Number));
        Assert.IsType<Kept>(await Redo(open, desk.Runa));
        Assert.Equal(1000, Desk.Au(open, 1));
    }

    [Fact]
    public async Task An_undo_sent_again_takes_back_no_more()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        await Do(open, desk.Runa, Desk.Load(1, 1000));
        await Do(open, desk.Runa, Desk.Load(2, 1000));
        var gesture = Guid.NewGuid();
        var answers = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => open.Stream.UndoAsync(desk.Runa, gesture))));
        Assert.All(answers, answer => Assert.Equal(new Kept(4), answer));
        await desk.RestartAsync();
        open = await desk.SeasonAsync(open.Season.Id);
        Assert.Equal(new Kept(4), await open.Stream.UndoAsync(desk.Runa, gesture));
        Assert.Equal((1000, null), (Desk.Au(open, 1), Desk.Au(open, 2)));
    }

    [Fact]
    public async Task Season_and_setup_are_taken_back_apart()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        await open.TeamStream.ApplyAsync(desk.Runa, new Gesture(Guid.NewGuid(), open.TeamStream.State.Number, [new SetLocale(new LocaleSettings(Zone: "Europe/Oslo"))]));
        await Do(open, desk.Runa, Desk.Load(1, 1000));
        await open.TeamStream.UndoAsync(desk.Runa, Guid.NewGuid());
        Assert.Equal("Etc/UTC", open.Setup.Locale.Zone);
        Assert.Equal(1000, Desk.Au(open, 1));
    }
}
