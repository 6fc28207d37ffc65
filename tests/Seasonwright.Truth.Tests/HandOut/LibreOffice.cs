using System.Globalization;
using System.Text;

namespace Seasonwright.Truth.Tests.HandOut;

/// <summary>The spreadsheet that is not ours, without a window and with a profile of its own; started once for all files of a test.</summary>
internal static class LibreOffice
{
    // Commas, quotes, UTF-8; values as they are and not as they are shown; every sheet.
    private const string AllSheets = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1";

    /// <summary>Opens every workbook, reckons what has no kept value, and tells the cells of all sheets by their place: "Year!B5".</summary>
    /// <param name="sheets">Names of each workbook's sheets.</param>
    public static async Task<IReadOnlyList<Dictionary<string, string>>> ReckonAsync(DirectoryInfo folder, IReadOnlyList<(string File, IReadOnlyList<string> Sheets)> workbooks)
    {
        var to = folder.CreateSubdirectory("reckoned");
        await ConvertAsync(folder, AllSheets, to, [.. workbooks.Select(workbook => workbook.File)]);
        return [.. workbooks.Select(workbook => workbook.Sheets.SelectMany(sheet => Cells(sheet, Path.Combine(to.FullName, $"{Path.GetFileNameWithoutExtension(workbook.File)}-{sheet}.csv"))).ToDictionary(StringComparer.Ordinal))];
    }

    public static async Task ConvertAsync(DirectoryInfo folder, string kind, DirectoryInfo to, IReadOnlyList<string> files)
    {
        string[] arguments = ["--headless", "--norestore", $"-env:UserInstallation={new Uri(Path.Combine(folder.FullName, "profile"))}", "--convert-to", kind, "--outdir", to.FullName, .. files];
        var said = await Outside.RunAsync("soffice", arguments);
        Assert.True(said.Split("convert ").Length > files.Count, $"LibreOffice did not open all of {files.Count} files: {said}");
    }

    private static IEnumerable<(string Place, string Value)> Cells(string sheet, string file)
    {
        var (row, column, cell, isQuoted) = (1, 0, new StringBuilder(), false);
        var text = File.ReadAllText(file);
        for (var at = 0; at < text.Length; at++)
        {
            if (isQuoted && text[at] == '"' && at + 1 < text.Length && text[at + 1] == '"') cell.Append(text[at++]);
            else if (text[at] == '"') isQuoted = !isQuoted;
            else if (isQuoted || text[at] is not (',' or '\n')) cell.Append(text[at]);
            else
            {
                if (cell.Length > 0) yield return ($"{sheet}!{SheetCells.Letters(column)}{row.ToString(CultureInfo.InvariantCulture)}", cell.ToString());
                cell.Clear();
                (row, column) = text[at] == ',' ? (row, column + 1) : (row + 1, 0);
            }
        }
    }
}
