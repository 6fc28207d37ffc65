namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>What a workbook shows.</summary>
/// <param name="KeyMatches">Whether it may be seen which matches are key.</param>
/// <param name="Notes">The coach's notes of weeks, days, matches and events.</param>
public sealed record WorkbookChoices(bool KeyMatches = false, bool Notes = true);
