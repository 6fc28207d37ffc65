namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>What the weeks look up on other sheets.</summary>
internal sealed record WeekLists(WeekList Matches, WeekList Events, WeekList Tests, WeekList? Notes);
