using Seasonwright.Core;

namespace Seasonwright.Documents.Read.Events;

/// <summary>What an event list says. With a problem there are no rows: a list is taken in whole or not at all.</summary>
/// <param name="Name">The file's name.</param>
/// <param name="Rows">Events in the order of the list.</param>
/// <param name="TestDays">Test days in the order of the list.</param>
/// <param name="Questions">What the list does not say; rows name the ones they have.</param>
/// <param name="Answered">Questions that have their answer, to show and to take back.</param>
/// <param name="Skipped">Every line that is no row of its own, and why; also words held back from a row.</param>
/// <param name="Reads">How the list was understood.</param>
public sealed record EventList(
    string Name,
    ValueList<EventRow> Rows,
    ValueList<TestDayRow> TestDays,
    ValueList<Question> Questions,
    ValueList<Answered> Answered,
    ValueList<Skipped> Skipped,
    ValueList<Problem> Problems,
    EventReads Reads)
{
    /// <summary>Nothing can be taken before an answer: the order of day and month or the year is open, or there are problems.</summary>
    public bool IsBlocked => Problems.Count > 0 || Questions.Any(question => question.Kind == "Q-order" || question.Kind == "Q-year" && question.Offered is null);

    /// <summary>The open questions of a row.</summary>
    public IEnumerable<Question> QuestionsOf(EventRow row) => QuestionsOf(row.Ask);

    /// <inheritdoc cref="QuestionsOf(EventRow)"/>
    public IEnumerable<Question> QuestionsOf(TestDayRow row) => QuestionsOf(row.Ask);

    private IEnumerable<Question> QuestionsOf(ValueList<string> ids) => Questions.Where(question => ids.Contains(question.Id, StringComparer.Ordinal));
}

/// <summary>How a list was understood.</summary>
/// <param name="Encoding">In words.</param>
/// <param name="Delimiter">Between cells; null for lines of prose.</param>
/// <param name="HeadingLine">Physical line of the headings; null when there are none.</param>
/// <param name="Order">The order of day and month in figures; null while it is asked.</param>
/// <param name="OrderLines">Lines that decided it; empty when none had to.</param>
/// <param name="Season">Years filled in where none are written: a title's, or those of the other days; null where each is the season's.</param>
public sealed record EventReads(string Encoding, char? Delimiter, int? HeadingLine, Dates.DayOrder? Order, ValueList<int> OrderLines, Dates.SeasonYears? Season);
