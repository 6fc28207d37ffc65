using Seasonwright.Core.Quantities;
using Seasonwright.Core.Squad;
using Seasonwright.Desk.Demo;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Squad;

namespace Seasonwright.Desk.Tests.Demo;

/// <summary>Harbour Vale's squad comes and goes with the demo.</summary>
public class DemoSquadTests
{
    private static readonly DateOnly Today = new(2027, 10, 20);

    [Fact]
    public async Task Twenty_two_come_with_two_injured_one_minor_one_in_two_squads_and_two_called_up()
    {
        await using var desk = await Desk.OpenAsync();
        var (_, id) = await desk.Workspace.AddDemoAsync(desk.Runa, Today);
        var open = await desk.SeasonAsync(id!.Value);
        var roster = await desk.Workspace.RosterAsync(open.Setup.Id);
        Assert.Equal(22, roster.Count);
        Assert.Equal(22, roster.Select(player => player.Athlete.Name).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(string.Join(", ", Enumerable.Range(1, 22)), string.Join(", ", roster.Select(player => player.Athlete.Number)));
        Assert.Equal("Vilde Ashgrove: out; Mira Stenlowe: modified", string.Join("; ", roster.Where(player => player.StandingOn(Today).Availability.State != AvailabilityState.Full)
            .Select(player => $"{player.Athlete.Name}: {player.StandingOn(Today).Availability.State.Word()}")));
        Assert.Equal("Ebba Tarnwick", Assert.Single(roster, player => player.Athlete.IsMinorOn(Today)).Athlete.Name);
        Assert.Equal("Oda Vintersea", Assert.Single(roster, player => player.Memberships.Count == 2).Athlete.Name);
        var rookies = Assert.Single(open.Season.Groups, line => line.Name == "Rookies").Id;
        Assert.Equal("Eira Longmead, Ebba Tarnwick, Oda Vintersea", string.Join(", ", roster.Where(player => player.Groups.Any(place => place.Season == open.Season.Id && place.Group == rookies && place.Contains(Today))).Select(player => player.Athlete.Name)));
        var window = open.Season.AllEvents.First(happening => happening.Title == "National-team window").Days;
        Assert.Equal(2, roster.Count(player => player.Absences.Any(absence => absence.Kind == AbsenceKind.NationalTeam && absence.Days == window)));
        Assert.Equal(new Load(495), Absence.OutsideLoadOn(roster[0].Absences, window.First));
        // Nothing is told of a time that has not come.
        Assert.All(roster.SelectMany(player => player.Reports), report => Assert.True(report.Recorded < desk.Clock.GetUtcNow()));
    }

    [Fact]
    public async Task They_come_once_and_go_with_the_demo()
    {
        await using var desk = await Desk.OpenAsync();
        var (_, id) = await desk.Workspace.AddDemoAsync(desk.Runa, Today);
        var team = (await desk.SeasonAsync(id!.Value)).Setup.Id;
        var roster = await desk.Workspace.RosterAsync(team);
        await desk.Workspace.EraseAthleteAsync(team, roster[3].Id);
        await desk.RestartAsync();
        await desk.Workspace.AddDemoAsync(desk.Runa, Today.AddDays(1));
        Assert.Equal(21, (await desk.Workspace.RosterAsync(team)).Count);
        await desk.Workspace.RemoveTeamAsync(desk.Runa, team);
        Assert.Empty(await desk.Workspace.RosterAsync(team));
    }
}
