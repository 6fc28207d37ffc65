using System.Collections.Frozen;
using Seasonwright.Core;

namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>A sheet of cells as its file has it.</summary>
public sealed class Sheet
{
    private readonly FrozenDictionary<CellAt, SheetCell> byPlace;

    /// <param name="merges">None overlaps another.</param>
    public Sheet(string name, bool isHidden, IEnumerable<SheetCell> cells, IEnumerable<CellArea> merges, IEnumerable<int> hiddenRows, IEnumerable<int> hiddenColumns, PrintTitles titles)
    {
        Name = name;
        IsHidden = isHidden;
        Cells = cells.OrderBy(cell => cell.At).ToValueList();
        byPlace = Cells.ToFrozenDictionary(cell => cell.At);
        Merges = merges.OrderBy(area => area.First).ToValueList();
        HiddenRows = hiddenRows.ToFrozenSet();
        HiddenColumns = hiddenColumns.ToFrozenSet();
        Titles = titles;
    }

    public string Name { get; }

    /// <summary>Hidden or very hidden.</summary>
    public bool IsHidden { get; }

    /// <summary>By rows, then by columns.</summary>
    public ValueList<SheetCell> Cells { get; }

    /// <summary>Merged areas; none overlaps another. Only the first cell of one holds a value.</summary>
    public ValueList<CellArea> Merges { get; }

    public IReadOnlySet<int> HiddenRows { get; }

    public IReadOnlySet<int> HiddenColumns { get; }

    /// <summary>Rows and columns repeated on each printed page.</summary>
    public PrintTitles Titles { get; }

    public int LastRow => Cells.Count == 0 ? 0 : Cells[^1].Row;

    public int LastColumn => Cells.Count == 0 ? 0 : Cells.Max(cell => cell.Column);

    /// <summary>The cell, or null where nothing is.</summary>
    public SheetCell? this[int row, int column] => byPlace.GetValueOrDefault(new CellAt(row, column));

    public SheetCell? this[CellAt at] => byPlace.GetValueOrDefault(at);

    /// <summary>The merged area a cell is part of; null when it stands alone.</summary>
    public CellArea? MergeAt(CellAt at)
    {
        foreach (var area in Merges)
        {
            if (area.Contains(at)) return area;
        }
        return null;
    }
}

/// <summary>Rows and columns repeated on each printed page; 0 and 0 where there are none.</summary>
public readonly record struct PrintTitles(int FirstRow, int LastRow, int FirstColumn, int LastColumn);
