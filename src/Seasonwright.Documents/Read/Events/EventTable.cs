using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Events;

/// <summary>Events from a table: one row each; rows of one journey keep their legs.</summary>
internal static class EventTable
{
    public static IEnumerable<EventLine> Lines(CellTable table, EventColumns columns, List<Skipped> skipped)
    {
        for (var i = 0; i < table.Rows.Count; i++)
        {
            var row = table.Rows[i];
            if (row.IsBlank) skipped.Add(Skipped.Of(row.Line, row.Raw, "blank-line"));
            else if (i == columns.Heading) skipped.Add(Skipped.Of(row.Line, row.Raw, "event-headings"));
            else if (i < columns.Heading) skipped.Add(Skipped.Of(row.Line, row.Raw, "event-title"));
            else foreach (var line in Row(row, columns)) yield return line;
        }
    }

    private static IEnumerable<EventLine> Row(CellRow row, EventColumns columns)
    {
        string Cell(EventColumn column) => columns.Cell(row, column);
        var title = Cell(EventColumn.Title);
        var (kind, isTest) = EventWords.OfKindCell(Cell(EventColumn.Kind)) ?? EventWords.Of(title);
        var (from, to) = (Cell(EventColumn.FromPlace), Cell(EventColumn.ToPlace));
        var when = columns[EventColumn.When] is not null ? Cell(EventColumn.When) : $"{Cell(EventColumn.Start)} - {Cell(EventColumn.End)}".Trim(' ', '-');
        var spans = DaySpanText.Joined(when, new SpanFinder(when, true).Spans());
        var times = kind == EventKind.Travel ? null : string.Join('-', new[] { Cell(EventColumn.Departs), Cell(EventColumn.Arrives) }.Where(time => time.Length > 0));
        var line = new EventLine(row.Line, row.Raw, kind, isTest, title, null, when, Cell(EventColumn.Remark).Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            For = Empty(Cell(EventColumn.For)),
            Place = Empty(Cell(EventColumn.Place)),
            Part = Empty(Cell(EventColumn.Part)) ?? Empty(times ?? ""),
            Share = Empty(Cell(EventColumn.Share)),
            Leg = from.Length + to.Length == 0 ? null
                : new LegCells(Empty(Cell(EventColumn.Number)) ?? title, Cell(EventColumn.Leg).Length > 0, from, to, Cell(EventColumn.Departs), Cell(EventColumn.Arrives)),
        };
        return spans.Count == 0 ? [line] : spans.Select(span => line with { Span = span });
    }

    private static string? Empty(string cell) => cell.Length == 0 ? null : cell;
}
