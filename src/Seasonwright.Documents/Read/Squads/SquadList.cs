using Seasonwright.Core;
using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>What a squad list says. With a problem there are no rows: a list is taken in whole or not at all.</summary>
/// <param name="Name">The file's name.</param>
/// <param name="Team">What a title above the list calls the team; null where none does.</param>
/// <param name="Rows">People in the order of the list.</param>
/// <param name="Questions">What the list does not say; rows name the ones they have.</param>
/// <param name="Answered">Questions that have their answer, to show and to take back.</param>
/// <param name="Skipped">Every line that is no row of its own, and why; also cells that could not be read, or were left out.</param>
/// <param name="HeldBack">Where the list tells of health: the places only, never the words.</param>
/// <param name="Reads">How the list was understood.</param>
public sealed record SquadList(
    string Name,
    string? Team,
    ValueList<SquadRow> Rows,
    ValueList<Question> Questions,
    ValueList<Answered> Answered,
    ValueList<Skipped> Skipped,
    ValueList<HeldBack> HeldBack,
    ValueList<Problem> Problems,
    SquadReads Reads)
{
    /// <summary>The open questions of a row.</summary>
    public IEnumerable<Question> QuestionsOf(SquadRow row) => Questions.Where(question => row.Ask.Contains(question.Id, StringComparer.Ordinal));

    /// <summary>Those who may be kept now: all but the rows that wait.</summary>
    public IEnumerable<SquadRow> Taken => Rows.Where(row => !row.Waits);
}

/// <summary>Something was held back because it tells of somebody's health.</summary>
/// <param name="Line">Physical line, of a sheet its row.</param>
/// <param name="Where">In words: "H8", "the comment at H10", "line 10, column 9".</param>
public sealed record HeldBack(int Line, string Where);

/// <summary>How a squad list was understood.</summary>
/// <param name="Encoding">In words.</param>
/// <param name="Delimiter">Between cells; null for lines of prose.</param>
/// <param name="HeadingLine">Physical line of the headings; null when there are none.</param>
/// <param name="MassUnit">The unit of body masses without one; null while it is asked.</param>
/// <param name="LiftUnit">The unit of lifts without one; null while it is asked.</param>
/// <param name="Order">The order of day and month in days of birth written with strokes; null where nothing tells.</param>
/// <param name="Unread">Headings of columns that were not read.</param>
public sealed record SquadReads(string Encoding, char? Delimiter, int? HeadingLine, MassUnit? MassUnit, MassUnit? LiftUnit, DayOrder? Order, ValueList<string> Unread);
