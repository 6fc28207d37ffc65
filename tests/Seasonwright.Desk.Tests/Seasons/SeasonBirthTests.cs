using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Tests.Seasons;

public class SeasonBirthTests
{
    private static readonly StartSeason Start = new(new(2027, 7, 5), DayOfWeek.Monday, Desk.Weeks, new TeamCard("Harbour Vale", "2027-28"));

    [Fact]
    public async Task A_new_team_comes_with_its_first_season()
    {
        await using var desk = await Desk.OpenAsync();
        var (answer, id) = await desk.Workspace.CreateAsync(desk.Runa, Guid.NewGuid(), null, [new SetLocale(new LocaleSettings(Zone: "Europe/Oslo"))], [Start, Desk.Load(1, 1000)]);
        Assert.Equal(new Kept(2), answer);
        await desk.RestartAsync();
        var open = await desk.SeasonAsync(id!.Value);
        Assert.Equal((1000, "Harbour Vale", "Europe/Oslo"), (Desk.Au(open, 1), open.Setup.TeamName, open.Setup.Locale.Zone));
    }

    [Fact]
    public async Task Sent_again_it_gives_the_season_the_first_one_made()
    {
        await using var desk = await Desk.OpenAsync();
        var gesture = Guid.NewGuid();
        var first = await desk.Workspace.CreateAsync(desk.Runa, gesture, null, [], [Start]);
        var open = await desk.SeasonAsync(first.Season!.Value);
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, Desk.Load(1, 1000)));
        Assert.Equal(first, await desk.Workspace.CreateAsync(desk.Runa, gesture, null, [], [Start, Desk.Load(1, 2000)]));
        await desk.RestartAsync();
        Assert.All(await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => desk.Workspace.CreateAsync(desk.Runa, gesture, null, [], [Start])))), again => Assert.Equal(first, again));
        Assert.Equal(1000, Desk.Au(await desk.SeasonAsync(first.Season.Value), 1));
        Assert.Single(await desk.Workspace.SeasonsAsync());
    }

    [Fact]
    public async Task One_edit_that_does_not_hold_makes_nothing_at_all()
    {
        await using var desk = await Desk.OpenAsync();
        var (answer, id) = await desk.Workspace.CreateAsync(desk.Runa, Guid.NewGuid(), null, [], [Start, new MoveMatch(new("nowhere"), new(2027, 8, 1))]);
        Assert.Equal("match-unknown", Assert.Single(Assert.IsType<NotDone>(answer).Reasons).Id);
        Assert.Null(id);
        (answer, id) = await desk.Workspace.CreateAsync(desk.Runa, Guid.NewGuid(), null, [new SetLocale(new LocaleSettings(Zone: "Nowhere/Land"))], [Start]);
        Assert.Equal("zone-unknown", Assert.Single(Assert.IsType<NotDone>(answer).Reasons).Id);
        Assert.Null(id);
        Assert.Empty(await desk.Workspace.SeasonsAsync());
        Assert.Empty(await desk.Workspace.Folder.Log.StreamsAsync());
    }

    [Fact]
    public async Task The_next_season_is_the_same_teams_and_aligned_on_the_first_match()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        var unaligned = await desk.Workspace.NextAsync(desk.Runa, Guid.NewGuid(), open.Season.Id, new(2028, 9, 2), "2028-29");
        Assert.Equal("next-season-unaligned", Assert.Single(Assert.IsType<NotDone>(unaligned.Answer).Reasons).Id);

        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, Desk.Load(9, 2000), new SetMatch(new Match(new("m1"), new(2027, 9, 4), Opponent: "Turnes")), new Publish("One")));
        // The list is in order of coming; of one instant it would be in order of ids, which are drawn by lot.
        desk.Clock.Advance(TimeSpan.FromDays(300));
        var (answer, id) = await desk.Workspace.NextAsync(desk.Runa, Guid.NewGuid(), open.Season.Id, new(2028, 9, 2), "2028-29");
        Assert.IsType<Kept>(answer);
        var next = await desk.SeasonAsync(id!.Value);
        Assert.Equal((new DateOnly(2028, 7, 3), 2000, 0), (next.Season.Frame.FirstDay, Desk.Au(next, 9), next.Season.AllMatches.Length));
        Assert.Same(open.TeamStream, next.TeamStream);
        Assert.Null(await next.PublishedAsync());
        Assert.Equal(["2027-28", "2028-29"], (await desk.Workspace.SeasonsAsync()).Select(season => season.Title), StringComparer.Ordinal);
    }

    [Fact]
    public async Task A_removed_team_goes_with_its_seasons_and_nothing_brings_it_back()
    {
        await using var desk = await Desk.OpenAsync();
        var gesture = Guid.NewGuid();
        var open = await desk.SeasonAsync(await desk.StartAsync(gesture));
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new SetMatch(new Match(new("m1"), new(2027, 9, 4), Opponent: "Turnes"))));
        await desk.Workspace.NextAsync(desk.Runa, Guid.NewGuid(), open.Season.Id, new(2028, 9, 2), null);
        var other = await desk.StartAsync();
        var pending = Desk.Gesture(open, Desk.Load(1, 1000));

        Assert.IsType<Kept>(await desk.Workspace.RemoveTeamAsync(desk.Runa, open.Setup.Id));
        Assert.Equal(other, Assert.Single(await desk.Workspace.SeasonsAsync()).Id);
        Assert.Null(await desk.Workspace.SeasonAsync(open.Season.Id));
        // A page that still shows it, a gesture on its way, a start sent again, and the removal itself.
        Assert.Equal("stream-gone", Assert.Single(Assert.IsType<NotDone>(await open.Stream.ApplyAsync(desk.Runa, pending)).Reasons).Id);
        Assert.IsType<NotDone>((await desk.Workspace.CreateAsync(desk.Runa, gesture, null, [], [Start])).Answer);
        Assert.IsType<NotDone>((await desk.Workspace.CreateAsync(desk.Runa, Guid.NewGuid(), open.Setup.Id, [], [Start])).Answer);
        Assert.IsType<NotDone>((await desk.Workspace.NextAsync(desk.Runa, Guid.NewGuid(), open.Season.Id, new(2028, 9, 2), null)).Answer);
        Assert.IsType<Kept>(await desk.Workspace.RemoveTeamAsync(desk.Runa, open.Setup.Id));
        await desk.RestartAsync();
        Assert.Single(await desk.Workspace.SeasonsAsync());
    }
}
