using Seasonwright.Core.Seasons;
using Seasonwright.Desk;
using Seasonwright.Desk.Demo;
using Seasonwright.Desk.Seasons;

namespace Seasonwright.Web.Seasons;

/// <summary>A team with its seasons, the newest first; a team without a season is not listed.</summary>
public sealed record TeamOnList(TeamId Id, string Name, IReadOnlyList<OpenSeason> Seasons)
{
    public bool IsDemo => Seasons.Any(open => open.Season.Id == DemoBirth.Id);

    /// <summary>Every team; the one whose season starts last comes first.</summary>
    public static async Task<IReadOnlyList<TeamOnList>> AllAsync(Workspace workspace)
    {
        var teams = new List<TeamOnList>();
        foreach (var team in (await workspace.SeasonsAsync()).GroupBy(season => season.Team))
        {
            var open = new List<OpenSeason>();
            foreach (var listed in team)
                if (await workspace.SeasonAsync(listed.Id) is { } season) open.Add(season);
            if (open.Count > 0) teams.Add(new(team.Key, open[^1].Setup.TeamName, [.. open.OrderByDescending(season => season.Season.Frame.FirstDay)]));
        }
        return [.. teams.OrderByDescending(team => team.Seasons[0].Season.Frame.FirstDay)];
    }
}
