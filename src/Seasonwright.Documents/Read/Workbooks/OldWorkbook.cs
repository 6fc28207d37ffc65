using System.Text;
using ExcelDataReader;
using ExcelDataReader.Exceptions;
using Seasonwright.Core;

namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>XLS, the form before 2007, in its file of streams or bare. It does not tell fills, comments and formulas here; values, formats, merges and what is hidden it does.</summary>
internal static class OldWorkbook
{
    private static readonly byte[] Streams = [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1];

    static OldWorkbook() => Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);

    /// <summary>A file of streams, or a bare sheet of versions 2 to 5.</summary>
    public static bool Is(ReadOnlySpan<byte> bytes) => bytes.StartsWith(Streams) || bytes.Length > 8 && bytes[0] == 9 && bytes[1] is 0 or 2 or 4 or 8 && bytes[2] is 4 or 6 or 8 or 16 && bytes[3] == 0;

    public static ValueList<Sheet> Read(byte[] bytes)
    {
        if (Names(bytes, "EncryptedPackage") || Names(bytes, "EncryptionInfo")) throw new WorkbookTrouble("workbook-encrypted", null, null);
        if (Names(bytes, "WordDocument")) throw new WorkbookTrouble("workbook-other-document", null, null, "application/msword");
        string? sheet = null;
        CellAt? at = null;
        try
        {
            using var reader = ExcelReaderFactory.CreateBinaryReader(new MemoryStream(bytes, writable: false), new ExcelReaderConfiguration { FallbackEncoding = Encoding.GetEncoding(1252) });
            if (reader.ResultsCount > Workbook.MostSheets) throw new WorkbookTrouble("workbook-sheets", null, null, reader.ResultsCount, Workbook.MostSheets);
            var (sheets, left) = (new List<Sheet>(), Workbook.MostCells);
            do
            {
                (sheet, at) = (reader.Name ?? "", null);
                var (cells, rows) = (new List<SheetCell>(), 0);
                var hiddenRows = new HashSet<int>();
                while (reader.Read())
                {
                    rows++;
                    if (reader.RowHeight == 0) hiddenRows.Add(rows);
                    for (var column = 0; column < reader.FieldCount; column++)
                    {
                        at = new(rows, column + 1);
                        if (Cell(reader, at.Value) is { } cell) cells.Add(cell);
                        if (cells.Count > left) throw new WorkbookTrouble("workbook-cells", sheet, at, Workbook.MostCells);
                    }
                }
                var hiddenColumns = Enumerable.Range(0, reader.FieldCount).Where(column => reader.GetColumnWidth(column) == 0).Select(column => column + 1);
                left -= cells.Count;
                sheets.Add(new(sheet, reader.VisibleState is "hidden" or "veryhidden", cells, Merges(reader, sheet), hiddenRows, hiddenColumns.ToList(), default));
            }
            while (reader.NextResult());
            return sheets.ToValueList();
        }
        catch (InvalidPasswordException)
        {
            throw new WorkbookTrouble("workbook-encrypted", null, null);
        }
        // Whatever a damaged file makes of the reading library is one thing to the user: the file is damaged.
        catch (Exception e) when (e is not (WorkbookTrouble or OutOfMemoryException))
        {
            throw new WorkbookTrouble("workbook-damaged", sheet, at, sheet ?? "");
        }
    }

    private static SheetCell? Cell(IExcelDataReader reader, CellAt at)
    {
        var column = at.Column - 1;
        var format = reader.GetNumberFormatString(column) is { Length: > 0 } code ? NumberFormat.Of(code) : NumberFormat.General;
        return reader.GetValue(column) switch
        {
            string text when text.Length > 0 => text.Length <= Workbook.LongestText ? Of(at, new CellValue.Words(text), Escapes.Undone(text)) : throw new WorkbookTrouble("workbook-text-long", reader.Name, at, Workbook.LongestText),
            bool truth => Of(at, new CellValue.Truth(truth), truth ? "TRUE" : "FALSE"),
            double number => Of(at, format.Read(number, from1904: false)),
            int number => Of(at, format.Read(number, from1904: false)),
            DateTime day => Of(at, format.Read(Number(day), from1904: false)),
            TimeSpan length => Of(at, format.Read(length.TotalDays, from1904: false)),
            _ => null,
        };
    }

    // The library has turned the number into a day already; back, so that one place decides what it means.
    private static double Number(DateTime day) => (day - new DateTime(1899, 12, 30)).TotalDays is var number && number < 61 ? number - 1 : (day - new DateTime(1899, 12, 30)).TotalDays;

    private static SheetCell Of(CellAt at, (CellValue Value, string Text) read) => Of(at, read.Value, read.Text);

    private static SheetCell Of(CellAt at, CellValue value, string text) => new(at, value, text, null, null, "");

    private static List<CellArea> Merges(IExcelDataReader reader, string sheet)
    {
        var merges = new List<CellArea>();
        foreach (var range in reader.MergeCells ?? [])
        {
            var area = new CellArea(new(range.FromRow + 1, range.FromColumn + 1), new(range.ToRow + 1, range.ToColumn + 1));
            if (!area.First.IsOnSheet || !area.Last.IsOnSheet) throw new WorkbookTrouble("workbook-merge", sheet, null, area);
            if (merges.FirstOrDefault(other => other.Overlaps(area)) is { Rows: > 0, First.Row: > 0 } other) throw new WorkbookTrouble("workbook-overlap", sheet, area.First, other, area);
            merges.Add(area);
            if (merges.Count > 2000) throw new WorkbookTrouble("workbook-merges", sheet, null, 2000);
        }
        return merges;
    }

    // A stream's name in the directory, in UTF-16.
    private static bool Names(byte[] bytes, string stream) => bytes.AsSpan().IndexOf(Encoding.Unicode.GetBytes(stream)) >= 0;
}
