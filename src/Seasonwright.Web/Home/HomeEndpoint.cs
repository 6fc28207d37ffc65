using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk;
using Seasonwright.Desk.Workouts;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.HandOut;
using Seasonwright.Web.HandOut;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Home;

/// <summary>A home programme on paper, made when it is asked for: for all, or for one player.</summary>
internal static class HomeEndpoint
{
    public static void MapHome(this IEndpointRouteBuilder app) => app.MapGet("/season/{season}/home/{programme}/home.pdf", async (
        string season, string programme, HttpRequest request, Workspace workspace, CancellationToken cancel) =>
    {
        var player = request.Query["player"].ToString();
        if (!IdText.IsId(programme) || player.Length > 0 && !IdText.IsId(player) || await SeasonAt.FindAsync(workspace, season) is not { } open) return Results.NotFound();
        if (await workspace.HomeAsync(open, new(programme), player.Length > 0 ? new PersonId(player) : null, cancel) is not { Sheets.Count: > 0 } home) return Results.NotFound();
        var made = HandOuts.Home(home, open.Setup.Locale.Paper == Paper.Letter ? PaperSize.Letter : PaperSize.A4);
        return Results.File(made.Bytes, made.MediaType, request.Query.ContainsKey(HandOutEndpoints.Shown) ? null : made.Name);
    });
}
