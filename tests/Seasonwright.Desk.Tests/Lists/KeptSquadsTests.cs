using Seasonwright.Core.Seasons;
using Seasonwright.Desk.Lists;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Streams;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Squads;

namespace Seasonwright.Desk.Tests;

public sealed class KeptSquadsTests
{
    private static readonly SquadList List = SquadReader.Read(
        SourceText.OfText("squad", "Nr;Name;Pos;geb.;Gewicht (kg);Kniebeuge (kg);Notiz\n1;Varnum, Ysolde;TW/KM;14.3.1999;71,5;85x5;verletzt\n4;Thistlewick, Maren;RL;;;100;Cousine\n?;Probe, Spielerin;;;;;"), new SquadOptions(new(2027, 10, 20)));

    [Fact]
    public async Task A_list_is_kept_as_it_was_read_without_those_who_wait_and_survives_a_restart()
    {
        await using var desk = await Desk.OpenAsync();
        var team = (await desk.SeasonAsync(await desk.StartAsync())).Setup.Id;
        Assert.Equal(3, List.Rows.Count);
        Assert.Equal(2, Assert.IsType<Kept>(await desk.Workspace.KeepSquadAsync(team, List)).Number);
        await desk.RestartAsync();
        var kept = await desk.Workspace.SquadAsync(team);
        Assert.Equal(
            [
                new KeptPlayer("Varnum", "Ysolde", "1", "TW/KM", new(1999, 3, 14), null, "71.5 kg", null, null, null, List.Rows[0].Lifts),
                new KeptPlayer("Thistlewick", "Maren", "4", "RL", null, null, null, null, null, "Cousine", List.Rows[1].Lifts),
            ], kept);
        Assert.Equal("back squat 85 kg x 5", $"{kept[0].Lifts[0]}");
        Assert.IsType<Kept>(await desk.Workspace.EraseSquadAsync(team));
        Assert.Empty(await desk.Workspace.SquadAsync(team));
    }

    [Fact]
    public async Task It_goes_with_its_team_and_no_team_that_is_gone_keeps_one()
    {
        await using var desk = await Desk.OpenAsync();
        var team = (await desk.SeasonAsync(await desk.StartAsync())).Setup.Id;
        await desk.Workspace.KeepSquadAsync(team, List);
        await desk.Workspace.RemoveTeamAsync(desk.Runa, team);
        Assert.Empty(await desk.Workspace.SquadAsync(team));
        Assert.IsType<NotDone>(await desk.Workspace.KeepSquadAsync(team, List));
        Assert.IsType<NotDone>(await desk.Workspace.KeepSquadAsync(new TeamId(Guid.NewGuid().ToString()), List));
    }

    [Fact]
    public async Task A_list_with_problems_is_never_kept()
    {
        await using var desk = await Desk.OpenAsync();
        var broken = SquadReader.Read(SourceText.OfText("squad", ""), new SquadOptions(new(2027, 10, 20)));
        await Assert.ThrowsAsync<ArgumentException>(() => desk.Workspace.KeepSquadAsync(new TeamId(Guid.NewGuid().ToString()), broken));
    }
}
