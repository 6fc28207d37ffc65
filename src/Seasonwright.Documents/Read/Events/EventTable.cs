using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Spans;
using Seasonwright.Documents.Read.Times;

namespace Seasonwright.Documents.Read.Events;

/// <summary>Events from a table: one for each span of days a row names.</summary>
internal static class EventTable
{
    public static IEnumerable<EventLine> Lines(CellTable table, EventColumns columns, List<Skipped> skipped)
    {
        for (var i = 0; i < table.Rows.Count; i++)
        {
            var row = table.Rows[i];
            var isHeading = columns.Heading is { } heading && (i == heading || i > heading && row.Cells.SequenceEqual(table.Rows[heading].Cells, StringComparer.Ordinal));
            // Headings of ours stand on no line.
            if (isHeading && row.Line == 0) continue;
            if (row.IsBlank) skipped.Add(Skipped.Of(row.Line, row.Raw, "blank-line"));
            else if (isHeading) skipped.Add(Skipped.Of(row.Line, row.Raw, "event-headings"));
            else if (i < columns.Heading) skipped.Add(Skipped.Of(row.Line, row.Raw, "event-title"));
            else if (IsSection(row, columns)) skipped.Add(Skipped.Of(row.Line, row.Raw, columns.Heading is null && i == 0 ? "event-title" : "event-section"));
            else foreach (var line in Row(row, columns)) yield return line;
        }
    }

    // One cell alone that names no event and no days: "Spring term", "Page 2".
    private static bool IsSection(CellRow row, EventColumns columns) => columns.Places.Count > 1 && row.Filled.Take(2).ToList() is [var (_, cell)]
        && EventWords.Of(cell) is (EventKind.Other, false) && new SpanFinder(cell, true).Spans().Count == 0;

    private static IEnumerable<EventLine> Row(CellRow row, EventColumns columns)
    {
        string Cell(EventColumn column) => columns.Cell(row, column);
        var title = new[] { EventColumn.Title, EventColumn.Kind }.Select(Cell).FirstOrDefault(cell => cell.Length > 0) ?? "";
        var (kind, isTest) = EventWords.OfKindCell(Cell(EventColumn.Kind)) ?? EventWords.Of(title);
        var when = columns[EventColumn.When] is not null ? Cell(EventColumn.When) : $"{Cell(EventColumn.Start)} - {Cell(EventColumn.End)}".Trim(' ', '-');
        if (CalendarWords.Weekday(Cell(EventColumn.Weekday)) is not null) when = $"{Cell(EventColumn.Weekday)}, {when}";
        var spans = DaySpanText.Joined(when, new SpanFinder(when, true).Spans());
        var times = kind == EventKind.Travel ? "" : string.Join('-', new[] { Cell(EventColumn.Departs), Cell(EventColumn.Arrives) }.Where(time => time.Length > 0));
        var leg = LegOf(Cell, title);
        // A time that cannot be read is kept as it is written.
        var unread = leg is null ? [] : new[] { leg.Departs, leg.Arrives }.Where(time => time.Length > 0 && TimeText.Read(time).Sense is not (TimeSense.Known or TimeSense.Midnight or TimeSense.Unknown));
        var line = new EventLine(row.Line, row.Raw, kind, isTest, title, null, when, [.. Cell(EventColumn.Remark).Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries), .. unread])
        {
            For = Said(Cell(EventColumn.For)),
            Place = Said(Cell(EventColumn.Place)),
            Part = Said(Cell(EventColumn.Part)) ?? Said(times),
            Share = Said(Cell(EventColumn.Share)),
            Leg = leg,
        };
        return spans.Count == 0 ? [line] : spans.Select(span => line with { Span = span });
    }

    private static LegCells? LegOf(Func<EventColumn, string> cell, string title)
    {
        var (from, to) = (cell(EventColumn.FromPlace), cell(EventColumn.ToPlace));
        if (from.Length + to.Length == 0) return null;
        var trip = cell(EventColumn.Leg).Length == 0 ? null : Said(cell(EventColumn.Number)) ?? title;
        return new LegCells(trip, from, to, cell(EventColumn.Departs), cell(EventColumn.Arrives));
    }

    private static string? Said(string cell) => cell.Length == 0 ? null : cell;
}
