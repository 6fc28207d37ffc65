using System.Text.Json;
using System.Text.Json.Nodes;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk;
using Seasonwright.Desk.Boards;
using Seasonwright.Desk.Seasons;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Boards;

/// <summary>What a board's script asks for and sends.</summary>
internal static class BoardEndpoints
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    public static void MapBoard(this IEndpointRouteBuilder app)
    {
        app.MapGet("/board/{season}/{session}/sheet.json", async (string season, string session, Workspace workspace, CancellationToken cancel) =>
        {
            if (await OpenAsync(workspace, season, session) is not var (open, id) || await workspace.BoardAsync(open, id, cancel) is not { } led) return Results.NotFound();
            var sheet = JsonSerializer.SerializeToNode(BoardScript.Of(open.Season, open.Setup, led), Json)!;
            return Told(sheet, led, await workspace.BoardStampAsync(open, id, cancel));
        });
        // Keeps what was tapped, and answers what holds: nothing more where the board knows it already.
        // Another site's page can neither set this content type nor our Origin, so no token is needed.
        app.MapPost("/board/{season}/{session}/marks", async (string season, string session, string? knows, JsonElement marks, Workspace workspace, CancellationToken cancel) =>
        {
            if (await OpenAsync(workspace, season, session) is not var (open, id)) return Trouble(Words.Say("gesture.season-gone"), StatusCodes.Status404NotFound);
            var kept = await workspace.KeepMarksAsync(open, id, marks.GetRawText(), cancel);
            if (!kept.AreKept) return Trouble(kept.Trouble!, StatusCodes.Status503ServiceUnavailable);
            var stamp = await workspace.BoardStampAsync(open, id, cancel);
            if (stamp == knows && kept.Trouble is null) return Results.Json(new { stamp }, Json);
            if (await workspace.BoardAsync(open, id, cancel) is not { } led) return Trouble(Words.Say("board.nothing-written"), StatusCodes.Status404NotFound);
            return Told(new JsonObject { ["trouble"] = kept.Trouble }, led, stamp);
        }).DisableAntiforgery();
    }

    private static IResult Trouble(string trouble, int status) => Results.Json(new { trouble }, Json, statusCode: status);

    private static IResult Told(JsonNode sheet, LedSession led, string stamp)
    {
        sheet["stamp"] = stamp;
        sheet["marks"] = JsonNode.Parse(led.MarksJson);
        sheet["floor"] = JsonSerializer.SerializeToNode(ScriptFloor.Of(led), Json);
        return Results.Text(sheet.ToJsonString(Json), "application/json");
    }

    private static async Task<(OpenSeason, SessionId)?> OpenAsync(Workspace workspace, string season, string session) =>
        IdText.IsId(session) && await SeasonAt.FindAsync(workspace, season) is { } open ? (open, new SessionId(session)) : null;
}
