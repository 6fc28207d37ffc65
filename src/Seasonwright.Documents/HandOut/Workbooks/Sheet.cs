using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>
/// A sheet: the team and what the sheet holds, the edition, a line of explanation (on the Year sheet the first day), the headings, then a row
/// a thing. It has at least one row, so that what looks into it finds a place, and a row put in between belongs to it.
/// </summary>
/// <param name="Name">Of letters only, so that formulas name it without quotes.</param>
/// <param name="Above">The cells of the third row.</param>
/// <param name="Frozen">Columns that stay in sight.</param>
/// <param name="Merged">Cells made one, for instance "B3:C3".</param>
/// <param name="Names">What this sheet gives a name to: cells by the name's text.</param>
internal sealed record Sheet(
    string Name, IReadOnlyList<SheetColumn> Columns, IReadOnlyList<Cell> Above, IReadOnlyList<IReadOnlyList<Cell>> Rows, int Frozen = 0, string? Merged = null, IReadOnlyList<(string Name, string Cells)>? Names = null,
    IReadOnlyList<Emphasised>? Emphasised = null)
{
    /// <summary>Number of the row of headings, counted from 1.</summary>
    public const int HeadingRow = 4;

    /// <summary>Number of the first row of things.</summary>
    public const int FirstRow = HeadingRow + 1;

    public int LastRow => HeadingRow + Math.Max(1, Rows.Count);

    /// <summary>"Year!$B$5:$B$57": a column's cells, for other sheets to look into.</summary>
    /// <param name="column">Counted from 0.</param>
    public string Cells(int column) => FormattableString.Invariant($"{Name}!${Letters(column)}${FirstRow}:${Letters(column)}${LastRow}");

    /// <summary>"A" for 0, "Z" for 25, "AA" for 26.</summary>
    public static string Letters(int column) => Read.Workbooks.CellAt.ColumnName(column + 1);
}

/// <summary>A look that cells take on by what they hold.</summary>
/// <param name="Cells">For instance "R5:Y57".</param>
/// <param name="When">A formula for the first of the cells.</param>
internal sealed record Emphasised(string Cells, string When, Tint? Fill = null, Tint? Ink = null, Tint? LineAbove = null);
