using System.Collections.Immutable;

namespace Seasonwright.Documents.Read.Sheets;

/// <summary>What the coach says about a workbook: the roles of its rows, and answers to its questions.</summary>
/// <param name="Roles">By the row's key; rows not named keep the role guessed.</param>
public sealed record SheetMap(ImmutableSortedDictionary<string, RowRole> Roles, Answers Answers)
{
    public static SheetMap Empty { get; } = new(ImmutableSortedDictionary.Create<string, RowRole>(StringComparer.Ordinal), Answers.None);

    public SheetMap With(string row, RowRole role) => this with { Roles = Roles.SetItem(row, role) };

    public SheetMap With(string question, string answer) => this with { Answers = Answers.With(question, answer) };
}
