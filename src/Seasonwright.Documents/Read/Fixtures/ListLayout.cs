using Seasonwright.Core;
using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>A list cut into matches, with everything else told.</summary>
/// <param name="HeadingLine">Null for lists without headings.</param>
/// <param name="Years">Years named by a title.</param>
/// <param name="Ask">Id of the open question which columns say who plays; there are no matches while nothing can be offered.</param>
internal sealed record ListLayout(List<ListedMatch> Matches, List<Skipped> Skipped, ValueList<HeadingUse> Headings, int? HeadingLine, SeasonYears? Years, List<Problem> Problems, string? Ask = null);

/// <summary>What headings between the rows say about the rows below them.</summary>
internal sealed class Sections
{
    public WrittenDate? Date { get; private set; }

    public string Round { get; private set; } = "";

    public string Text { get; private set; } = "";

    public SeasonYears? Years { get; private set; }

    /// <summary>The club's team whose matches follow, as the last row that names one has it.</summary>
    public string Squad { get; private set; } = "";

    /// <summary>Takes in a line that is no match, and says what kind of line it is.</summary>
    /// <param name="isTitle">It stands above all matches.</param>
    public string Take(string text, bool isTitle)
    {
        var round = RoundText.InHeading(text);
        // The number of a round is no day: "Round 1 – Saturday 5 September".
        var date = DateText.Find(round is null ? text : text.Replace(round, "", StringComparison.Ordinal), months: true);
        if (date is not null && round is null && date.Kind == WrittenKind.Day && IsIssue(text)) return "issued";
        if (round is not null || date is not null && !isTitle && IsMostly(text, date))
        {
            (Date, Text) = date is null && round is not null && Round == round ? (Date, Text) : (date, text);
            Round = round ?? "";
            return "section";
        }
        if (date is null or { Kind: WrittenKind.Month } && SeasonYears.Find(text) is { } years)
        {
            Years ??= years;
            return "season";
        }
        if (!isTitle && SquadText.Is(text))
        {
            Squad = text;
            return "section";
        }
        return ListWords.IsFurniture(text) || text.Contains(" | ", StringComparison.Ordinal) ? "furniture" : isTitle ? "title" : "remark";
    }

    /// <summary>One team's name above all rows tells nothing apart.</summary>
    public static List<ListedMatch> WithSquads(List<ListedMatch> matches) =>
        matches.Select(match => match.Squad).Distinct(StringComparer.Ordinal).Skip(1).Any() ? matches.ConvertAll(match => match.Team.Length > 0 ? match : match with { Team = match.Squad }) : matches;

    // "Stand: 20.8.2026", "as of 20 August": when the list was made, not when anything is played.
    private static bool IsIssue(string text) => $" {string.Join(' ', Spelling.Fold(text).Split([' ', ':', ',', '.', '(', ')'], StringSplitOptions.RemoveEmptyEntries))} " is var spaced && Issues.Any(word => spaced.Contains($" {word} ", StringComparison.Ordinal));

    private static readonly string[] Issues = ["stand", "as of", "issue", "version", "updated", "printed", "état", "actualizado", "aggiornato", "opdateret", "uppdaterad", "oppdatert", "bijgewerkt", "aktualizacja", "mis à jour", "per"];

    // A heading is its date; a sentence that mentions one is a remark.
    private static bool IsMostly(string text, WrittenDate date) => DateText.Without(text, date).Length <= 25;
}
