using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Demo;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Tests.Streams;

public class HistoryTests
{
    [Fact]
    public async Task Each_gesture_is_one_line_in_words_with_author_and_instant_newest_first()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        var started = desk.Clock.GetUtcNow();
        desk.Clock.Advance(TimeSpan.FromMinutes(5));
        await open.Stream.ApplyAsync(desk.Tove, Desk.Gesture(open, Desk.Load(3, 2000), Desk.Load(4, 1900)));
        await desk.RestartAsync();
        open = await desk.SeasonAsync(open.Season.Id);
        var lines = await open.Stream.HistoryAsync();
        Assert.Equal(["tove", "runa"], lines.Select(line => line.Author), StringComparer.Ordinal);
        Assert.Equal([started.AddMinutes(5), started], lines.Select(line => line.Instant));
        Assert.Equal([(2L, 3L), (1L, 1L)], lines.Select(line => (line.First, line.Last)));
        Assert.Contains("week 3", lines[0].Words, StringComparison.Ordinal);
        Assert.Contains(Desk.PercentOf(open, 2000), lines[0].Words, StringComparison.Ordinal);
        Assert.Contains("; ", lines[0].Words, StringComparison.Ordinal);
        Assert.Contains("Harbour Vale", lines[1].Words, StringComparison.Ordinal);
        Assert.Contains(SeasonFacets.WeekLoad.Of(Desk.Weeks[2]), lines[0].Wrote);
    }

    /// <summary>The normal hard week of 2500 AU is by definition 100 %.</summary>
    [Fact]
    public async Task Loads_are_told_in_per_cent_of_the_normal_hard_week_and_qualities_by_the_teams_names()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        Edit[] team = [new SetReferenceWeek(new Load(2500)), new SetQuality(new Quality(new("power"), "Jump and throw", QualityKind.Power, 3))];
        await open.TeamStream.ApplyAsync(desk.Runa, new Gesture(Guid.NewGuid(), open.TeamStream.State.Number, team));
        await open.Stream.ApplyAsync(desk.Tove, Desk.Gesture(open, Desk.Load(3, 2000), new SetEmphasis(Desk.Weeks[1], Desk.Weeks[2], new("power"), Emphasis.Focus)));
        Assert.Equal("Set the load of week 3: 80 %; Set Jump and throw to focus in weeks 2 to 3", (await open.Stream.HistoryAsync())[0].Words);
    }

    [Fact]
    public async Task Undo_and_redo_name_what_they_are_about_and_mark_it()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        await open.Stream.ApplyAsync(desk.Tove, Desk.Gesture(open, Desk.Load(3, 2000)));
        async Task<(string Words, bool IsTakenBack)> After(Func<Actor, Guid, Task<Answer>> act)
        {
            Assert.IsType<Kept>(await act(desk.Tove, Guid.NewGuid()));
            var lines = await open.Stream.HistoryAsync();
            Assert.All(lines.SkipLast(1), line => Assert.Equal(lines[^2].Words, line.Named));
            return (lines[0].Words, lines[^2].TakenBack);
        }
        var done = (await open.Stream.HistoryAsync())[0].Words;
        Assert.Equal(($"Undid: {done}", true), await After(open.Stream.UndoAsync));
        Assert.Equal(($"Redid: {done}", false), await After(open.Stream.RedoAsync));
        Assert.Equal(($"Undid: {done}", true), await After(open.Stream.UndoAsync));
        Assert.Equal(($"Redid: {done}", false), await After(open.Stream.RedoAsync));
    }

    [Fact]
    public async Task A_gesture_of_many_edits_tells_the_first_and_counts_the_rest()
    {
        await using var desk = await Desk.OpenAsync();
        var (_, id) = await desk.Workspace.AddDemoAsync(desk.Runa, new(2027, 10, 20));
        var line = Assert.Single(await (await desk.SeasonAsync(id!.Value)).Stream.HistoryAsync());
        Assert.InRange(line.Words.Length, 20, 400);
        Assert.EndsWith($"and {line.Last - 3} more", line.Words, StringComparison.Ordinal);
    }
}
