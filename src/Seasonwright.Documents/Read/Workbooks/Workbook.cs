using System.Text;
using Seasonwright.Core;

namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>
/// A spreadsheet file as sheets of cells: XLSX (also with macros, which are never looked at) and old XLS. Content never throws: what
/// cannot be read is a problem that names sheet and cell, and then there are no sheets. Nothing is computed, run or fetched.
/// </summary>
/// <param name="Name">The file's name without its folder.</param>
/// <param name="Format">In words, for instance "XLSX workbook"; empty when it is none.</param>
/// <param name="Sheets">In the order of the file, hidden ones too. Sheets of charts are left out.</param>
/// <param name="Problems">If not empty, there are no sheets.</param>
public sealed record Workbook(string Name, string Format, ValueList<Sheet> Sheets, ValueList<Problem> Problems)
{
    /// <summary>10 MB; a year of days with 20 rows has about 0.1.</summary>
    public const int LargestFile = 10_000_000;

    /// <summary>Cells that hold anything, in the whole workbook.</summary>
    public const int MostCells = 200_000;

    public const int MostSheets = 200;

    /// <summary>Characters of one cell, as the file format has it.</summary>
    public const int LongestText = 32_767;

    /// <summary>Whether the first bytes are those of a workbook or of another packed file, so that it is no list of plain text.</summary>
    public static bool Is(ReadOnlySpan<byte> bytes) => bytes.StartsWith("PK"u8) || OldWorkbook.Is(bytes);

    public static Workbook Read(string name, byte[] bytes)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        try
        {
            if (bytes.Length > LargestFile) throw new WorkbookTrouble("workbook-large", null, null, bytes.Length, LargestFile);
            if (bytes.AsSpan().StartsWith("PK"u8)) return new(name, Sentences.Say("workbook.xlsx"), NewWorkbook.Read(bytes), ValueList<Problem>.Empty);
            if (OldWorkbook.Is(bytes)) return new(name, Sentences.Say("workbook.xls"), OldWorkbook.Read(bytes), ValueList<Problem>.Empty);
            throw new WorkbookTrouble(Instead(bytes), null, null);
        }
        catch (WorkbookTrouble trouble)
        {
            return new(name, "", ValueList<Sheet>.Empty, new([trouble.ToProblem(name)]));
        }
    }

    /// <exception cref="WorkbookTrouble">A workbook of none, or of more than anybody opens.</exception>
    internal static void CheckSheets(int count)
    {
        if (count == 0) throw new WorkbookTrouble("workbook-no-sheets", null, null);
        if (count > MostSheets) throw new WorkbookTrouble("workbook-sheets", null, null, count, MostSheets);
    }

    // What stands behind a workbook's name when it is none: programs export web pages and plain text as ".xls".
    private static string Instead(ReadOnlySpan<byte> bytes)
    {
        if (bytes.IsEmpty) return "workbook-empty";
        var head = Encoding.Latin1.GetString(bytes[..Math.Min(bytes.Length, 2000)]).Replace("\0", "", StringComparison.Ordinal);
        if (head.Contains("urn:schemas-microsoft-com:office:spreadsheet", StringComparison.OrdinalIgnoreCase)) return "workbook-xml-2003";
        if (head.TrimStart('\u00EF', '\u00BB', '\u00BF', '\u00FE', '\u00FF', ' ', '\r', '\n', '\t').StartsWith('<')) return "workbook-html";
        return head.All(character => character is '\t' or '\r' or '\n' or >= ' ') ? "workbook-text" : "workbook-unknown";
    }
}
