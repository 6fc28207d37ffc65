using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Streams;
using Seasonwright.Store.Log;

namespace Seasonwright.Desk.Squad;

/// <summary>Telling in which groups of a season a player is.</summary>
public static class PuttingInGroups
{
    /// <summary>The seasons of a team that run or come, and in any case the one that is looked at, where they name groups.</summary>
    /// <param name="looked">Always among them.</param>
    public static async Task<ValueList<OpenSeason>> SeasonsWithGroupsAsync(this Workspace workspace, OpenSeason looked)
    {
        var found = new List<OpenSeason>();
        foreach (var listed in (await workspace.SeasonsAsync()).Where(listed => listed.Team == looked.Setup.Id))
            if (await workspace.SeasonAsync(listed.Id) is { } open && open.Season.Groups.Any() && (open.Season.Id == looked.Season.Id || open.Season.Days?.Last >= workspace.Today)) found.Add(open);
        return found.ToValueList();
    }

    /// <summary>Puts a player's groups of a season in the place of those that were told.</summary>
    /// <param name="places">All of this player and season; none where the player is in no group.</param>
    /// <returns><see cref="Kept"/>; why not otherwise, with "from-GROUP" or "to-GROUP" as the subject, and then nothing is changed.</returns>
    public static async Task<Answer> PutInGroupsAsync(this Workspace workspace, TeamId team, PersonId person, SeasonId season, IReadOnlyList<GroupPlace> places)
    {
        if (await workspace.SeasonAsync(season) is not { } open || open.Setup.Id != team) return new NotDone(Refusal.Say("stream-gone", "season"));
        if (Problems(open.Season, places).ToValueList() is { Count: > 0 } wrong) return new NotDone(wrong);
        return await Recording.KeepAsync(async () => await workspace.PlayerAsync(team, person) is not null
            && await workspace.Folder.Athletes.PutGroupsAsync(person, new StreamId(Guid.Parse(season.Text)), places), "athlete");
    }

    private static IEnumerable<Refusal> Problems(Season season, IReadOnlyList<GroupPlace> places)
    {
        foreach (var place in places)
        {
            if (season.Groups.All(line => line.Id != place.Group) || season.Days is not { } days) yield return Refusal.Say("group-gone", $"from-{place.Group}");
            else if (!days.Contains(place.From)) yield return Outside("from", place.Group, days);
            else if (place.To is { } to && !days.Contains(to)) yield return Outside("to", place.Group, days);
            else if (place.To < place.From) yield return Refusal.Say("athlete-leaves-early", $"to-{place.Group}");
        }
    }

    private static Refusal Outside(string field, GroupId group, DaySpan days) => Refusal.Say("group-day", $"{field}-{group}", days.First, days.Last);
}
