using System.Globalization;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk;
using Seasonwright.Desk.Proposing;
using Seasonwright.Desk.Streams;
using Seasonwright.Solver;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Propose;

/// <summary>What is done with a run: a plan taken whole or in part, as one step that can be undone; something left out, and asked for again.</summary>
internal static class ProposeEndpoints
{
    public static void MapPropose(this IEndpointRouteBuilder app)
    {
        app.MapPost("/season/{season}/propose/take", TakeAsync).DisableAntiforgery();
        app.MapPost("/season/{season}/propose/without", WithoutAsync).DisableAntiforgery();
        app.MapPost("/season/{season}/propose/whole", WholeAsync).DisableAntiforgery();
    }

    private static async Task<IResult> TakeAsync(string season, HttpContext http, Workspace workspace)
    {
        if (!http.Request.HasFormContentType) return Results.BadRequest();
        if (await SeasonAt.FindAsync(workspace, season) is not { } open) return Results.NotFound();
        var form = await http.Request.ReadFormAsync();
        var posted = new Posted(form);
        var run = workspace.Runs.Of(open.Season.Id);
        if (run?.Id.ToString() != posted["run"] || run.State.Plans.ElementAtOrDefault(Number(posted["plan"]) ?? -1) is not { } plan) return Results.Redirect(PageOf(season, run, "gone"));
        if (run.TakenBy == posted.Gesture) return Results.Redirect($"/season/{season}");
        // Read before the check: an edit that comes in between is met by the stream.
        var basedOn = open.Stream.State.Number;
        if (!run.Asked.IsOf(open.Season, open.Setup)) return Results.Redirect(PageOf(season, run, "changed"));
        var weeks = form["week"].Select(week => Number(week) ?? -1).ToHashSet();
        var tracks = form["track"].Select(track => Enum.TryParse<ProposedTrack>(track, out var known) ? known : (ProposedTrack?)null).OfType<ProposedTrack>().ToHashSet();
        var edits = posted["all"] == "yes" ? plan.Edits : run.Part(plan, weeks.Contains, tracks.Contains);
        if (edits.Count == 0) return Results.Redirect(PageOf(season, run, "nothing"));
        switch (await open.Stream.ApplyAsync(workspace.LocalActor, new Gesture(posted.Gesture, basedOn, edits)))
        {
            case Kept:
                run.TakenBy = posted.Gesture;
                return Results.Redirect($"/season/{season}");
            case NotDone:
                return Results.Redirect(PageOf(season, run, "changed"));
            default:
                return Results.StatusCode(StatusCodes.Status503ServiceUnavailable);
        }
    }

    private static async Task<IResult> WithoutAsync(string season, HttpContext http, Workspace workspace)
    {
        if (!http.Request.HasFormContentType) return Results.BadRequest();
        if (await SeasonAt.FindAsync(workspace, season) is not { } open) return Results.NotFound();
        var posted = new Posted(await http.Request.ReadFormAsync());
        var run = workspace.Runs.Of(open.Season.Id);
        if (run is null || run.Id.ToString() != posted["run"] || Solver.Condition.Find(posted["condition"]) is not { } condition) return Results.Redirect(PageOf(season, run, "gone"));
        var basedOn = open.Stream.State.Number;
        if (!run.Asked.IsOf(open.Season, open.Setup)) return Results.Redirect(PageOf(season, run, "changed"));
        if (condition.IsLock && open.Season.Weeks.ElementAtOrDefault(Number(posted["week"]) ?? -1) is { } week)
        {
            // A locked week takes no plan: it is unlocked, and planned with the others.
            if (await open.Stream.ApplyAsync(workspace.LocalActor, new Gesture(posted.Gesture, basedOn, [new LockWeeks(week.Id, week.Id, false)])) is not Kept) return Results.Redirect(PageOf(season, run, "changed"));
            workspace.Runs.Begin(run.Asked with { Season = open.Season });
        }
        else
        {
            workspace.Runs.Begin(run.Asked.Without(condition, Number(posted["week"])), run);
        }
        return Results.Redirect(PageOf(season, run, null) + "#found");
    }

    private static async Task<IResult> WholeAsync(string season, Workspace workspace)
    {
        if (await SeasonAt.FindAsync(workspace, season) is not { } open) return Results.NotFound();
        var run = workspace.Runs.Of(open.Season.Id);
        if (run is not null && !run.Asked.IsOf(open.Season, open.Setup)) return Results.Redirect(PageOf(season, run, "changed"));
        if (run is not null) workspace.Runs.Begin(run.Asked with { Wishes = run.Asked.Wishes with { LeftOut = Relaxed.None } });
        return Results.Redirect(PageOf(season, run, null) + "#found");
    }

    private static int? Number(string? text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static string PageOf(string season, ProposalRun? run, string? why) => $"/season/{season}/{(run?.Asked.IsRepair == true ? "replan" : "propose")}{(why is null ? "" : $"?why={why}")}";
}
