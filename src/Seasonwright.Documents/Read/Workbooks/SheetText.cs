using System.Text;

namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>The sheet of a workbook that holds a list, as text: a line for each row of the sheet, cells set apart by tabs.</summary>
/// <param name="Text">Line n is row n of the sheet. Days are yyyy-MM-dd and times HH:mm; a formula is its kept value.</param>
/// <param name="Sheet">The sheet's name.</param>
/// <param name="Others">Names of sheets that hold something and were not read, hidden ones too.</param>
internal sealed record SheetText(string Text, string Sheet, IReadOnlyList<string> Others)
{
    /// <summary>The visible sheet with the most rows that have a day; of equals the fuller one. Null where no visible sheet holds anything.</summary>
    public static SheetText? Of(Workbook workbook) => Filled(workbook).Where(sheet => !sheet.IsHidden).MaxBy(Days) is { } chosen ? Of(workbook, chosen) : null;

    /// <summary>The sheet chosen, beside the others.</summary>
    public static SheetText Of(Workbook workbook, Sheet chosen) => new(Lines(chosen), chosen.Name, [.. Filled(workbook).Where(sheet => sheet != chosen).Select(sheet => sheet.Name)]);

    private static IEnumerable<Sheet> Filled(Workbook workbook) => workbook.Sheets.Where(sheet => sheet.Cells.Any(cell => !cell.IsEmpty));

    private static (int, int) Days(Sheet sheet) => (
        sheet.Cells.Where(cell => cell.Value is CellValue.Day).Select(cell => cell.Row).Distinct().Count(),
        sheet.Cells.Where(cell => !cell.IsEmpty).Select(cell => cell.Row).Distinct().Count());

    /// <summary>A sheet as text; line n is row n.</summary>
    public static string Lines(Sheet sheet)
    {
        var text = new StringBuilder();
        var (row, column) = (1, 1);
        foreach (var cell in sheet.Cells.Where(cell => !cell.IsEmpty))
        {
            // What is written far below the rest is no list; SourceText says how many lines are too many.
            if (cell.Row > SourceText.MostLines + 1) return text.Append('\n', SourceText.MostLines + 1).ToString();
            if (cell.Row > row)
            {
                text.Append('\n', cell.Row - row);
                (row, column) = (cell.Row, 1);
            }
            text.Append('\t', cell.Column - column).Append(OnOneLine(cell.Text));
            column = cell.Column;
            // Far columns too: SourceText says that it is too much.
            if (text.Length > SourceText.LargestFile) break;
        }
        return text.ToString();
    }

    private static string OnOneLine(string cell)
    {
        var line = string.Create(cell.Length, cell, static (to, from) =>
        {
            for (var i = 0; i < from.Length; i++) to[i] = char.IsControl(from[i]) || from[i] is '\u2028' or '\u2029' ? ' ' : from[i];
        });
        return line.Contains('"', StringComparison.Ordinal) ? $"\"{line.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : line;
    }
}
