using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Fixtures;
using Seasonwright.Web.Year;

namespace Seasonwright.Web.Lists;

/// <summary>An event or a test day of a list, as the page shows it.</summary>
/// <param name="Change">What the list does to it.</param>
/// <param name="IsWritten">Whether the season is to be changed for it.</param>
/// <param name="Days">Null while they wait for an answer.</param>
/// <param name="Kind">In words.</param>
/// <param name="Training">"40%", or "" where nobody said.</param>
/// <param name="Ask">Ids of its open questions.</param>
public sealed record BreakLine(ChangeKind Change, bool IsWritten, DaySpan? Days, string Kind, string Title, string Part, string For, string Training, string Remarks, IReadOnlyList<string> Ask)
{
    /// <summary>All lines of a list, events before test days.</summary>
    public static IReadOnlyList<BreakLine> Of(EventList list, EventUpdate update, LocaleSettings locale) =>
    [
        .. update.Changes.Select(change => Of(change, list, locale)),
        .. update.TestDays.Select(change => Of(change, list, locale)),
    ];

    private static BreakLine Of(EntryChange<EventRow, Event> change, EventList list, LocaleSettings locale)
    {
        // What waits for an answer is shown as the list has it.
        var (row, item) = (change.Row, change.Kind == ChangeKind.Asked ? null : change.Entry ?? change.Known);
        var kind = item?.Kind ?? row!.Kind;
        return new(change.Kind, change.IsWritten, item?.Days ?? row!.Days, Words.Say($"event.{kind}"), item?.Title ?? row!.Title, item?.Part ?? row?.Part ?? "", item?.For ?? row?.For ?? "",
            (item is null ? row!.Training : item.Training)?.ToString() ?? "",
            Told([item?.Provisional == true ? Words.Say("status.Provisional") : null, item?.Place ?? row?.Place, Legs(item?.Legs?.Count ?? row?.Legs.Count ?? 0), item?.Note ?? row?.Note], change.Fields, locale),
            Asks(row is null ? [] : list.QuestionsOf(row), change.Ask));
    }

    private static BreakLine Of(EntryChange<TestDayRow, TestDay> change, EventList list, LocaleSettings locale)
    {
        var (row, test) = (change.Row, change.Kind == ChangeKind.Asked ? null : change.Entry ?? change.Known);
        DaySpan? days = test is not null ? DaySpan.Of(test.Day) : row is { From: { } from, To: { } to } && from <= to ? new DaySpan(from, to) : null;
        return new(change.Kind, change.IsWritten, days, Words.Say("breaks.test-day"), test?.Battery ?? row!.Battery, test?.Part ?? row?.Part ?? "", test?.For ?? row?.For ?? "", "",
            Told([], change.Fields, locale), Asks(row is null ? [] : list.QuestionsOf(row), change.Ask));
    }

    private static string? Legs(int legs) => legs == 0 ? null : Words.Say(legs == 1 ? "breaks.leg" : "breaks.legs", legs);

    private static string Told(IEnumerable<string?> parts, IEnumerable<FieldChange> fields, LocaleSettings locale) => string.Join(" · ", parts.OfType<string>().Concat(FieldSentence.Of(fields, locale)));

    private static IReadOnlyList<string> Asks(IEnumerable<Question> ofRow, IEnumerable<string> ofChange) => [.. ofRow.Select(question => question.Id).Concat(ofChange).Distinct(StringComparer.Ordinal)];
}
