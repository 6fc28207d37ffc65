using System.Globalization;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk;
using Seasonwright.Desk.Workouts;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Cards;
using Seasonwright.Web.HandOut;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Gym;

/// <summary>A session's cards, made when they are asked for.</summary>
internal static class CardsEndpoint
{
    private const int UsualPerPage = 4;

    public static void MapCards(this IEndpointRouteBuilder app) => app.MapGet("/season/{season}/cards/{session}/{file}", async (
        string season, string session, string file, HttpRequest request, Workspace workspace, CancellationToken cancel) =>
    {
        if (await SeasonAt.FindAsync(workspace, season) is not { } open || !IdText.IsId(session) || await workspace.CardsAsync(open, new(session), cancel) is not { } cards) return Results.NotFound();
        var perPage = int.TryParse(request.Query["per-page"], NumberStyles.None, CultureInfo.InvariantCulture, out var asked) && CardPaper.Counts.Contains(asked) ? asked : UsualPerPage;
        var paper = open.Setup.Locale.Paper == Paper.Letter ? PaperSize.Letter : PaperSize.A4;
        return file switch
        {
            "cards.pdf" => File(HandOuts.Cards([cards], perPage, paper)),
            "cards.xlsx" => File(HandOuts.CardWorkbook([cards])),
            _ => Results.NotFound(),
        };

        IResult File(HandOutFile made) => Results.File(made.Bytes, made.MediaType, request.Query.ContainsKey(HandOutEndpoints.Shown) ? null : made.Name);
    });
}
