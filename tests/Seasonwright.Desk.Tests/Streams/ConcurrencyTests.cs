using System.Collections.Concurrent;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Tests.Streams;

public class ConcurrencyTests
{
    private const int Hands = 8, Each = 15;

    [Fact]
    public async Task Many_hands_at_once_lose_nothing_and_every_window_is_told_in_order()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        var windows = Enumerable.Range(0, 3).Select(_ => new ConcurrentQueue<long>()).ToList();
        foreach (var window in windows) open.Stream.Changed += state => window.Enqueue(state.Number);
        var seasons = 0;
        open.Changed += () => Interlocked.Increment(ref seasons);

        // Each hand has a week of its own, so that all can go through whatever the order.
        var answers = await Task.WhenAll(Enumerable.Range(1, Hands).Select(hand => Task.Run(async () =>
        {
            var mine = new List<Answer>();
            for (var i = 1; i <= Each; i++) mine.Add(await open.Stream.ApplyAsync(new Actor($"hand-{hand}"), Desk.Gesture(open, Desk.Load(hand, i))));
            return mine;
        })));

        var numbers = Enumerable.Range(2, Hands * Each).Select(number => (long)number).ToList();
        Assert.Equal(numbers, answers.SelectMany(mine => mine).Select(answer => Assert.IsType<Kept>(answer).Number).Order());
        Assert.All(answers, mine => Assert.Equal(mine.Select(answer => ((Kept)answer).Number).Order(), mine.Select(answer => ((Kept)answer).Number)));
        Assert.All(windows, window => Assert.Equal(numbers, window));
        Assert.Equal(numbers.Count, seasons);
        Assert.All(Enumerable.Range(1, Hands), hand => Assert.Equal(Each, Desk.Au(open, hand)));

        await desk.RestartAsync();
        var again = await desk.SeasonAsync(open.Season.Id);
        Assert.Equal(open.Season.Facts, again.Season.Facts);
        Assert.Equal(Enumerable.Range(1, (Hands * Each) + 1).Select(number => (long)number), (await desk.Workspace.Folder.Log.ReadAllAsync(again.Stream.Id)).Select(entry => entry.Number));
        Assert.All(Enumerable.Range(1, Hands), hand => Assert.True(again.Stream.CanUndo(new Actor($"hand-{hand}"))));
    }

    [Fact]
    public async Task Of_many_hands_on_one_place_the_first_wins_and_the_others_are_told_who()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        var seen = open.Stream.State.Number;
        var answers = await Task.WhenAll(Enumerable.Range(1, Hands).Select(hand => Task.Run(() =>
            open.Stream.ApplyAsync(desk.Tove, new Gesture(Guid.NewGuid(), seen, [Desk.Load(1, 1000 + hand)])))));
        Assert.Equal(new Kept(2), Assert.Single(answers.OfType<Kept>()));
        Assert.All(answers.OfType<NotDone>(), answer => Assert.Contains("Tove Marrin", Assert.Single(answer.Reasons).Sentence, StringComparison.Ordinal));
        Assert.Equal(Hands - 1, answers.OfType<NotDone>().Count());
    }

    [Fact]
    public async Task Opened_by_many_at_once_it_is_one_season()
    {
        await using var desk = await Desk.OpenAsync();
        var id = await desk.StartAsync();
        await desk.RestartAsync();
        var opened = await Task.WhenAll(Enumerable.Range(0, Hands).Select(_ => Task.Run(() => desk.SeasonAsync(id))));
        Assert.All(opened, open => Assert.Same(opened[0], open));
    }
}
