using Seasonwright.Desk.Lists;
using Seasonwright.Desk.Seasons;
using Seasonwright.Documents.Read;

namespace Seasonwright.Desk.Tests.Lists;

/// <summary>What was answered about a team's lists is not asked again, names no player, and goes with the team.</summary>
public class RememberedAnswersTests
{
    [Fact]
    public async Task Answers_about_names_of_clubs_stay_those_that_name_players_and_those_of_one_file_do_not()
    {
        await using var desk = await Desk.OpenAsync();
        var team = (await desk.SeasonAsync(await desk.StartAsync())).Setup.Id;
        var said = Answers.None.With("Q-team", "Harbour Vale").With("Q-spelling:brovik|brovik if", "one").With("Q-order", "day-first").With("Q-who:camp|four players", "Runa, Ida, Mina, Liv");
        await desk.Workspace.RememberAsync(desk.Runa, team, said);
        Assert.Equal(["Q-spelling:brovik|brovik if", "Q-team"], (await desk.Workspace.AnswersAsync(desk.Runa, team)).All.Select(answer => answer.Key).Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    [Fact]
    public async Task They_go_with_the_team()
    {
        await using var desk = await Desk.OpenAsync();
        var team = (await desk.SeasonAsync(await desk.StartAsync())).Setup.Id;
        await desk.Workspace.RememberAsync(desk.Runa, team, Answers.None.With("Q-team", "Harbour Vale"));
        await desk.Workspace.RemoveTeamAsync(desk.Runa, team);
        Assert.Empty((await desk.Workspace.AnswersAsync(desk.Runa, team)).All);
        Assert.DoesNotContain(await desk.Workspace.PreferencesAsync(desk.Runa), kept => kept.Key.Contains(team.Text, StringComparison.Ordinal));
    }
}
