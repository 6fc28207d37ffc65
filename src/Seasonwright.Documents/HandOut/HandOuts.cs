using System.Text;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.HandOut.Calendars;
using Seasonwright.Documents.HandOut.Cards;
using Seasonwright.Documents.HandOut.HeadCoach;
using Seasonwright.Documents.HandOut.Home;
using Seasonwright.Documents.HandOut.Posters;
using Seasonwright.Documents.HandOut.Workbooks;

namespace Seasonwright.Documents.HandOut;

/// <summary>Everything that can be made of a season for others. The same season, edition and choices give the same bytes.</summary>
public static class HandOuts
{
    public static HandOutFile Poster(SharedSeason shared, PosterChoices choices) => new(
        HandOutFile.NameOf(shared, $"poster-{choices.Paper.Id}{Tone(choices.Scheme)}.pdf"), HandOutFile.Pdf, Posters.Poster.Of(shared, choices).Pdf(shared.Edition, choices.Scheme));

    public static HandOutFile PosterDrawing(SharedSeason shared, PosterChoices choices) => new(
        HandOutFile.NameOf(shared, $"poster-{choices.Paper.Id}{Tone(choices.Scheme)}.svg"), HandOutFile.Svg, Encoding.UTF8.GetBytes(Posters.Poster.Of(shared, choices).Svg(choices.Scheme)));

    /// <param name="from">The day from which the weeks ahead are counted.</param>
    /// <param name="paper">Upright.</param>
    public static HandOutFile HeadCoachPaper(SharedSeason shared, DateOnly from, PaperSize paper)
    {
        var sheet = HeadCoachSheet.Of(shared, from);
        return new(HandOutFile.NameOf(shared, $"head-coach{OnLetter(paper)}.pdf"), HandOutFile.Pdf,
            PdfPainter.File(HandOutTexts.Say("head-coach.title", sheet.Name), shared.Edition.Day, HeadCoach.HeadCoachPaper.Of(sheet, paper), Scheme.Light));
    }

    /// <summary>The same for a browser: one file that needs no other.</summary>
    /// <inheritdoc cref="HeadCoachPaper"/>
    public static HandOutFile HeadCoachPage(SharedSeason shared, DateOnly from) =>
        new(HandOutFile.NameOf(shared, "head-coach.html"), HandOutFile.Html, Encoding.UTF8.GetBytes(HeadCoach.HeadCoachPage.Of(HeadCoachSheet.Of(shared, from))));

    /// <param name="paper">Upright.</param>
    public static HandOutFile WeekSheet(SharedSeason shared, SeasonWeek week, PaperSize paper) =>
        new(HandOutFile.NameOf(shared, FormattableString.Invariant($"week-{week.Number}{OnLetter(paper)}.pdf")), HandOutFile.Pdf,
            PdfPainter.File(HandOutTexts.Say("week-sheet.title", shared.Name, week.Number), shared.Edition.Day, WeekSheets.WeekSheet.Of(shared, week, paper), Scheme.Light));

    /// <param name="cards">Of the sessions of one day, at least one.</param>
    /// <param name="perPage">One of <see cref="CardPaper.Counts"/>.</param>
    /// <param name="paper">Upright.</param>
    public static HandOutFile Cards(IReadOnlyList<SquadCards> cards, int perPage, PaperSize paper) => new(CardsName(cards, $"{OnLetter(paper)}.pdf"), HandOutFile.Pdf,
        PdfPainter.File(HandOutTexts.Say("card.title", cards[0].Shared.Name, cards[0].Title), cards[0].Shared.Edition.Day, cards.SelectMany(one => CardPaper.Of(one, perPage, paper)).ToValueList(), Scheme.Light));

    /// <inheritdoc cref="Cards"/>
    public static HandOutFile CardWorkbook(IReadOnlyList<SquadCards> cards) => new(CardsName(cards, ".xlsx"), HandOutFile.Workbook, HandOut.Cards.CardWorkbook.Write(cards));

    private static string CardsName(IReadOnlyList<SquadCards> cards, string ending) => HandOutFile.NameOf(cards[0].Shared, $"cards-{cards[0].Session.Day.Iso()}{ending}");

    /// <param name="home">At least one sheet.</param>
    /// <param name="paper">Upright.</param>
    public static HandOutFile Home(SquadHome home, PaperSize paper) => new(HandOutFile.NameOf(home.Shared, $"home-{home.Programme.FirstDay.Iso()}{OnLetter(paper)}.pdf"), HandOutFile.Pdf,
        PdfPainter.File(HandOutTexts.Say("home.title", home.Shared.Name, home.Title), home.Shared.Edition.Day, HomePaper.Of(home, paper), Scheme.Light));

    public static HandOutFile Workbook(SharedSeason shared, bool notes = true) => new(
        HandOutFile.NameOf(shared, "workbook.xlsx"), HandOutFile.Workbook, YearWorkbook.Write(shared.Season, shared.Setup, shared.Edition, new WorkbookChoices(shared.KeyMatches, notes)));

    /// <param name="choices">What goes into it; of key matches it says what the shared season says.</param>
    /// <param name="revisions">What others hold already of this calendar.</param>
    public static HandOutFile Calendar(SharedSeason shared, CalendarChoices choices, CalendarRevisions revisions) => new(
        CalendarName(shared), HandOutFile.Calendar,
        Encoding.UTF8.GetBytes(SeasonCalendar.Write(shared.Season, shared.Setup, shared.Edition, choices with { KeyMatches = shared.KeyMatches }, revisions)));

    /// <summary>The same for all editions: a calendar replaces the one before it.</summary>
    public static string CalendarName(SharedSeason shared) => HandOutFile.LastingNameOf(shared, ".ics");

    private static string OnLetter(PaperSize paper) => paper == PaperSize.Letter ? "-letter" : "";

    private static string Tone(Scheme scheme) => scheme == Scheme.Grey ? "-grey" : "";
}
