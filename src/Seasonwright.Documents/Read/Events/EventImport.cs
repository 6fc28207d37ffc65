using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Read.Events;

/// <summary>From a list and its comparison to the edit that takes it in.</summary>
public static class EventImport
{
    /// <summary>The edit that writes every change of an update, or null when there is nothing to write (all unchanged, blocked, or all waiting for answers).</summary>
    /// <param name="list">The list read.</param>
    /// <param name="update">The list compared with the season's events and test days; with none for a new season.</param>
    /// <param name="eventIds">The id of an added event; fresh ones at the page, natural ones at the command line. Called once for each run of days of a row.</param>
    /// <param name="testDayIds">The id of an added test day.</param>
    public static ImportEvents? Edit(EventList list, EventUpdate update, Func<EventRow, DaySpan, EventId> eventIds, Func<TestDayRow, DateOnly, TestDayId> testDayIds)
    {
        var events = update.Changes.Where(change => change.IsWritten).Select(change => change.Kind == ChangeKind.Added ? change.Entry! with { Id = eventIds(change.Row!, change.Entry!.Days) } : change.Entry!).ToValueList();
        var tests = update.TestDays.Where(change => change.IsWritten).Select(change => change.Kind == ChangeKind.Added ? change.Entry! with { Id = testDayIds(change.Row!, change.Entry!.Day) } : change.Entry!).ToValueList();
        return events.Count + tests.Count == 0 ? null : new ImportEvents(events, tests, Name(list.Name));
    }

    /// <summary>A row's events to compare: one for each run of days; one without days while it waits.</summary>
    internal static IEnumerable<Entry<EventRow>> Entries(EventRow row) =>
        row.Runs.Select(run => (DaySpan?)run).DefaultIfEmpty(null).Select(run => new Entry<EventRow>(row, Name(row.Title), row.Kind, run, row.For, Line: row.Line));

    internal static IEnumerable<Entry<TestDayRow>> Entries(TestDayRow row) =>
        row.Days.Select(day => (DaySpan?)DaySpan.Of(day)).DefaultIfEmpty(null).Select(day => new Entry<TestDayRow>(row, Name(row.Battery), null, day, row.For, Line: row.Line));

    internal static Event Event(Entry<EventRow> entry, string list)
    {
        var row = entry.Of;
        return new Event(new EventId("new"), row.Kind, Name(row.Title), entry.Days!.Value, Text(row.Part), Text(row.For), row.Training, row.State == RowState.Provisional, Text(row.Place),
            Legs: row.Legs.Count == 0 ? null : row.Legs, Note: Text(row.Note), Source: new EventSource(Name(list), Name(row.Title)));
    }

    internal static TestDay TestDay(Entry<TestDayRow> entry, string list) => new(new TestDayId("new"), entry.Days!.Value.First, Name(entry.Of.Battery),
        entry.Of.Part is { } part ? Name(part) : null, entry.Of.For is { } whom ? Name(whom) : null, new EventSource(Name(list), Name(entry.Of.Battery)));

    // Core limits texts; what is longer is cut where it only tells.
    private static string Name(string text) => Spelling.Cut(text, 120);

    private static string? Text(string? text) => text is null ? null : Spelling.Cut(text, 2000);
}
