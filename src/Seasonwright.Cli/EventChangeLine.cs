using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Events;

namespace Seasonwright.Cli;

/// <summary>What a list does to one event or test day that was known, or what it adds: one for each run of days of a row.</summary>
/// <param name="Change">unchanged, added, moved, changed, vanished, or asked: nothing holds before an answer.</param>
/// <param name="Line">The list's row; null for what vanished.</param>
/// <param name="From">As it shall be; null while its days wait.</param>
/// <param name="Fields">What differs, by the names of the columns.</param>
internal sealed record EventChangeLine(string Change, int? Line, DateOnly? From, DateOnly? To, string Kind, string Title, IReadOnlyList<FieldChange> Fields, IReadOnlyList<string> Ask)
{
    public static EventChangeLine Of(EntryChange<EventRow, Event> change) => (change.Entry ?? change.Known) is { } item
        ? Of(change, change.Row?.Line, item.Days, EventLine.KindOf(item.Kind), item.Title)
        : Of(change, change.Row!.Line, change.Row.Days, EventLine.KindOf(change.Row.Kind), change.Row.Title);

    public static EventChangeLine Of(EntryChange<TestDayRow, TestDay> change) => (change.Entry ?? change.Known) is { } test
        ? Of(change, change.Row?.Line, DaySpan.Of(test.Day), EventLine.TestDay, test.Battery)
        : Of(change, change.Row!.Line, null, EventLine.TestDay, change.Row.Battery);

    private static EventChangeLine Of<TRow, TEntry>(EntryChange<TRow, TEntry> change, int? line, DaySpan? days, string kind, string title)
        where TRow : class
        where TEntry : class =>
        new(ChangeLine.Word(change.Kind), line, days?.First, days?.Last, kind, title, [.. change.Fields.Select(Column)], change.Ask);

    private static string KindOf(string kind) => EventLine.KindOf(Enum.Parse<EventKind>(kind));

    // By the columns' names and words.
    private static FieldChange Column(FieldChange field) => field.Field switch
    {
        "day" => field with { Field = "from" },
        "lastDay" => field with { Field = "to" },
        "kind" => field with { Before = KindOf(field.Before), After = KindOf(field.After) },
        _ => field,
    };
}
