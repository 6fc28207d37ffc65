using System.Globalization;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.Year;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>The coach's own tracks that go by days: a row for each day that holds something.</summary>
internal static class DaysSheet
{
    private const string Name = "Days";
    private const string Day = "OwnDay";

    public static Sheet? Of(Season season, SheetLooks looks)
    {
        var tracks = Tracks(season);
        var days = season.Facts.All(SeasonFacets.TrackCell).Where(cell => tracks.Exists(track => track.Id == cell.Subject.First)).Select(cell => cell.Subject.Second.Day).OfType<DateOnly>().Distinct().Order().ToList();
        if (days.Count == 0) return null;
        var sheet = new ListSheet<DateOnly>(Name, days).Day(Say("workbook.day"), looks.LongDay, day => day, Day);
        foreach (var (track, index) in tracks.Select((track, index) => (track, index)))
            sheet.Add(track.Name, 20, (day, _) => YearSheet.Own(track, season.CellOf(track.Id, CellPlace.Of(day))), Values(index));
        return sheet.Sheet(Say("workbook.days.about"));
    }

    /// <summary>A week's days that hold something of a track: "Mon hall; Thu gym".</summary>
    public static Cell In(Season season, Track track, DaySpan days, int row)
    {
        var tracks = Tracks(season);
        if (!tracks.Exists(own => season.Facts.All(SeasonFacets.TrackCell).Any(cell => cell.Subject.First == own.Id && cell.Subject.Second.Day is not null))) return new(null, SheetLooks.Wrapped);
        var values = Values(tracks.IndexOf(track));
        var formula = string.Join('&', Enumerable.Range(0, 7).Select(n =>
        {
            var day = FormattableString.Invariant($"($B{row}+{n})");
            var value = $"INDEX({values},MATCH({day},{Day},0))";
            return FormattableString.Invariant($"IFERROR(IF(OR({day}>$C{row},{value}=\"\"),\"\",\"; \"&{Formulas.Weekday(day)}&\" \"&{value}),\"\")");
        }));
        var told = days.Days().Select(day => (Day: day, Value: Told(YearSheet.Own(track, season.CellOf(track.Id, CellPlace.Of(day))).Value))).Where(cell => cell.Value.Length > 0)
            .Select(cell => $"{YearTexts.Say($"day.{cell.Day.DayOfWeek}.short")} {cell.Value}");
        return new(string.Join("; ", told), SheetLooks.Wrapped, $"MID({formula},3,9999)");
    }

    private static string Told(object? value) => value switch
    {
        decimal number => number.ToString("G29", CultureInfo.InvariantCulture),
        string text => PlainText.Clean(text),
        _ => "",
    };

    private static List<Track> Tracks(Season season) => [.. season.Tracks.Where(track => track.Grain == TrackGrain.Day)];

    private static string Values(int track) => FormattableString.Invariant($"OwnTrack_{track + 1}");
}
