using Seasonwright.Core;

namespace Seasonwright.Documents.Read;

/// <summary>A row of cells.</summary>
/// <param name="Line">Physical line where it starts, 1 is the first; a quoted cell may run over more.</param>
/// <param name="Cells">Tidied (see <see cref="Spelling.Tidy"/>).</param>
/// <param name="Raw">As written, without the line end.</param>
public sealed record CellRow(int Line, ValueList<string> Cells, string Raw)
{
    /// <summary>The cell of a column counted from 0; empty beyond the row's end.</summary>
    public string this[int column] => column >= 0 && column < Cells.Count ? Cells[column] : "";

    public bool IsBlank => Cells.All(cell => cell.Length == 0);

    /// <summary>Cells that hold something, with their columns.</summary>
    public IEnumerable<(int Column, string Cell)> Filled => Cells.Select((cell, column) => (column, cell)).Where(c => c.cell.Length > 0);
}
