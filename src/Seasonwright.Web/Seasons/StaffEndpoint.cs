using Microsoft.AspNetCore.Mvc;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Web.Seasons;

/// <summary>Adds a person to the staff: the name goes into the register, the season gets the person's id and role only.</summary>
internal static class StaffEndpoint
{
    public static void MapStaff(this IEndpointRouteBuilder app) => app.MapPost("/season/{season}/staff", AddAsync).DisableAntiforgery();

    private static async Task<IResult> AddAsync(string season, [FromForm] Guid gesture, [FromForm] string name, [FromForm] string role, Workspace workspace)
    {
        if (await SeasonAt.FindAsync(workspace, season) is not { } open) return Results.NotFound();
        if (name.Trim() is not { Length: > 0 and <= 120 } clean || !Enum.TryParse<StaffRole>(role, ignoreCase: true, out var known) || !Enum.IsDefined(known)) return Results.BadRequest();
        // A second click is the same gesture about the same person.
        var person = gesture.ToString();
        await workspace.NamePersonAsync(person, clean);
        var actor = workspace.LocalActor;
        var answer = await open.Stream.ApplyAsync(actor, new Gesture(gesture, open.Stream.State.Number, [new SetStaff(new PersonId(person), known)]));
        return answer is Kept ? Results.Redirect($"/season/{season}") : Results.StatusCode(answer is NotDone ? StatusCodes.Status409Conflict : StatusCodes.Status503ServiceUnavailable);
    }
}
