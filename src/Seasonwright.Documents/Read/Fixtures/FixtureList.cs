using Seasonwright.Core;
using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>A fixture list, read: rows, what must be asked, what was left out and why. With problems there are no rows.</summary>
/// <param name="Name">The file's name.</param>
/// <param name="Reads">How it was read, for the preview.</param>
/// <param name="Team">The team whose matches the rows are; null for one team's own list, or while it is asked.</param>
/// <param name="Teams">All team names found, in the order of the list; empty for one team's own list.</param>
/// <param name="Rows">Our matches, in the order of the list.</param>
/// <param name="Questions">Open questions.</param>
/// <param name="Answered">Questions that the answers given have settled.</param>
/// <param name="Skipped">Every line that is no row, by line.</param>
/// <param name="Problems">Why it cannot be read at all.</param>
public sealed record FixtureList(
    string Name,
    FixtureReads Reads,
    string? Team,
    ValueList<TeamFound> Teams,
    ValueList<FixtureRow> Rows,
    ValueList<Question> Questions,
    ValueList<Answered> Answered,
    ValueList<Skipped> Skipped,
    ValueList<Problem> Problems)
{
    /// <summary>Nothing can be taken before an answer: the order of day and month, the year, the team, whose list it is or who plays is open, or there are problems.</summary>
    public bool IsBlocked => Problems.Count > 0
        || Questions.Any(question => question.Kind == "Q-order" || question.Kind is "Q-sides" or "Q-team" or "Q-own" or "Q-squad" or "Q-year" && question.Offered is null);

    /// <summary>The open questions of a row.</summary>
    public IEnumerable<Question> QuestionsOf(FixtureRow row) => Questions.Where(question => row.Ask.Contains(question.Id, StringComparer.Ordinal));
}

/// <summary>A team name in a list that names both teams.</summary>
/// <param name="Matches">Rows that name it.</param>
public sealed record TeamFound(string Name, int Matches);

/// <summary>How a list was read, for the preview.</summary>
/// <param name="Encoding">In words.</param>
/// <param name="Delimiter">Null when lines have no cells, and for JSON.</param>
/// <param name="HeadingLine">Null for lists without headings.</param>
/// <param name="Headings">What each column is taken for; empty without headings.</param>
/// <param name="Order">Day or month first; null while it is asked.</param>
/// <param name="OrderLines">Lines that decided it; empty when none had to.</param>
/// <param name="Season">Years filled in where none are written.</param>
public sealed record FixtureReads(string Encoding, char? Delimiter, int? HeadingLine, ValueList<HeadingUse> Headings, DayOrder? Order, ValueList<int> OrderLines, SeasonYears? Season);
