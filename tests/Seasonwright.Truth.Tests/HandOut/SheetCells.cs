using System.Globalization;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Seasonwright.Truth.Tests.HandOut;

/// <summary>The values of a workbook's cells as its file has them, by sheet and place: "Year!B5".</summary>
internal static class SheetCells
{
    public static Dictionary<string, string> Of(byte[] file)
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(file), isEditable: false);
        var book = document.WorkbookPart!;
        var texts = book.SharedStringTablePart?.SharedStringTable?.Elements<SharedStringItem>().Select(item => item.InnerText).ToList() ?? [];
        var cells = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var sheet in book.Workbook!.Sheets!.Elements<Sheet>())
            foreach (var cell in ((WorksheetPart)book.GetPartById(sheet.Id!)).Worksheet!.Descendants<Cell>())
                if (Value(cell, texts) is { Length: > 0 } value) cells.Add($"{sheet.Name}!{cell.CellReference}", value.Replace("_x005F_", "_", StringComparison.Ordinal));
        return cells;
    }

    // ISO/IEC 29500-1, 22.9.2.19, from memory: "_x005F_" is how a file writes an underscore that begins no escape.
    private static string? Value(Cell cell, List<string> texts) => cell.CellValue?.Text is not { } value ? cell.InlineString?.InnerText
        : cell.DataType?.Value == CellValues.SharedString ? texts[int.Parse(value, CultureInfo.InvariantCulture)]
        : value;

    /// <summary>A day, a time, a per cent or a number as one number of few digits, however it is written; anything else as it stands.</summary>
    public static string Plain(string value) =>
        DateTime.TryParseExact(value, ["MM/dd/yyyy", "yyyy-MM-dd"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? Digits((day - new DateTime(1899, 12, 30)).TotalDays)
        : TimeOnly.TryParseExact(value, ["hh:mm:ss tt", "HH:mm:ss"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var time) ? Digits(time.ToTimeSpan().TotalDays)
        : value.EndsWith('%') && double.TryParse(value[..^1], CultureInfo.InvariantCulture, out var percent) ? Digits(percent / 100)
        : double.TryParse(value, CultureInfo.InvariantCulture, out var number) ? Digits(number)
        : value;

    // A spreadsheet keeps fewer digits than we write, and a kick-off has no parts of a second.
    private static string Digits(double number) => Math.Round(number, 4).ToString("G12", CultureInfo.InvariantCulture);

    public static string Letters(int column) => column < 26 ? ((char)('A' + column)).ToString() : Letters(column / 26 - 1) + (char)('A' + column % 26);

    /// <summary>Names of the sheets, in order.</summary>
    public static IReadOnlyList<string> Sheets(byte[] file)
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(file), isEditable: false);
        return [.. document.WorkbookPart!.Workbook!.Sheets!.Elements<Sheet>().Select(sheet => sheet.Name!.Value!)];
    }

    /// <summary>The file with another first day and no kept value of any formula, so that whoever opens it has to reckon.</summary>
    public static byte[] WithFirstDay(byte[] file, DateOnly first)
    {
        using var stream = new MemoryStream();
        stream.Write(file);
        using (var document = SpreadsheetDocument.Open(stream, isEditable: true))
        {
            var book = document.WorkbookPart!;
            var place = book.Workbook!.DefinedNames!.Elements<DefinedName>().Single(name => name.Name == "FirstDay").Text.Split('!');
            foreach (var sheet in book.Workbook.Sheets!.Elements<Sheet>())
            {
                foreach (var cell in ((WorksheetPart)book.GetPartById(sheet.Id!)).Worksheet!.Descendants<Cell>())
                {
                    if (cell.CellFormula is not null) cell.CellValue = null;
                    else if (sheet.Name == place[0] && cell.CellReference == place[1].Replace("$", "", StringComparison.Ordinal))
                        cell.CellValue = new CellValue((first.ToDateTime(TimeOnly.MinValue) - new DateTime(1899, 12, 30)).Days);
                }
            }
        }
        return stream.ToArray();
    }
}
