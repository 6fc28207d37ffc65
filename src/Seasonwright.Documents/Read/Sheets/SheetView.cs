using Seasonwright.Core.Calendar;
using Seasonwright.Documents.Read.Workbooks;

namespace Seasonwright.Documents.Read.Sheets;

/// <summary>A sheet seen along its weeks: lines run along them, places count them. Across, a line is a row; down, it is a column.</summary>
internal sealed class SheetView(Sheet sheet, bool isDown)
{
    public Sheet Sheet => sheet;

    public bool IsDown => isDown;

    public int LastLine => isDown ? sheet.LastColumn : sheet.LastRow;

    public SheetCell? this[int line, int place] => sheet[At(line, place)];

    public CellAt At(int line, int place) => isDown ? new(place, line) : new(line, place);

    public int LineOf(CellAt at) => isDown ? at.Column : at.Row;

    public int PlaceOf(CellAt at) => isDown ? at.Row : at.Column;

    /// <summary>The places that a cell is merged over, only its own where it stands alone.</summary>
    public (int First, int Last) Merged(CellAt at) => sheet.MergeAt(at) is { } area ? (PlaceOf(area.First), PlaceOf(area.Last)) : (PlaceOf(at), PlaceOf(at));

    /// <summary>"13" for a row, "G" for a column.</summary>
    public string NameOf(int line) => isDown ? CellAt.ColumnName(line) : FormattableString.Invariant($"{line}");

    public string KeyOf(int line) => $"{sheet.Name}!{NameOf(line)}";

    public string WhereOf(int line) => Sentences.Say(isDown ? "sheet.column" : "sheet.row", NameOf(line));

    /// <summary>The line that a place is, named in words.</summary>
    public string WhereOfPlace(int place) => Sentences.Say(isDown ? "sheet.row" : "sheet.column", isDown ? FormattableString.Invariant($"{place}") : CellAt.ColumnName(place));

    public IEnumerable<IGrouping<int, SheetCell>> Lines => sheet.Cells.GroupBy(cell => LineOf(cell.At)).OrderBy(line => line.Key);
}
