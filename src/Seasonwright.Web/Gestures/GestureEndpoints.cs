using Microsoft.AspNetCore.Http.HttpResults;
using Seasonwright.Desk;
using Seasonwright.Desk.Streams;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Gestures;

/// <summary>
/// The one way in for changes made on a page. By HTTP and not over the live connection, so that a gesture does not depend on
/// the connection that shows its result.
/// </summary>
internal static class GestureEndpoints
{
    public static void MapGestures(this IEndpointRouteBuilder app) =>
        app.MapPost("/season/{season}/gestures", TakeAsync).DisableAntiforgery();

    // Another site's page can neither set this content type nor our Origin, so no token is needed.
    private static async Task<IResult> TakeAsync(string season, GestureRequest request, Workspace workspace)
    {
        if (await SeasonAt.FindAsync(workspace, season) is not { } open)
            return Json(new(Refused: [Words.Say("gesture.season-gone")]), StatusCodes.Status404NotFound);
        var stream = request.On == "team" ? open.TeamStream : open.Stream;
        var actor = workspace.LocalActor;
        switch (request.Act)
        {
            case "undo": return await TellAsync(stream, await stream.UndoAsync(actor, request.Id));
            case "redo": return await TellAsync(stream, await stream.RedoAsync(actor, request.Id));
        }
        if (request.Edits.ValueKind != System.Text.Json.JsonValueKind.Array) return Json(new(Refused: [Words.Say("gesture.unreadable")]), StatusCodes.Status400BadRequest);
        if (GestureText.TryRead(request.Edits.GetRawText(), out var problem) is not { } edits) return Json(new(Refused: [FormFields.Sentence(problem!)]), StatusCodes.Status400BadRequest);
        return Of(await stream.ApplyAsync(actor, new Gesture(request.Id, request.BasedOn, edits) { Knows = (request.Knows ?? []).ToHashSet() }));
    }

    /// <summary>What was taken or brought back may be out of sight: it is told as the history tells it.</summary>
    private static async Task<JsonHttpResult<GestureAnswer>> TellAsync(OpenStream stream, Answer answer) => answer is Kept kept
        ? Json(new(Kept: kept.Number, Told: (await stream.HistoryAsync()).FirstOrDefault(line => line.Last == kept.Number)?.Words), StatusCodes.Status200OK)
        : Of(answer);

    private static JsonHttpResult<GestureAnswer> Of(Answer answer) => answer switch
    {
        Kept kept => Json(new(Kept: kept.Number), StatusCodes.Status200OK),
        NotDone not => Json(new(Refused: [.. not.Reasons.Select(reason => reason.Sentence)]), StatusCodes.Status409Conflict),
        CannotKeep cannot => Json(new(Trouble: cannot.Sentence), StatusCodes.Status503ServiceUnavailable),
        _ => throw new InvalidOperationException($"No answer is a {answer.GetType().Name}."),
    };

    private static JsonHttpResult<GestureAnswer> Json(GestureAnswer answer, int status) => TypedResults.Json(answer, statusCode: status);
}
