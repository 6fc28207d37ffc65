using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Tests.Seasons;

public class OpenSeasonTests
{
    [Fact]
    public async Task Pages_are_told_of_changes_of_the_season_and_of_the_setup()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        var (season, setup, told) = (open.Season, open.Setup, 0);
        open.Changed += () => told++;
        Assert.Same(season, open.Season);
        await open.TeamStream.ApplyAsync(desk.Runa, new Gesture(Guid.NewGuid(), open.TeamStream.State.Number, [new SetLocale(new LocaleSettings(Zone: "Europe/Oslo"))]));
        Assert.Same(season, open.Season);
        Assert.NotSame(setup, open.Setup);
        Assert.Equal(("Europe/Oslo", "Harbour Vale"), (open.Setup.Locale.Zone, open.Setup.TeamName));
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, Desk.Load(1, 1000)));
        Assert.NotSame(season, open.Season);
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new MoveMatch(new("nowhere"), new(2027, 8, 1))));
        Assert.Equal(2, told);
    }

    [Fact]
    public async Task What_is_published_stays_as_it_was_while_the_draft_goes_on()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        Assert.Null(await open.PublishedAsync());
        Assert.Empty(OpenSeason.Draft(open.Season, open.Setup, null));
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new SetMatch(new Match(new("m1"), new(2027, 8, 7), Opponent: "Turnes", Venue: Venue.Home))));
        var then = desk.Clock.GetUtcNow();
        // One gesture that publishes and goes on: what follows is draft.
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new Publish("Pre-season"), new MoveMatch(new("m1"), new(2027, 8, 8))));
        desk.Clock.Advance(TimeSpan.FromDays(1));
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, Desk.Load(3, 2000)));

        await desk.RestartAsync();
        open = await desk.SeasonAsync(open.Season.Id);
        var published = await open.PublishedAsync();
        Assert.Equal((new Publication(1, "Pre-season"), then), (published!.Publication, published.Instant));
        Assert.Equal(new DateOnly(2027, 8, 7), published.Season.Match(new("m1"))!.Day);
        var draft = OpenSeason.Draft(open.Season, open.Setup, published);
        Assert.Equal(2, draft.Count);
        Assert.Contains(draft, line => line.Contains("Sat 7 Aug 2027", StringComparison.Ordinal) && line.Contains("Sun 8 Aug 2027", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_version_stands_as_it_was_while_undo_goes_back_behind_it()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new Publish("One")));
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, Desk.Load(3, 2000)));
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new Publish("Two")));
        await open.Stream.UndoAsync(desk.Runa, Guid.NewGuid());
        var published = await open.PublishedAsync();
        Assert.Equal(new Publication(2, "Two"), published!.Publication);
        Assert.Equal((null, 2000), (Desk.Au(open, 3), published.Season.TargetOf(Desk.Weeks[2])?.Au));
        Assert.Single(OpenSeason.Draft(open.Season, open.Setup, published));
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, Desk.Load(3, 2100), new Publish("Mended")));
        published = await open.PublishedAsync();
        Assert.Equal(new Publication(3, "Mended"), published!.Publication);
        Assert.Equal(2100, published.Season.TargetOf(Desk.Weeks[2])!.Value.Au);
        Assert.Empty(OpenSeason.Draft(open.Season, open.Setup, published));
    }
}
