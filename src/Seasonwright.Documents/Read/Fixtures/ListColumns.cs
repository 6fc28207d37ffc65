namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>What the columns of a list are taken for.</summary>
/// <param name="Uses">By column.</param>
/// <param name="Figures">Columns of kick-offs or results without a heading that says which: their cells decide.</param>
/// <param name="Ask">Id of the open question who plays.</param>
/// <param name="Waits">No row can be read before its answer.</param>
internal sealed record ListColumns(List<HeadingUse> Uses, IReadOnlySet<int> Figures, string? Ask, bool Waits);
