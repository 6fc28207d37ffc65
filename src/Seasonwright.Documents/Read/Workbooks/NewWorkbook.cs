using Seasonwright.Core;

namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>
/// XLSX: parts of XML in a ZIP (ISO/IEC 29500-1, SpreadsheetML, and its strict form). Only the parts a reader of cells needs are opened:
/// macros, links to other files, pictures and print settings never are.
/// </summary>
internal static class NewWorkbook
{
    public static ValueList<Sheet> Read(byte[] bytes)
    {
        using var parts = new Parts(bytes);
        var main = Main(parts);
        using var workbook = new Part(main, parts.Find(main)!);
        var links = Links.Of(parts, main);
        var (sheets, titles, from1904) = Book(workbook);
        Workbook.CheckSheets(sheets.Count);
        var looks = CellLooks.Read(parts, links.Kind("styles"), links.Kind("theme"));
        var strings = SharedStrings.Read(parts, links.Kind("sharedStrings"));
        var left = Workbook.MostCells;
        var read = new List<Sheet>();
        foreach (var (name, link, isHidden, number) in sheets)
        {
            if (links.Find(link) is not { } part) throw new WorkbookTrouble("workbook-no-part", name, null, link);
            if (part.Kind is not "worksheet") continue;
            if (parts.Find(part.Target) is not { } xml) throw new WorkbookTrouble("workbook-no-part", name, null, part.Target);
            var sheet = new SheetPart(name, part.Target, xml, strings, looks, from1904).Read(isHidden, titles.GetValueOrDefault(number), Comments.Read(parts, part.Target, name), left);
            left -= sheet.Cells.Count;
            read.Add(sheet);
        }
        return read.ToValueList();
    }

    /// <summary>The part that holds the list of sheets; told when the file is of another kind.</summary>
    private static string Main(Parts parts)
    {
        if (parts.Has("mimetype") && parts.Has("content.xml")) throw new WorkbookTrouble("workbook-opendocument", null, null);
        if (parts.Find("[Content_Types].xml") is not { } types) throw new WorkbookTrouble("workbook-other-zip", null, null);
        var main = Links.Of(parts, "").Kind("officeDocument") ?? throw new WorkbookTrouble("workbook-no-part", null, null, "_rels/.rels");
        var type = ContentType(types, main) ?? throw new WorkbookTrouble("workbook-no-type", null, null, main);
        if (type.Contains("sheet.binary", StringComparison.OrdinalIgnoreCase)) throw new WorkbookTrouble("workbook-binary", null, null);
        if (!type.Contains("spreadsheetml", StringComparison.OrdinalIgnoreCase) && !type.Contains("ms-excel", StringComparison.OrdinalIgnoreCase)) throw new WorkbookTrouble("workbook-other-document", null, null, type);
        return parts.Has(main) ? main : throw new WorkbookTrouble("workbook-no-part", null, null, main);
    }

    private static string? ContentType(byte[] types, string part)
    {
        using var xml = new Part("[Content_Types].xml", types);
        string? byEnding = null;
        while (xml.Read())
        {
            if (!xml.IsStart) continue;
            if (xml.Element == "Override" && string.Equals(xml["PartName"]?.TrimStart('/'), part, StringComparison.OrdinalIgnoreCase)) return xml["ContentType"];
            if (xml.Element == "Default" && xml["Extension"] is { Length: > 0 } ending && part.EndsWith($".{ending}", StringComparison.OrdinalIgnoreCase)) byEnding = xml["ContentType"];
        }
        return byEnding;
    }

    private static (List<(string Name, string Link, bool IsHidden, int Number)> Sheets, Dictionary<int, PrintTitles> Titles, bool From1904) Book(Part workbook)
    {
        var (sheets, titles, from1904) = (new List<(string, string, bool, int)>(), new Dictionary<int, PrintTitles>(), false);
        while (workbook.Read())
        {
            if (!workbook.IsStart) continue;
            if (workbook.Element == "workbookPr") from1904 = workbook.Flag("date1904");
            if (workbook.Element == "sheet") sheets.Add((workbook["name"] ?? "", workbook["id"] ?? "", workbook["state"] is "hidden" or "veryHidden", sheets.Count));
            if (workbook.Element == "definedName" && workbook["name"] == "_xlnm.Print_Titles" && workbook.Whole("localSheetId") is { } number) titles[number] = TitlesOf(workbook.Text());
        }
        return (sheets, titles, from1904);
    }

    // 'Plan 26-27'!$A:$B,'Plan 26-27'!$5:$7
    private static PrintTitles TitlesOf(string range)
    {
        var titles = default(PrintTitles);
        foreach (var piece in range.Split(','))
        {
            var ends = piece[(piece.LastIndexOf('!') + 1)..].Replace("$", "", StringComparison.Ordinal).Split(':');
            if (ends.Length != 2) continue;
            if (CellAt.TryParse($"A{ends[0]}", out var first) && CellAt.TryParse($"A{ends[1]}", out var last)) titles = titles with { FirstRow = first.Row, LastRow = last.Row };
            if (CellAt.TryParse($"{ends[0]}1", out first) && CellAt.TryParse($"{ends[1]}1", out last)) titles = titles with { FirstColumn = first.Column, LastColumn = last.Column };
        }
        return titles;
    }
}
