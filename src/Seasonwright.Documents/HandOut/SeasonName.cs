using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut;

/// <summary>How a season is headed on what is handed out.</summary>
internal static class SeasonName
{
    /// <summary>"Harbour Vale 2027-28", on one line.</summary>
    public static string Of(Season season, Setup setup)
    {
        var team = PlainText.Clean(season.Team.Name) is { Length: > 0 } name ? name : PlainText.Clean(setup.TeamName);
        return season.Team.Title is { } title ? PlainText.Clean(Say("season", team, title)) : team;
    }
}
