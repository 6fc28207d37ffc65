using Microsoft.AspNetCore.Http.HttpResults;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk;
using Seasonwright.Desk.Rooms;
using Seasonwright.Desk.Streams;
using Seasonwright.Web.Gestures;

namespace Seasonwright.Web.Rooms;

/// <summary>The way in for what is moved in a room: sessions of several seasons under one press.</summary>
internal static class RoomEndpoints
{
    public static void MapRooms(this IEndpointRouteBuilder app) => app.MapPost("/room/{id}/gestures", TakeAsync).DisableAntiforgery();

    private static async Task<IResult> TakeAsync(string id, DateOnly week, GestureRequest request, Workspace workspace)
    {
        if (!IdText.IsId(id) || (await workspace.ClubAsync()).Facility(new(id)) is not { } facility) return Json(new(Refused: [Words.Say("room.gone")]), StatusCodes.Status404NotFound);
        var actor = workspace.LocalActor;
        if (request.Act == "undo")
        {
            var last = await workspace.LastMoveAsync(actor);
            return await OfAsync(workspace, await workspace.TakeBackAsync(actor, request.Id, last?.Gesture ?? Guid.Empty), last?.Words is { } words ? Words.Say("room.taken-back", words) : null);
        }
        if (RoomMoveText.Read(request.Edits) is not { } moves) return Json(new(Refused: [Words.Say("gesture.unreadable")]), StatusCodes.Status400BadRequest);
        var now = await workspace.RoomNowAsync(facility.Room, week);
        List<RoomMove> found = [];
        foreach (var move in moves)
        {
            if (now.Plan.Bookings.FirstOrDefault(one => one.Season.Text == move.Season && one.Session.Id.Text == move.Session) is not { } booking) return Json(new(Refused: [Words.Say("room.session-gone")]), StatusCodes.Status409Conflict);
            found.Add(new(booking, move.Place));
        }
        var seen = now with { Numbers = moves.GroupBy(move => move.Season, StringComparer.Ordinal).ToDictionary(season => new SeasonId(season.Key), season => season.Min(move => move.BasedOn)) };
        return await OfAsync(workspace, await workspace.MoveAsync(actor, request.Id, seen, found), null);
    }

    private static async Task<JsonHttpResult<GestureAnswer>> OfAsync(Workspace workspace, Answer answer, string? told) => answer switch
    {
        Kept => Json(new(Kept: await workspace.RoomNumberAsync(), Told: told), StatusCodes.Status200OK),
        NotDone not => Json(new(Refused: [.. not.Reasons.Select(reason => reason.Sentence)]), StatusCodes.Status409Conflict),
        CannotKeep cannot => Json(new(Trouble: cannot.Sentence), StatusCodes.Status503ServiceUnavailable),
        _ => throw new InvalidOperationException($"No answer is a {answer.GetType().Name}."),
    };

    private static JsonHttpResult<GestureAnswer> Json(GestureAnswer answer, int status) => TypedResults.Json(answer, statusCode: status);
}
