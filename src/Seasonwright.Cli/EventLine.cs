using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Events;
using static Seasonwright.Cli.CellText;

namespace Seasonwright.Cli;

/// <summary>An event or test day of a list as <c>events</c> gives it. What the list does not say is null.</summary>
/// <param name="From">First day, inside; while it waits as written.</param>
/// <param name="To">Last day, inside; while it waits it may lie before the first.</param>
/// <param name="Kind">In words, as <see cref="KindOf"/> gives them.</param>
/// <param name="Part">Part of the days in words, with the days that count where not every one does; for a journey of several legs its lines.</param>
/// <param name="Training">Per cent.</param>
/// <param name="Days">Those that count, where not every day from the first to the last does.</param>
/// <param name="Line">Where it starts; null for what the list no longer holds.</param>
/// <param name="Ask">Ids of its open questions.</param>
/// <param name="Change">What the list does to it, compared with what was known; null without a comparison.</param>
internal sealed record EventLine(
    DateOnly? From, DateOnly? To, string Kind, string Title, string? Part, string? For, int? Training, string? Place, string? Note, RowState State,
    IReadOnlyList<DateOnly>? Days, IReadOnlyList<LegLine> Legs, int? Line, IReadOnlyList<string> Ask, string? Change)
{
    public static Table<EventLine> Csv { get; } = new(
    [
        new("from", line => Day(line.From)),
        new("to", line => Day(line.To)),
        new("kind", line => line.Kind),
        new("title", line => line.Title),
        new("part", line => line.Part),
        new("for", line => line.For),
        new("training", line => Number(line.Training)),
        new("place", line => line.Place),
        new("note", line => line.Note),
        new("state", line => Word(line.State)),
        new("line", line => Number(line.Line)),
        new("ask", line => string.Join(' ', line.Ask)),
        new("change", line => line.Change),
    ]);

    /// <summary>For people: what a coach looks for, and what changed where that is known.</summary>
    public static Table<EventLine> Table(bool isCompared) => new(
    [
        new("line", line => Number(line.Line), IsNumber: true),
        new("from", line => Day(line.From)),
        new("to", line => line.To == line.From ? "" : Day(line.To)),
        new("kind", line => line.Kind),
        new("title", line => line.Title),
        new("part", line => line.Part),
        new("for", line => line.For),
        new("training", line => line.Training is { } share ? $"{Number(share)} %" : "", IsNumber: true),
        new("place", line => line.Place),
        new("state", line => Word(line.State)),
        new("ask", line => string.Join(' ', line.Ask)),
        .. isCompared ? new Column<EventLine>[] { new("change", line => line.Change) } : [],
    ]);

    /// <summary>The rows of a list; where it has been compared, behind them what it no longer holds.</summary>
    public static IReadOnlyList<EventLine> Of<TRow, TEntry>(IEnumerable<TRow> rows, IEnumerable<EntryChange<TRow, TEntry>>? changes, Func<TRow, EventLine> ofRow, Func<TEntry, EventLine> ofEntry)
        where TRow : class
        where TEntry : class
    {
        if (changes is null) return [.. rows.Select(ofRow)];
        var byRow = changes.ToLookup(change => change.Row);
        var gone = byRow[null].Where(change => change.Kind == ChangeKind.Vanished);
        return [.. rows.Select(Compared), .. gone.Select(change => ofEntry(change.Known!) with { Change = ChangeLine.Word(change.Kind) })];

        EventLine Compared(TRow row)
        {
            var line = ofRow(row);
            return line with { Ask = [.. line.Ask, .. byRow[row].SelectMany(change => change.Ask)], Change = ChangeLine.Word(Weightiest(byRow[row])) };
        }
    }

    public static EventLine Of(EventRow row) => new(
        row.From, row.To, KindOf(row.Kind), row.Title, row.PartInWords, row.For, row.Training?.Value, row.Place, row.Note, row.State, row.Only, [.. row.Legs.Select(LegLine.Of)], row.Line, row.Ask, null);

    public static EventLine Of(TestDayRow row) => new(row.From, row.To, TestDay, row.Battery, row.PartInWords, row.For, null, null, null, row.State, row.Only, [], row.Line, row.Ask, null);

    public static EventLine Of(Event item) => new(
        item.Days.First, item.Days.Last, KindOf(item.Kind), item.Title, item.Part, item.For, item.Training?.Value, item.Place, item.Note,
        item.Provisional ? RowState.Provisional : RowState.Certain, null, [.. (item.Legs ?? []).Select(LegLine.Of)], null, [], null);

    public static EventLine Of(TestDay test) => new(test.Day, test.Day, TestDay, test.Battery, test.Part, test.For, null, null, null, RowState.Certain, null, [], null, [], null);

    public const string TestDay = "test day";

    public static string KindOf(EventKind kind) => kind switch
    {
        EventKind.NationalTeamWindow => "national-team window",
        EventKind.RoomClosed => "room closed",
        _ => Word(kind),
    };

    /// <summary>Of the changes of a row, one for each run of its days: nothing is certain while one waits.</summary>
    private static ChangeKind Weightiest<TRow, TEntry>(IEnumerable<EntryChange<TRow, TEntry>> changes)
        where TRow : class
        where TEntry : class => changes.Any(change => change.Kind == ChangeKind.Asked) ? ChangeKind.Asked : changes.Min(change => change.Kind);
}
