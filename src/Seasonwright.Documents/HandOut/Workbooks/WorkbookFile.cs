using System.Text;
using System.Xml.Linq;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>Writes sheets as a file.</summary>
internal static class WorkbookFile
{
    public static byte[] Write(IReadOnlyList<Sheet> sheets, string heading, Edition edition, LocaleSettings locale)
    {
        using var package = new MemoryStream();
        using (var file = SpreadsheetDocument.Create(package, SpreadsheetDocumentType.Workbook))
        {
            var book = file.AddWorkbookPart();
            // Else it makes up a name each time.
            file.ChangeIdOfPart(book, "workbook");
            var (styles, texts) = (new CellStyles(), new SharedTexts());
            var words = PlainText.Clean(edition.Words(locale));
            foreach (var (sheet, number) in sheets.Select((sheet, at) => (sheet, at + 1)))
                book.AddNewPart<WorksheetPart>(Id(number)).Worksheet = new SheetPart(sheet, heading, words, locale, styles, texts).Write();
            book.AddNewPart<WorkbookStylesPart>("styles").Stylesheet = styles.Sheet();
            book.AddNewPart<SharedStringTablePart>("texts").SharedStringTable = texts.Table();
            book.Workbook = new Workbook(
                new BookViews(new WorkbookView { ActiveTab = 0 }),
                new Sheets(sheets.Select((sheet, at) => new DocumentFormat.OpenXml.Spreadsheet.Sheet { Name = sheet.Name, SheetId = (uint)at + 1, Id = Id(at + 1) })),
                Names(sheets),
                new CalculationProperties { FullCalculationOnLoad = true });
            About(file, heading, words, edition);
        }
        package.Position = 0;
        return SameBytes.Of(package);
    }

    private static string Id(int number) => FormattableString.Invariant($"sheet{number}");

    private static DefinedNames Names(IReadOnlyList<Sheet> sheets)
    {
        var headings = sheets.Select((sheet, at) => new DefinedName(FormattableString.Invariant($"{sheet.Name}!${Sheet.HeadingRow}:${Sheet.HeadingRow}")) { Name = "_xlnm.Print_Titles", LocalSheetId = (uint)at });
        var own = sheets.SelectMany(sheet => sheet.Names ?? []).Select(named => new DefinedName(named.Cells) { Name = named.Name });
        return new DefinedNames(headings.Concat(own).OrderBy(name => name.Name!.Value, StringComparer.OrdinalIgnoreCase).ThenBy(name => name.LocalSheetId?.Value ?? 0));
    }

    private static void About(SpreadsheetDocument file, string heading, string words, Edition edition)
    {
        XNamespace core = "http://schemas.openxmlformats.org/package/2006/metadata/core-properties";
        XNamespace dc = "http://purl.org/dc/elements/1.1/";
        XNamespace terms = "http://purl.org/dc/terms/";
        XNamespace instance = "http://www.w3.org/2001/XMLSchema-instance";
        var day = $"{edition.Day.Iso()}T00:00:00Z";
        var part = file.AddCoreFilePropertiesPart();
        file.ChangeIdOfPart(part, "about");
        using var stream = part.GetStream(FileMode.Create);
        using var writer = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        new XDocument(new XElement(core + "coreProperties",
            new XAttribute(XNamespace.Xmlns + "dc", dc), new XAttribute(XNamespace.Xmlns + "dcterms", terms), new XAttribute(XNamespace.Xmlns + "xsi", instance),
            new XElement(dc + "title", heading), new XElement(dc + "subject", words), new XElement(dc + "creator", "Seasonwright"),
            new XElement(terms + "created", new XAttribute(instance + "type", "dcterms:W3CDTF"), day))).Save(writer);
    }
}
