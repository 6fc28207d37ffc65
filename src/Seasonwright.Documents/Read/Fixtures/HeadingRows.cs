using Seasonwright.Core;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>The headings of a list: one row, or two of which the upper names groups of columns ("Home side" over "Name" and "Goals").</summary>
/// <param name="Row">The headings by column; of two rows the one that says more for each, with the line of the lower.</param>
/// <param name="Upper">The upper row of two.</param>
/// <param name="Lower">The lower row, or the only one.</param>
internal sealed record HeadingRows(CellRow Row, CellRow? Upper, CellRow Lower)
{
    public HeadingRows(CellRow row)
        : this(row, null, row)
    {
    }

    /// <summary>Whether a row is one of them, where it stands or repeated further down.</summary>
    public bool Is(CellRow row) => row.Cells.SequenceEqual(Lower.Cells, StringComparer.Ordinal) || Upper is not null && row.Cells.SequenceEqual(Upper.Cells, StringComparer.Ordinal);

    /// <summary>Both rows as one; null if one of them holds anything but headings.</summary>
    public static HeadingRows? Both(CellRow upper, CellRow lower)
    {
        if (!new[] { upper, lower }.All(row => row.Filled.Skip(1).Any() && row.Filled.All(c => GuessedColumns.IsWord(c.Cell)))) return null;
        var cells = new List<string>();
        for (var column = 0; column < Math.Max(upper.Cells.Count, lower.Cells.Count); column++)
        {
            // "Goals" stands over "H" and "A", written once.
            var group = upper[column].Length == 0 && lower[column].Length > 0 && HeadingWords.RoleOf(lower[column]) is null && cells.Count > 0 && HeadingWords.RoleOf(cells[^1]) == ColumnRole.Result ? cells[^1] : upper[column];
            var isGroup = lower[column].Length == 0 || HeadingWords.RoleOf(group) is { } role && (role is ColumnRole.Home or ColumnRole.Away or ColumnRole.Result || HeadingWords.RoleOf(lower[column]) is null);
            cells.Add(isGroup ? group : lower[column]);
        }
        return new(new CellRow(lower.Line, cells.ToValueList(), lower.Raw), upper, lower);
    }
}
