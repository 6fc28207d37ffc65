using Seasonwright.Core.Seasons;
using Seasonwright.Desk.Demo;
using Seasonwright.Desk.Rooms;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Tests.Demo;

public class DemoBirthTests
{
    private static readonly DateOnly Today = new(2027, 10, 20);

    [Fact]
    public async Task The_demo_comes_with_a_team_of_its_own_and_the_names_of_its_staff()
    {
        await using var desk = await Desk.OpenAsync();
        var (answer, id) = await desk.Workspace.AddDemoAsync(desk.Runa, Today);
        Assert.IsType<Kept>(answer);
        var listed = Assert.Single(await desk.Workspace.SeasonsAsync());
        Assert.Equal((id!.Value, "Harbour Vale", "2027-28"), (listed.Id, listed.TeamName, listed.Title));
        var open = await desk.SeasonAsync(id.Value);
        Assert.Equal(DemoSeasonTests.Played(DemoSeason.Make(DemoSeason.AnchorFor(Today))).Season.Facts, open.Season.Facts);
        var names = await desk.Workspace.NamesAsync();
        Assert.Equal("Runa Eskdale", names[open.Season.Staff.Single(staff => staff.Role == StaffRole.HeadCoach).Person.Text]);
    }

    [Fact]
    public async Task A_second_start_makes_no_second_one_even_weeks_later()
    {
        await using var desk = await Desk.OpenAsync();
        var (_, first) = await desk.Workspace.AddDemoAsync(desk.Runa, Today);
        await desk.RestartAsync();
        var (answer, second) = await desk.Workspace.AddDemoAsync(desk.Runa, Today.AddDays(30));
        Assert.IsType<Kept>(answer);
        Assert.Equal(first, second);
        Assert.Single(await desk.Workspace.SeasonsAsync());
        Assert.Equal(new DateOnly(2027, 7, 5), (await desk.SeasonAsync(second!.Value)).Season.Frame.FirstDay);
    }

    [Fact]
    public async Task Removed_it_stays_removed()
    {
        await using var desk = await Desk.OpenAsync();
        var (_, id) = await desk.Workspace.AddDemoAsync(desk.Runa, Today);
        var demo = await desk.SeasonAsync(id!.Value);
        Assert.Equal("Strength room", Assert.Single((await desk.Workspace.ClubAsync()).Facilities).Room.Name);
        var staff = demo.Season.Staff.Select(member => member.Person.Text).ToList();
        var named = await desk.Workspace.NamesAsync();
        Assert.NotEmpty(staff);
        Assert.All(staff, person => Assert.True(named.ContainsKey(person)));
        Assert.IsType<Kept>(await desk.Workspace.RemoveTeamAsync(desk.Runa, demo.Setup.Id));
        Assert.Empty(await desk.Workspace.SeasonsAsync());
        Assert.Empty((await desk.Workspace.ClubAsync()).Facilities);
        Assert.DoesNotContain(await desk.Workspace.NamesAsync(), name => staff.Contains(name.Key, StringComparer.Ordinal));
        await desk.RestartAsync();
        var (answer, none) = await desk.Workspace.AddDemoAsync(desk.Runa, Today);
        Assert.IsType<NotDone>(answer);
        Assert.Null(none);
        Assert.Empty(await desk.Workspace.SeasonsAsync());
    }

    [Fact]
    public async Task A_folder_with_a_season_of_its_own_gets_none()
    {
        await using var desk = await Desk.OpenAsync();
        var own = await desk.StartAsync();
        var (answer, none) = await desk.Workspace.AddDemoAsync(desk.Runa, Today);
        Assert.Equal("demo-late", Assert.Single(Assert.IsType<NotDone>(answer).Reasons).Id);
        Assert.Null(none);
        Assert.Equal(own, Assert.Single(await desk.Workspace.SeasonsAsync()).Id);
    }

    [Fact]
    public async Task The_versions_hold_what_was_published_and_the_rest_is_a_draft()
    {
        await using var desk = await Desk.OpenAsync();
        var (_, id) = await desk.Workspace.AddDemoAsync(desk.Runa, Today);
        var open = await desk.SeasonAsync(id!.Value);
        var published = await open.PublishedAsync();
        Assert.Equal(2, published!.Publication.Number);
        Assert.Equal(2, OpenSeason.Draft(open.Season, open.Setup, published).Count);
    }
}
