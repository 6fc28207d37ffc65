using System.IO.Compression;
using System.Xml.Linq;

namespace Seasonwright.Documents.Tests.HandOut;

/// <summary>A workbook taken apart as the XML it is, without any library for workbooks.</summary>
internal sealed class BookParts
{
    public static XNamespace Main { get; } = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    public BookParts(byte[] file)
    {
        using var package = new ZipArchive(new MemoryStream(file), ZipArchiveMode.Read);
        foreach (var part in package.Entries)
        {
            using var stream = part.Open();
            Parts.Add(part.FullName, XDocument.Load(stream));
        }
        Texts = [.. Parts["xl/sharedStrings.xml"].Root!.Elements(Main + "si").Select(item => item.Value)];
        var sheets = Parts["xl/workbook.xml"].Root!.Element(Main + "sheets")!.Elements().ToList();
        foreach (var (sheet, number) in sheets.Select((sheet, at) => (sheet, at + 1)))
            Sheets.Add(sheet.Attribute("name")!.Value, Parts[FormattableString.Invariant($"xl/worksheets/sheet{number}.xml")].Root!);
    }

    public SortedDictionary<string, XDocument> Parts { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, XElement> Sheets { get; } = new(StringComparer.Ordinal);

    public IReadOnlyList<string> Texts { get; }

    public IEnumerable<XElement> Cells => Sheets.Values.SelectMany(sheet => sheet.Descendants(Main + "c"));

    public Dictionary<string, string> Names => Parts["xl/workbook.xml"].Root!.Element(Main + "definedNames")!.Elements()
        .Where(name => name.Attribute("localSheetId") is null).ToDictionary(name => name.Attribute("name")!.Value, name => name.Value, StringComparer.Ordinal);

    public XElement? Cell(string sheet, string place) => Sheets[sheet].Descendants(Main + "c").SingleOrDefault(cell => cell.Attribute("r")!.Value == place);

    /// <summary>What a cell shows before anything is reckoned anew; days as numbers.</summary>
    public string? Value(string sheet, string place) => Cell(sheet, place) is { } cell ? Value(cell) : null;

    public string? Value(XElement cell) => cell.Element(Main + "v")?.Value is not { } value ? null
        : cell.Attribute("t")?.Value == "s" ? Texts[int.Parse(value, System.Globalization.CultureInfo.InvariantCulture)] : value;

    /// <summary>The look of a cell, as the file's table of looks has it.</summary>
    public XElement Look(XElement cell) => Parts["xl/styles.xml"].Root!.Element(Main + "cellXfs")!.Elements().ElementAt(int.Parse(cell.Attribute("s")!.Value, System.Globalization.CultureInfo.InvariantCulture));

    public string Format(XElement cell) => Parts["xl/styles.xml"].Root!.Element(Main + "numFmts")!.Elements()
        .Single(format => format.Attribute("numFmtId")!.Value == Look(cell).Attribute("numFmtId")!.Value).Attribute("formatCode")!.Value;
}
