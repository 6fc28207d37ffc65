using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk.Streams;
using Seasonwright.Store;

namespace Seasonwright.Desk.Tests;

public class WorkspaceTests
{
    [Fact]
    public async Task An_unknown_season_is_none()
    {
        await using var desk = await Desk.OpenAsync();
        Assert.Null(await desk.Workspace.SeasonAsync(new("nothing")));
        Assert.Null(await desk.Workspace.SeasonAsync(new(Guid.NewGuid().ToString())));
    }

    [Fact]
    public async Task A_second_opening_is_refused_and_told_where_the_first_one_is()
    {
        await using var desk = await Desk.OpenAsync();
        desk.Workspace.Announce(new Uri("http://127.0.0.1:5210/"));
        var trouble = await Assert.ThrowsAsync<StoreTrouble>(() => Workspace.OpenAsync(desk.Path, desk.Clock));
        Assert.Equal((StoreTroubleKind.InUse, new Uri("http://127.0.0.1:5210/")), (trouble.Kind, trouble.RunningAt));
    }

    [Fact]
    public async Task The_person_at_this_machine_and_what_they_prefer_stay_the_same()
    {
        await using var desk = await Desk.OpenAsync();
        var me = desk.Workspace.LocalActor;
        await desk.Workspace.PreferAsync(me, "tracks", """["load","matches"]""");
        await desk.RestartAsync();
        Assert.Equal(me, desk.Workspace.LocalActor);
        Assert.Equal("""["load","matches"]""", (await desk.Workspace.PreferencesAsync(me))["tracks"]);
        Assert.Empty(await desk.Workspace.PreferencesAsync(desk.Tove));
    }

    [Fact]
    public async Task The_list_follows_new_names_also_when_they_are_taken_back()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        async Task<(string Team, string Season)> Listed() => (await desk.Workspace.SeasonsAsync()).Select(season => (season.TeamName, season.Title)).Single();

        await open.TeamStream.ApplyAsync(desk.Runa, new Gesture(Guid.NewGuid(), open.TeamStream.State.Number, [new SetTeamName("Harbour Vale II")]));
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new NameTeam(new TeamCard("Harbour Vale", "The long one"))));
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, Desk.Load(1, 1000)));
        Assert.Equal(("Harbour Vale II", "The long one"), await Listed());
        await open.Stream.UndoAsync(desk.Runa, Guid.NewGuid());
        await open.Stream.UndoAsync(desk.Runa, Guid.NewGuid());
        Assert.Equal(("Harbour Vale II", "2027-28"), await Listed());
    }
}
