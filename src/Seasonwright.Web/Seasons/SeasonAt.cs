using Seasonwright.Core.Seasons;
using Seasonwright.Desk;
using Seasonwright.Desk.Seasons;

namespace Seasonwright.Web.Seasons;

/// <summary>The season a page's address names.</summary>
internal static class SeasonAt
{
    /// <returns>Null when there is none.</returns>
    public static async Task<OpenSeason?> FindAsync(Workspace workspace, string id) =>
        IdText.IsId(id) ? await workspace.SeasonAsync(new SeasonId(id)) : null;
}
