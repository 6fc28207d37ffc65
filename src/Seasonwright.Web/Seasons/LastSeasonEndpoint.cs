using System.Text.Json;
using Seasonwright.Desk;

namespace Seasonwright.Web.Seasons;

/// <summary>"Year", "Week", "Gym" and "Squad" in the rail: the season last looked at, else the newest, else the list.</summary>
internal static class LastSeasonEndpoint
{
    /// <summary>The preference the Year page keeps.</summary>
    public const string Preference = "season.last";

    public static void MapLastSeason(this IEndpointRouteBuilder app)
    {
        app.MapGet("/year", (Workspace workspace) => RedirectAsync(workspace, ""));
        app.MapGet("/week", (Workspace workspace) => RedirectAsync(workspace, "/week"));
        app.MapGet("/gym", (Workspace workspace) => RedirectAsync(workspace, "/gym"));
        app.MapGet("/squad", (Workspace workspace) => RedirectAsync(workspace, "/squad"));
    }

    private static async Task<IResult> RedirectAsync(Workspace workspace, string room)
    {
        var seasons = await workspace.SeasonsAsync();
        var last = Read((await workspace.PreferencesAsync(workspace.LocalActor)).GetValueOrDefault(Preference));
        var chosen = seasons.FirstOrDefault(season => season.Id.Text == last) ?? seasons.LastOrDefault();
        return Results.Redirect(chosen is null ? "/" : $"/season/{chosen.Id}{room}");
    }

    // Only a convenience is lost when it cannot be read.
    private static string? Read(string? json)
    {
        try
        {
            return json is null ? null : JsonSerializer.Deserialize<string>(json);
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
