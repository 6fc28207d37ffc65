using Seasonwright.Desk;
using Seasonwright.Desk.Seasons;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.HandOut;

/// <summary>The files that the page Hand out offers, made when they are asked for.</summary>
internal static class HandOutEndpoints
{
    /// <summary>In the address: shown where it is asked for, not saved as a file.</summary>
    public const string Shown = "shown";

    public static void MapHandOut(this IEndpointRouteBuilder app) => app.MapGet("/season/{season}/hand-out/{file}", async (
        string season, string file, HttpRequest request, Workspace workspace, CancellationToken cancel) =>
    {
        var form = new HandOutForm(request.Query);
        if (await SeasonAt.FindAsync(workspace, season) is not { } open) return Results.NotFound();
        if (await HandingOut.OfAsync(open, form.Version, form.KeyMatches, workspace.Today, cancel) is not { } handing) return Results.NotFound();
        if (form.Missing(file, handing.Season.Season) is { } missing) return Results.Redirect($"/season/{open.Season.Id}/hand-out?missing={missing}");
        return await form.MakeAsync(file, handing, workspace.Today, cancel) is { } made
            ? Results.File(made.Bytes, made.MediaType, request.Query.ContainsKey(Shown) ? null : made.Name)
            : Results.NotFound();
    });
}
