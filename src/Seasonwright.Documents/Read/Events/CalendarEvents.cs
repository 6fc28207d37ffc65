using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Documents.Read.Calendars;

namespace Seasonwright.Documents.Read.Events;

/// <summary>What a calendar file holds besides matches, as a table under headings of ours.</summary>
internal static class CalendarEvents
{
    private static readonly ValueList<string> Headings = new(["Event", "From", "To", "Time", "Place", "Remarks"]);

    public static CellTable Table(SourceText source, Asker asker, List<Skipped> skipped)
    {
        var (entries, problem) = CalendarFile.Read(source);
        if (problem is not null) return new(source.Name, null, ValueList<CellRow>.Empty, new([problem]));
        List<CellRow> rows = [new(0, Headings, "")];
        foreach (var entry in entries)
        {
            var asked = entry is { IsMatch: true, NamesTeams: false } ? CalendarFile.AskRound(entry, asker) : default(Asked?);
            if (entry.Repeats) skipped.Add(Skipped.Of(entry.Line, entry.Summary, "calendar-repeats"));
            else if (asked?.Answer == CalendarFile.LeftOut) skipped.Add(Skipped.Of(entry.Line, entry.Summary, "event-left-out"));
            else if (entry.IsMatch && asked?.Answer != CalendarFile.AsEvent) skipped.Add(Skipped.Of(entry.Line, entry.Summary, "calendar-match"));
            else if (entry.IsCancelled) skipped.Add(Skipped.Of(entry.Line, entry.Summary, "event-off"));
            else rows.Add(new CellRow(entry.Line, new([entry.Summary, Text(entry.Day), Text(entry.LastDay ?? entry.Day), Times(entry), entry.Place, Remarks(entry)]), entry.Summary));
        }
        return new(source.Name, ',', rows.ToValueList(), ValueList<Problem>.Empty);
    }

    private static string Remarks(CalendarEntry entry) =>
        string.Join("; ", new[] { entry.IsTentative ? "provisional" : null, entry.UnplacedTime, entry.Description.Replace(';', ',') }.Where(text => !string.IsNullOrEmpty(text)));

    private static string Times(CalendarEntry entry) =>
        string.Join("-", new[] { entry.Starts, entry.Ends }.OfType<TimeOnly>().Select(time => time.ToString("HH:mm", CultureInfo.InvariantCulture)));

    private static string Text(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";
}
