using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.Year;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>Every event by its true days.</summary>
internal static class EventsSheet
{
    private const string First = "EventFirst";
    private const string Last = "EventLast";
    private const string Words = "EventText";

    public static (Sheet Sheet, WeekList List) Of(Season season, WorkbookChoices choices, SheetLooks looks)
    {
        List<Event> events = [.. season.AllEvents];
        var sheet = new ListSheet<Event>("Events", events)
            .Week(season, item => item.Days)
            .Day(Say("workbook.first"), looks.LongDay, item => item.Days.First, First)
            .Day(Say("workbook.last"), looks.LongDay, item => item.Days.Last, Last)
            .Text(Say("workbook.event.kind"), 16, item => YearTexts.Forms($"event.{item.Kind}")[0])
            .Text(Say("workbook.event"), 28, item => item.Title)
            .Text(Say("workbook.for"), 18, item => item.For)
            .Text(Say("workbook.certain"), 11, item => item.Provisional ? YearTexts.Say("event.provisional") : null)
            .Perhaps(Say("workbook.part"), 16, item => item.Part)
            .Number(Say("workbook.training"), 10, SheetLooks.Percent with { Side = CellSide.Middle }, item => item.Training?.Value / 100m)
            .Perhaps(Say("workbook.place"), 18, item => item.Place)
            .Number(Say("workbook.nights"), 7, SheetLooks.Count, item => item.Nights)
            .Perhaps(Say("workbook.journey"), 36, Journey);
        if (choices.Notes) sheet.Perhaps(Say("workbook.note"), 24, item => item.Note);
        sheet.Add(Say("workbook.in-year"), 28, (item, row) => new(Told(item), SheetLooks.Wrapped, FormattableString.Invariant(
            $"IF(B{row}=\"\",\"\",E{row}&IF(F{row}=\"\",\"\",\" (\"&F{row}&\")\")&IF(G{row}=\"\",\"\",\", \"&G{row}))")), Words);
        return (sheet.Sheet(Say("workbook.events.about")),
            new WeekList(First, Last, Words, [.. events.Select(item => ((DaySpan?)item.Days, Told(item)))]));
    }

    private static string Told(Event item)
    {
        var whom = PlainText.Clean(item.For ?? "") is { Length: > 0 } people ? $" ({people})" : "";
        return $"{PlainText.Clean(item.Title)}{whom}{(item.Provisional ? $", {YearTexts.Say("event.provisional")}" : "")}";
    }

    /// <summary>"Fri 12 Nov 13:00 Harbour Vale → 17:30 Skeldby; ..."</summary>
    private static string? Journey(Event item) => item.Legs is not { Count: > 0 } legs ? null : string.Join("; ", legs.Select(leg => string.Join(' ', new[]
    {
        leg.Day.Iso(), leg.Departs?.Iso(), leg.From, "→", leg.ArrivalDay is { } day && day != leg.Day ? day.Iso() : null, leg.Arrives?.Iso(), leg.To,
    }.OfType<string>())));
}
