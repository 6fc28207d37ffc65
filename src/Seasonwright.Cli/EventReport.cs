using Seasonwright.Core;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Events;

namespace Seasonwright.Cli;

/// <summary>Everything <c>events</c> knows about a list, as scripts get it; docs/commands.md describes the fields.</summary>
internal sealed record EventReport(
    string File, EventReads Reads, IReadOnlyList<EventLine> Rows, IReadOnlyList<EventLine> TestDays, IReadOnlyList<Question> Questions, IReadOnlyList<Answered> Answered,
    ValueList<Skipped> Skipped, ValueList<Problem> Problems, IReadOnlyList<EventChangeLine> Changes) : IListReport<EventLine>
{
    // In the order of the list; behind them what it no longer holds.
    IReadOnlyList<EventLine> IListReport<EventLine>.Lines => [.. Rows.Concat(TestDays).OrderBy(line => line.Line ?? int.MaxValue)];

    public static EventReport Of(EventList list, EventUpdate? update) => new(
        list.Name, list.Reads,
        EventLine.Of(list.Rows, update?.Changes, EventLine.Of, EventLine.Of), EventLine.Of(list.TestDays, update?.TestDays, EventLine.Of, EventLine.Of),
        [.. list.Questions, .. update?.Questions ?? []], [.. list.Answered, .. update?.Answered ?? []],
        list.Skipped, list.Problems, [.. update?.Changes.Select(EventChangeLine.Of) ?? [], .. update?.TestDays.Select(EventChangeLine.Of) ?? []]);
}
