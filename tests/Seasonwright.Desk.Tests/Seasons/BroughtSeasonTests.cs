using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Tests.Seasons;

public class BroughtSeasonTests
{
    private static readonly StartSeason Start = new(new(2027, 7, 5), DayOfWeek.Monday, Desk.Weeks, new TeamCard("Harbour Vale", "2027-28"));

    private static readonly SetupEdit[] Oslo = [new SetLocale(new LocaleSettings(Zone: "Europe/Oslo"))];

    [Fact]
    public async Task What_is_brought_is_one_step_and_undone_leaves_the_bare_weeks()
    {
        await using var desk = await Desk.OpenAsync();
        var (answer, id) = await desk.Workspace.BringAsync(desk.Runa, Guid.NewGuid(), null, Oslo, Start, [Desk.Load(1, 1000), Desk.Load(2, 2000)]);
        Assert.IsType<Kept>(answer);
        await desk.RestartAsync();
        var open = await desk.SeasonAsync(id!.Value);
        Assert.Equal((1000, 2000, "Europe/Oslo"), (Desk.Au(open, 1), Desk.Au(open, 2), open.Setup.Locale.Zone));
        Assert.IsType<Kept>(await open.Stream.UndoAsync(desk.Runa, Guid.NewGuid()));
        Assert.Equal((Desk.Weeks.Count, true), (open.Season.Weeks.Length, open.Season.Weeks.All(week => open.Season.TargetOf(week.Id) is null)));
    }

    [Fact]
    public async Task Sent_again_it_puts_in_what_is_missing_and_nothing_twice()
    {
        await using var desk = await Desk.OpenAsync();
        var gesture = Guid.NewGuid();
        // As if the machine had stopped between the two steps.
        var (_, id) = await desk.Workspace.CreateAsync(desk.Runa, gesture, null, Oslo, [Start]);
        await desk.RestartAsync();
        for (var time = 0; time < 3; time++)
        {
            var (answer, again) = await desk.Workspace.BringAsync(desk.Runa, gesture, null, Oslo, Start, [Desk.Load(1, 1000)]);
            Assert.IsType<Kept>(answer);
            Assert.Equal(id, again);
        }
        var open = await desk.SeasonAsync(id!.Value);
        Assert.Equal((1000, 2L), (Desk.Au(open, 1), open.Stream.State.Number));
        Assert.Single(await desk.Workspace.SeasonsAsync());
    }

    [Fact]
    public async Task One_part_that_does_not_hold_makes_nothing_at_all()
    {
        await using var desk = await Desk.OpenAsync();
        var (answer, id) = await desk.Workspace.BringAsync(desk.Runa, Guid.NewGuid(), null, Oslo, Start, [Desk.Load(1, 1000), new MoveMatch(new("nowhere"), new(2027, 8, 1))]);
        Assert.Equal("match-unknown", Assert.Single(Assert.IsType<NotDone>(answer).Reasons).Id);
        Assert.Null(id);
        Assert.Empty(await desk.Workspace.Folder.Log.StreamsAsync());
    }
}
