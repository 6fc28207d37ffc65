using System.Globalization;
using System.IO.Compression;
using System.Text;
using Seasonwright.Documents.Read.Workbooks;

namespace Seasonwright.Documents.Tests.Read.Workbooks;

/// <summary>Damaged and hostile workbooks: a problem in words each time, never an exception, never more memory than a large workbook takes.</summary>
public class WorkbookFaultTests
{
    /// <summary>What reading any file may allocate: some copies of the greatest unpacked size. A bomb of a gigabyte would pass it many times over.</summary>
    private const long MostAllocated = 700_000_000;

    private static readonly string[] Files = [.. Directory.GetFiles(Path.Combine(WorkbookTests.Folder, "samples"), "*.xlsx").Concat(Directory.GetFiles(Path.Combine(WorkbookTests.Folder, "old"), "*.xls")).Order(StringComparer.Ordinal)];

    private static Workbook Read(byte[] bytes)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        var book = Workbook.Read("hostile.xlsx", bytes);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, MostAllocated);
        Assert.All(book.Problems, problem => Assert.True(problem.What.Length > 10 && problem.Mend.Length > 10));
        if (book.Problems.Count > 0) Assert.Empty(book.Sheets);
        return book;
    }

    /// <summary>Every file of the samples cut off at 25 places, with a bit turned at 60, and a stretch overwritten at 15.</summary>
    [Fact]
    public void Damaged_workbooks_are_told()
    {
        var (count, told) = (0, 0);
        foreach (var bytes in Files.Select(File.ReadAllBytes))
        {
            foreach (var damaged in Damages(bytes))
            {
                count++;
                told += Read(damaged).Problems.Count;
            }
            var whole = Read(bytes).Sheets.SelectMany(sheet => sheet.Cells).ToList();
            for (var cut = 0; cut < 25; cut++)
            {
                // Behind its cells an old workbook has streams that nobody reads.
                var read = Read(bytes[..(bytes.Length * cut / 25)]);
                if (read.Problems.Count == 0) Assert.Equal(whole, read.Sheets.SelectMany(sheet => sheet.Cells));
                if (cut < 15 || bytes[0] == 'P') Assert.NotEmpty(read.Problems);
            }
        }
        Assert.True(count > 800, $"{count} files");
        // Checksums tell of every turned bit in a part that is read; bits of parts nobody reads, of names of the maker and of old workbooks' values are not told.
        Assert.True(told * 2 > count, $"{told} of {count} told");
    }

    private static IEnumerable<byte[]> Damages(byte[] bytes)
    {
        for (var place = 0; place < 60; place++)
        {
            var turned = (byte[])bytes.Clone();
            turned[(int)((long)bytes.Length * place / 60) + place % 7] ^= (byte)(1 << (place % 8));
            yield return turned;
        }
        for (var place = 0; place < 15; place++)
        {
            var filled = (byte[])bytes.Clone();
            var start = bytes.Length * place / 15;
            Array.Fill(filled, (byte)(place * 17), start, Math.Min(64, bytes.Length - start));
            yield return filled;
        }
    }

    /// <summary>A turned bit inside the cells themselves would be another plan: the checksum tells.</summary>
    [Fact]
    public void No_turned_bit_of_a_sheet_goes_unnoticed()
    {
        var bytes = new MadeWorkbook().Sheet("S", "<c r=\"A1\"><v>46204</v></c>").Bytes();
        var stored = Stored(bytes);
        Assert.Empty(Read(stored).Problems);
        var at = stored.AsSpan().IndexOf("46204"u8);
        stored[at] ^= 1;
        Assert.Equal("workbook-damaged", Assert.Single(Read(stored).Problems).Id);
    }

    // The same parts, not compressed, so that a byte of the file is a byte of the sheet.
    private static byte[] Stored(byte[] bytes)
    {
        using var to = new MemoryStream();
        using (var archive = new ZipArchive(to, ZipArchiveMode.Create, leaveOpen: true))
        {
            using var from = new ZipArchive(new MemoryStream(bytes));
            foreach (var entry in from.Entries)
            {
                using var source = entry.Open();
                using var target = archive.CreateEntry(entry.FullName, CompressionLevel.NoCompression).Open();
                source.CopyTo(target);
            }
        }
        return to.ToArray();
    }

    private static string Repeat(string text, int count) => new StringBuilder().Insert(0, text, count).ToString();

    private static string Cells(int count) => string.Concat(Enumerable.Range(1, count / 1000).Select(row => $"<row>{Repeat("<c><v>1</v></c>", 1000)}</row>"));

    private static MadeWorkbook Plain => new MadeWorkbook().Sheet("Plan", "<c r=\"A1\"><v>1</v></c>");

    private static MadeWorkbook Merged(params string[] areas) => new MadeWorkbook().Sheet("Plan", "<c r=\"A1\"><v>1</v></c>", $"<mergeCells>{string.Concat(areas.Select(area => $"<mergeCell ref=\"{area}\"/>"))}</mergeCells>");

    /// <summary>By the id of the problem expected; the place it must name behind a space.</summary>
    public static IEnumerable<(string Expected, byte[] Bytes)> Hostile()
    {
        yield return ("workbook-empty", []);
        yield return ("workbook-unknown", [0, 1, 2, 3, 255]);
        yield return ("workbook-text", Encoding.UTF8.GetBytes("Week;Load\n1;60\n"));
        yield return ("workbook-text", Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("Week\tLoad\n1\t60\n")).ToArray());
        yield return ("workbook-html", Encoding.UTF8.GetBytes("\uFEFF<html><table><tr><td>1</td></tr></table></html>"));
        yield return ("workbook-html", Encoding.UTF8.GetBytes("<table border=1><tr><td>1</table>"));
        yield return ("workbook-xml-2003", Encoding.UTF8.GetBytes("<?xml version=\"1.0\"?><Workbook xmlns=\"urn:schemas-microsoft-com:office:spreadsheet\"/>"));
        yield return ("workbook-large", new byte[Workbook.LargestFile + 1]);
        yield return ("workbook-damaged", "PK\u0003\u0004 and no more"u8.ToArray());
        yield return ("workbook-damaged", [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1, .. new byte[600]]);
        yield return ("workbook-older", [0x09, 0x08, 0x10, 0x00, .. new byte[600]]);
        yield return ("workbook-encrypted", MadeStreams.File("EncryptedPackage", new byte[600]));
        yield return ("workbook-other-document", MadeStreams.File("WordDocument", new byte[600]));
        yield return ("workbook-no-part", MadeStreams.File("Anything", new byte[600]));
        yield return ("workbook-encrypted", MadeStreams.File("Workbook", MadeStreams.Records((0x809, [0, 6, 5, 0]), (0x2F, [1, 0]), (0x0A, []))));
        yield return ("workbook-no-sheets", MadeStreams.File("Workbook", MadeStreams.Records((0x809, [0, 6, 5, 0]), (0x0A, []))));
        // A chain of sectors in a circle, one that leaves the file, a stream longer than its chain, a text longer than its record, no end.
        yield return ("workbook-damaged", MadeStreams.File("Workbook", new byte[2000], bytes => bytes[512 + 12] = 2));
        yield return ("workbook-damaged", MadeStreams.File("Workbook", new byte[2000], bytes => bytes[512 + 13] = 99));
        yield return ("workbook-damaged", MadeStreams.File("Workbook", new byte[2000], bytes => bytes[1024 + 128 + 121] = 255));
        yield return ("workbook-damaged", MadeStreams.File("Workbook", MadeStreams.Records((0x809, [0, 6, 5, 0]), (0xFC, [255, 255, 255, 127, 255, 255, 255, 127, 255, 255, 0, 65]), (0x0A, []))));
        yield return ("workbook-damaged", MadeStreams.File("Workbook", MadeStreams.Records((0x809, [0, 6, 5, 0]))));
        yield return ("workbook-damaged Plan B7", MadeStreams.File("Workbook", Old((0x203, [6, 0, 1, 0, 0, 0, 1, 2]))));
        yield return ("workbook-no-string Plan B7", MadeStreams.File("Workbook", Old((0xFD, [6, 0, 1, 0, 0, 0, 9, 0, 0, 0]))));
        yield return ("workbook-merge Plan", MadeStreams.File("Workbook", Old((0xE5, [1, 0, 5, 0, 2, 0, 1, 0, 1, 0]))));
        yield return ("workbook-overlap Plan", MadeStreams.File("Workbook", Old((0xE5, [2, 0, 0, 0, 2, 0, 0, 0, 1, 0, 2, 0, 4, 0, 1, 0, 3, 0]))));
        yield return ("workbook-opendocument", MadeWorkbook.Packed([("mimetype", "application/vnd.oasis.opendocument.spreadsheet"u8.ToArray()), ("content.xml", "<a/>"u8.ToArray())]));
        yield return ("workbook-other-zip", MadeWorkbook.Packed([("readme.txt", "x"u8.ToArray())]));
        yield return ("workbook-other-zip", MadeWorkbook.Packed([]));
        yield return ("workbook-parts", MadeWorkbook.Packed(Enumerable.Range(0, 3000).Select(i => ($"xl/p{i.ToString(CultureInfo.InvariantCulture)}.xml", Array.Empty<byte>()))));
        yield return ("workbook-binary", Typed("application/vnd.ms-excel.sheet.binary.macroEnabled.main"));
        yield return ("workbook-other-document", Typed("application/vnd.openxmlformats-officedocument.wordprocessingml.document.main+xml"));
        yield return ("workbook-other-document", Typed("text/plain"));
        yield return ("workbook-no-type", Plain.Part("[Content_Types].xml", "<Types/>").Bytes());
        yield return ("workbook-part", Plain.Part("[Content_Types].xml", "not xml").Bytes());
        yield return ("workbook-no-part", Plain.Part("_rels/.rels", "<Relationships/>").Bytes());
        yield return ("workbook-no-part", Plain.Part("_rels/.rels", "<Relationships><Relationship Id=\"a\" Type=\"x/officeDocument\" Target=\"http://example.org/book.xml\" TargetMode=\"External\"/></Relationships>").Bytes());
        yield return ("workbook-no-sheets", new MadeWorkbook().Bytes());
        yield return ("workbook-no-part Plan", Without(Plain, "xl/worksheets/sheet1.xml"));
        yield return ("workbook-no-part Plan", Without(Plain, "xl/_rels/workbook.xml.rels"));
        yield return ("workbook-no-part", Without(Plain, "xl/workbook.xml"));
        // Bombs: a sheet of zeros of 1 GB as declared; blank XML; whole rows of cells; deep elements; one long text, attribute, name.
        yield return ("workbook-bomb", Bomb(400_000_000));
        yield return ("workbook-bomb", Plain.Sheet("Blank", $"<row>{Repeat("<c r=\"A1\"><v></v></c>", 2_600_000)}</row>").Bytes());
        yield return ("workbook-cells Plan", new MadeWorkbook().Sheet("Plan", Cells(201_000)).Bytes());
        yield return ("workbook-deep Plan", new MadeWorkbook().Sheet("Plan", $"<row r=\"20\"><c r=\"C20\"/>{Repeat("<a>", 200_000)}").Bytes());
        yield return ("workbook-stretch Plan", new MadeWorkbook().Sheet("Plan", $"<c r=\"A1\" t=\"inlineStr\"><is><t>{new string('x', 10_000_000)}</t></is></c>").Bytes());
        yield return ("workbook-text-long Plan B7", new MadeWorkbook().Sheet("Plan", $"<row r=\"7\"><c r=\"B7\" t=\"inlineStr\"><is><t>{new string('x', 40_000)}</t></is></c></row>").Bytes());
        yield return ("workbook-text-long Plan B7", new MadeWorkbook().Sheet("Plan", $"<row r=\"7\"><c r=\"B7\" t=\"inlineStr\"><is>{Repeat("<r><t>ten million</t></r>", 900_000)}</is></c></row>").Bytes());
        yield return ("workbook-text-long", Plain.Part("xl/sharedStrings.xml", $"<sst><si><t>{new string('x', 40_000)}</t></si></sst>").Bytes());
        yield return ("workbook-stretch Plan", new MadeWorkbook().Sheet("Plan", $"<c r=\"A1\" s=\"{new string('0', 1_000_000)}\"/>").Bytes());
        yield return ("workbook-stretch Plan", new MadeWorkbook().Sheet("Plan", $"<c{string.Concat(Enumerable.Range(0, 50_000).Select(i => $" a{i.ToString(CultureInfo.InvariantCulture)}=\"\""))}/>").Bytes());
        // Document types and entities, inside and outside.
        yield return ("workbook-part Plan", new MadeWorkbook().Part("xl/worksheets/sheet1.xml", "<!DOCTYPE a [<!ENTITY b \"c\">]><worksheet>&b;</worksheet>").Named("Plan").Bytes());
        yield return ("workbook-part Plan", new MadeWorkbook().Part("xl/worksheets/sheet1.xml", "<!DOCTYPE a SYSTEM \"file:///etc/passwd\"><worksheet/>").Named("Plan").Bytes());
        yield return ("workbook-part", Plain.Part("xl/sharedStrings.xml", "<!DOCTYPE a [<!ENTITY b SYSTEM \"file:///etc/passwd\">]><sst><si><t>&b;</t></si></sst>").Bytes());
        yield return ("workbook-part", Plain.Part("xl/styles.xml", "<!DOCTYPE a [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\">]><styleSheet>&b;</styleSheet>").Bytes());
        yield return ("workbook-part Plan", new MadeWorkbook().Sheet("Plan", "<c r=\"A1\"><v>&undefined;</v></c>").Bytes());
        yield return ("workbook-part Plan", new MadeWorkbook().Sheet("Plan", "<c r=\"A1\"><v>1</row>").Bytes());
        yield return ("workbook-part Plan", new MadeWorkbook().Sheet("Plan", "<c r=\"A1\" r=\"A2\"/>").Bytes());
        yield return ("workbook-part", Plain.Part("xl/workbook.xml", "<?xml version=\"1.0\" encoding=\"x-none\"?><workbook/>").Bytes());
        // Cells that cannot be.
        yield return ("workbook-off-sheet Plan", new MadeWorkbook().Sheet("Plan", "<row r=\"1048577\"/>").Bytes());
        yield return ("workbook-off-sheet Plan", new MadeWorkbook().Sheet("Plan", "<row r=\"0\"/>").Bytes());
        yield return ("workbook-off-sheet Plan", new MadeWorkbook().Sheet("Plan", "<row r=\"1\"><c r=\"XFE1\"/></row>").Bytes());
        yield return ("workbook-off-sheet Plan", new MadeWorkbook().Sheet("Plan", "<row r=\"1\"><c r=\"A99999999999\"/></row>").Bytes());
        yield return ("workbook-off-sheet Plan", new MadeWorkbook().Sheet("Plan", $"<row r=\"1\">{Repeat("<c/>", 16_385)}</row>").Bytes());
        yield return ("workbook-other-row Plan", new MadeWorkbook().Sheet("Plan", "<row r=\"2\"><c r=\"A1\"><v>1</v></c></row>").Bytes());
        yield return ("workbook-no-string Plan A1", new MadeWorkbook().Sheet("Plan", "<c r=\"A1\" t=\"s\"><v>5</v></c>").Bytes());
        yield return ("workbook-no-string Plan A1", new MadeWorkbook().Sheet("Plan", "<c r=\"A1\" t=\"s\"><v>-1</v></c>").Bytes());
        yield return ("workbook-no-number Plan C20", new MadeWorkbook().Sheet("Plan", "<row r=\"20\"><c r=\"C20\"><v>six</v></c></row>").Bytes());
        yield return ("workbook-no-number Plan A1", new MadeWorkbook().Sheet("Plan", "<c r=\"A1\"><v>1e999</v></c>").Bytes());
        yield return ("workbook-no-number Plan A1", new MadeWorkbook().Sheet("Plan", "<c r=\"A1\" t=\"d\"><v>31 April</v></c>").Bytes());
        // Merges.
        yield return ("workbook-overlap Plan", Merged("A1:C3", "C3:D4").Bytes());
        yield return ("workbook-overlap Plan", Merged("A1:C3", "A1:C3").Bytes());
        yield return ("workbook-overlap Plan", Merged("A1:XFD1048576", "B2:C3").Bytes());
        yield return ("workbook-merge Plan", Merged("C3:A1").Bytes());
        yield return ("workbook-merge Plan", Merged("A1:A1048577").Bytes());
        yield return ("workbook-merge Plan", Merged("").Bytes());
        yield return ("workbook-merge Plan", Merged("A1:B2:C3").Bytes());
        yield return ("workbook-merges Plan", Merged([.. Enumerable.Range(1, 3000).Select(row => $"A{row.ToString(CultureInfo.InvariantCulture)}:B{row.ToString(CultureInfo.InvariantCulture)}")]).Bytes());
        var many = new MadeWorkbook();
        for (var i = 0; i < 250; i++) many.Sheet($"S{i.ToString(CultureInfo.InvariantCulture)}", "");
        yield return ("workbook-sheets", many.Bytes());
    }

    [Fact]
    public void Hostile_workbooks_are_told_with_sheet_and_cell()
    {
        var count = 0;
        foreach (var (expected, bytes) in Hostile())
        {
            var (id, sheet, cell) = expected.Split(' ') switch { [var a] => (a, null, null), [var a, var b] => (a, b, null), [var a, var b, var c] => (a, b, (string?)c), _ => default };
            var problems = Read(bytes).Problems;
            Assert.True(problems.Count == 1, $"{problems.Count} problems instead of {expected}");
            var problem = problems[0];
            Assert.True(id == problem.Id, $"{problem.Id} instead of {expected}: {problem}");
            if (sheet is not null) Assert.Contains($"Sheet \"{sheet}\"", problem.What, StringComparison.Ordinal);
            if (cell is not null) Assert.Contains($"cell {cell}:", problem.What, StringComparison.Ordinal);
            if (cell is not null) Assert.Equal(cell, new CellAt(problem.Line!.Value, problem.Column!.Value).ToString());
            count++;
        }
        Assert.True(count > 70, $"{count} files");
    }

    /// <summary>Odd but harmless: read, and what cannot be is left out.</summary>
    [Fact]
    public void Odd_workbooks_are_read()
    {
        Assert.Equal("1", Assert.Single(Read(Without(Plain, "xl/styles.xml")).Sheets).Cells[0].Text);
        Assert.Equal("7", Read(new MadeWorkbook().Sheet("S", "<c s=\"999\"><v>7</v></c>").Bytes()).Sheets[0][1, 1]!.Text);
        Assert.Equal("2", Read(new MadeWorkbook().Sheet("S", "<c r=\"A1\"><v>1</v></c><c r=\"A1\"><v>2</v></c>").Bytes()).Sheets[0][1, 1]!.Text);
        Assert.Empty(Read(new MadeWorkbook().Sheet("S", "", before: "<cols><col min=\"1\" max=\"999999999\" hidden=\"1\"/></cols>").Bytes()).Sheets[0].Cells);
        Assert.Empty(Read(new MadeWorkbook().Sheet("S", "<c r=\"A1\"/><c r=\"B1\"><v></v></c><c r=\"C1\" t=\"inlineStr\"><is/></c>").Bytes()).Sheets[0].Cells);
        Assert.Equal(0, Read(new MadeWorkbook().Sheet("S", "").Bytes()).Sheets[0].LastColumn);
    }

    // One sheet "Plan" with these records.
    private static byte[] Old(params (int Kind, byte[] Bytes)[] records)
    {
        (int, byte[])[] Globals(int start) => [(0x809, [0, 6, 5, 0]), (0x85, [(byte)start, 0, 0, 0, 0, 0, 4, 0, .. "Plan"u8]), (0x0A, [])];
        return [.. MadeStreams.Records(Globals(MadeStreams.Records(Globals(0)).Length)), .. MadeStreams.Records([(0x809, [0, 6, 0x10, 0]), .. records, (0x0A, [])])];
    }

    private static byte[] Typed(string type) => Plain.Part("[Content_Types].xml", $"<Types><Override PartName=\"/xl/workbook.xml\" ContentType=\"{type}\"/></Types>").Bytes();

    private static byte[] Without(MadeWorkbook made, string part)
    {
        using var bytes = new MemoryStream();
        bytes.Write(made.Bytes());
        using (var archive = new ZipArchive(bytes, ZipArchiveMode.Update, leaveOpen: true)) archive.GetEntry(part)!.Delete();
        return bytes.ToArray();
    }

    // The sheet unpacks to far more than a workbook may; the packed bytes are few.
    private static byte[] Bomb(int size)
    {
        using var bytes = new MemoryStream();
        bytes.Write(Plain.Bytes());
        using (var archive = new ZipArchive(bytes, ZipArchiveMode.Update, leaveOpen: true))
        {
            archive.GetEntry("xl/worksheets/sheet1.xml")!.Delete();
            using var sheet = archive.CreateEntry("xl/worksheets/sheet1.xml", CompressionLevel.Fastest).Open();
            for (var left = size; left > 0; left -= 1_000_000) sheet.Write(new byte[1_000_000]);
        }
        return bytes.ToArray();
    }
}
