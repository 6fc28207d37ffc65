using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Desk.Streams;
using Seasonwright.Store;

namespace Seasonwright.Desk.Squad;

/// <summary>The people of a team. Rows, not in the log: no edit, no history, no undo.</summary>
public static class Roster
{
    /// <summary>Everybody who is or was in a team, in order of coming.</summary>
    /// <exception cref="StoreTrouble">The disk or the file refuses.</exception>
    public static async Task<ValueList<Player>> RosterAsync(this Workspace workspace, TeamId team)
    {
        var files = await workspace.Folder.Athletes.OfAsync(StreamIds.Of(team));
        var grouped = files.SelectMany(file => file.Groups).Select(place => place.Season).Distinct().ToValueList();
        return files.Select(file => new Player(file.Athlete,
            file.Memberships.ToValueList(), file.Reports.ToValueList(), file.Absences.ToValueList(), file.Weighings.ToValueList(), file.Lifts.ToValueList(), file.Groups.ToValueList(), grouped)
        { Runs = file.Runs.ToValueList() }).ToValueList();
    }

    /// <summary>As a paper lists players: by shirt, then by family name.</summary>
    internal static IEnumerable<Player> Listed(this IEnumerable<Player> players) => players.OrderBy(player => player.Athlete.Shirt).ThenBy(player => player.Athlete.Family, StringComparer.OrdinalIgnoreCase);

    /// <summary>Those who are with the team on a day, as a paper lists them.</summary>
    internal static async Task<List<Player>> WithTeamAsync(this Workspace workspace, TeamId team, DateOnly day) =>
        [.. (await workspace.RosterAsync(team)).Where(player => player.WhereOn(team, day) == Whereabouts.WithTeam).Listed()];

    /// <summary>Somebody of a team; null where nobody of it has this id.</summary>
    internal static async Task<Player?> PlayerAsync(this Workspace workspace, TeamId team, PersonId person) =>
        (await workspace.RosterAsync(team)).FirstOrDefault(player => player.Id == person);
}
