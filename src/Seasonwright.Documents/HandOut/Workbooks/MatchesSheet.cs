using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.Year;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>Every match by its true day, undated ones last.</summary>
internal static class MatchesSheet
{
    /// <summary>The name of the cells with what is certain of each.</summary>
    public const string Status = "MatchStatus";

    private const string Day = "MatchDay";
    private const string Words = "MatchText";

    public static (Sheet Sheet, WeekList List) Of(Season season, WorkbookChoices choices, SheetLooks looks)
    {
        var sheet = new ListSheet<Match>("Matches", season.AllMatches)
            .Week(season, match => match.Day)
            .Day(Say("workbook.day"), looks.LongDay, match => match.Day, Day)
            .Day(Say("workbook.last-possible"), looks.LongDay, match => match.Days is { Length: > 1 } days ? days.Last : null)
            .Add(Say("workbook.kick-off"), 8, (match, _) => new(match.KickOff, SheetLooks.Time))
            .Text(Say("workbook.opponent"), 24, match => match.Opponent)
            .Text(Say("workbook.venue"), 9, match => Venue(match))
            .Text(Say("workbook.status"), 12, match => Sentences.Say($"status.{match.Status}"), Status)
            .Perhaps(Say("workbook.competition"), 16, match => match.Competition)
            .Perhaps(Say("workbook.round"), 12, match => match.Round)
            .Perhaps(Say("workbook.waits"), 18, match => Waits(match))
            .Perhaps(Say("workbook.importance"), 11, match => match.Importance == Importance.Regular ? null : Say($"workbook.importance.{match.Importance}"))
            .Perhaps(Say("workbook.place"), 18, match => match.Place)
            .Perhaps(Say("workbook.zone"), 17, match => match.Zone)
            .Perhaps(Say("workbook.result"), 9, match => match.Result);
        if (choices.Notes) sheet.Perhaps(Say("workbook.note"), 24, match => match.Note);
        sheet.Add(Say("workbook.in-year"), 24, (match, row) => new(
            Told(match), SheetLooks.Wrapped,
            FormattableString.Invariant($"IF(B{row}=\"\",\"\",IFERROR({Formulas.Weekday(FormattableString.Invariant($"B{row}"))}&\" \",\"\")&IF(E{row}=\"\",\"?\",E{row})&IF(F{row}=\"\",\"\",\" (\"&F{row}&\")\")&IF(G{row}=\"{Sentences.Say($"status.{MatchStatus.Confirmed}")}\",\"\",\", \"&G{row}))")), Words);
        return (sheet.Sheet(Say("workbook.matches.about")),
            new WeekList(Day, Day, Words, [.. season.AllMatches.Select(match => (match.Day is { } day ? DaySpan.Of(day) : (DaySpan?)null, Told(match)))]));
    }

    private static string Told(Match match)
    {
        if (match.Day is not { } day) return "";
        var opponent = PlainText.Clean(match.Opponent ?? "") is { Length: > 0 } name ? name : "?";
        var venue = Venue(match) is { } where ? $" ({where})" : "";
        var status = match.Status == MatchStatus.Confirmed ? "" : $", {Sentences.Say($"status.{match.Status}")}";
        return $"{(SerialDay.Of(day) is null ? "" : YearTexts.Say($"day.{day.DayOfWeek}.short") + " ")}{opponent}{venue}{status}";
    }

    private static string? Venue(Match match) => match.Venue is { } venue ? Say($"workbook.venue.{venue}") : null;

    private static string? Waits(Match match)
    {
        string?[] parts = [match.Series is { } series ? YearTexts.Say("match.series", series.Game, series.BestOf) : null, match.Condition?.Words];
        return YearWords.Join(parts.OfType<string>()) is { Length: > 0 } words ? words : null;
    }
}
