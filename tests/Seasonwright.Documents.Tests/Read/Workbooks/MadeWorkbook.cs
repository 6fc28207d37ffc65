using System.Globalization;
using System.IO.Compression;
using System.Text;

namespace Seasonwright.Documents.Tests.Read.Workbooks;

/// <summary>A workbook packed by hand, part by part, so that a test can spoil any of them.</summary>
internal sealed class MadeWorkbook
{
    private const string Head = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>";
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    public Dictionary<string, string> Parts { get; } = new(StringComparer.Ordinal)
    {
        ["[Content_Types].xml"] = $"{Head}<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" ContentType=\"application/xml\"/><Override PartName=\"/xl/workbook.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/></Types>",
        ["_rels/.rels"] = $"{Head}<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"rId1\" Type=\"{Office}/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>",
        ["xl/styles.xml"] = Styles("", ["0"]),
    };

    private readonly List<(string Name, string State)> sheets = [];

    /// <summary>Inside of the element workbookPr.</summary>
    public string Settings { get; set; } = "";

    public string DefinedNames { get; set; } = "";

    /// <param name="data">Rows, or cells ("&lt;c ...") which stand in row 1 then.</param>
    /// <param name="behind">Elements behind the rows, for instance merged cells.</param>
    public MadeWorkbook Sheet(string name, string data, string behind = "", string before = "", string state = "visible")
    {
        sheets.Add((name, state));
        var rows = data.StartsWith("<c", StringComparison.Ordinal) ? $"<row r=\"1\">{data}</row>" : data;
        Parts[$"xl/worksheets/sheet{sheets.Count}.xml"] = $"{Head}<worksheet xmlns=\"{Main}\" xmlns:r=\"{Office}\">{before}<sheetData>{rows}</sheetData>{behind}</worksheet>";
        return this;
    }

    /// <summary>Styles numbered from 0, each the attributes of an xf; for instance "14" or "164\" fillId=\"2".</summary>
    public MadeWorkbook With(string inside, params string[] formats)
    {
        Parts["xl/styles.xml"] = Styles(inside, formats);
        return this;
    }

    /// <summary>A sheet whose part the test brings itself.</summary>
    public MadeWorkbook Named(string sheet)
    {
        sheets.Add((sheet, "visible"));
        return this;
    }

    public MadeWorkbook Part(string name, string xml)
    {
        Parts[name] = xml;
        return this;
    }

    public byte[] Bytes()
    {
        Parts.TryAdd("xl/workbook.xml", $"{Head}<workbook xmlns=\"{Main}\" xmlns:r=\"{Office}\"><workbookPr {Settings}/><sheets>{string.Concat(sheets.Select((sheet, i) => $"<sheet name=\"{sheet.Name}\" sheetId=\"{Number(i)}\" state=\"{sheet.State}\" r:id=\"rId{Number(i)}\"/>"))}</sheets>{DefinedNames}</workbook>");
        Parts.TryAdd("xl/_rels/workbook.xml.rels", $"{Head}<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
            + string.Concat(sheets.Select((_, i) => $"<Relationship Id=\"rId{Number(i)}\" Type=\"{Office}/worksheet\" Target=\"worksheets/sheet{Number(i)}.xml\"/>"))
            + $"<Relationship Id=\"s\" Type=\"{Office}/styles\" Target=\"styles.xml\"/><Relationship Id=\"t\" Type=\"{Office}/sharedStrings\" Target=\"sharedStrings.xml\"/><Relationship Id=\"h\" Type=\"{Office}/theme\" Target=\"theme/theme1.xml\"/></Relationships>");
        return Packed(Parts.Select(part => (part.Key, Encoding.UTF8.GetBytes(part.Value))));
    }

    public static byte[] Packed(IEnumerable<(string Name, byte[] Bytes)> parts)
    {
        using var bytes = new MemoryStream();
        using (var archive = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, content) in parts)
            {
                using var entry = archive.CreateEntry(name, CompressionLevel.Optimal).Open();
                entry.Write(content);
            }
        }
        return bytes.ToArray();
    }

    private static string Number(int index) => (index + 1).ToString(CultureInfo.InvariantCulture);

    private static string Styles(string inside, string[] formats) =>
        $"{Head}<styleSheet xmlns=\"{Main}\">{inside}<cellXfs>{string.Concat(formats.Select(format => $"<xf numFmtId=\"{format}\"/>"))}</cellXfs></styleSheet>";
}
