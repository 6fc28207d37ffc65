using Seasonwright.Core;

namespace Seasonwright.Documents.Read.Events;

/// <summary>What an event list says. With a problem there are no rows: a list is taken in whole or not at all.</summary>
/// <param name="Rows">Events in the order of the list.</param>
/// <param name="TestDays">Test days in the order of the list.</param>
/// <param name="Questions">What the list does not say; rows name the ones they have.</param>
/// <param name="Answered">Questions that have their answer, to show and to take back.</param>
/// <param name="Skipped">Every line that is no row of its own, and why.</param>
/// <param name="Reads">How the list was understood.</param>
public sealed record EventList(
    ValueList<EventRow> Rows,
    ValueList<TestDayRow> TestDays,
    ValueList<Question> Questions,
    ValueList<Answered> Answered,
    ValueList<Skipped> Skipped,
    ValueList<Problem> Problems,
    EventReads Reads);

/// <summary>How a list was understood.</summary>
/// <param name="Encoding">In words.</param>
/// <param name="Delimiter">Between cells; null for lines of prose.</param>
/// <param name="HeadingLine">Physical line of the headings; null when there are none.</param>
/// <param name="Order">The order of day and month in figures; null when it is asked or no date needs it.</param>
/// <param name="Years">The years a title names; null when none does.</param>
public sealed record EventReads(string Encoding, char? Delimiter, int? HeadingLine, Dates.DayOrder? Order, Dates.SeasonYears? Years);
