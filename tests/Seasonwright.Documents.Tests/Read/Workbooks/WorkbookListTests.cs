using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Fixtures;

namespace Seasonwright.Documents.Tests.Read.Workbooks;

/// <summary>Lists in workbooks: which sheet is read, what its cells say, and that no damaged or hostile workbook costs more than a message.</summary>
public sealed class WorkbookListTests
{
    private const long MostAllocated = 700_000_000;

    private static string Cell(string at, string text) => $"<c r=\"{at}\" t=\"inlineStr\"><is><t>{text}</t></is></c>";

    private static string Row(int row, params string[] cells) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"<row r=\"{row}\">{string.Concat(cells.Select((text, column) => Cell($"{(char)('A' + column)}{row}", text)))}</row>");

    [Fact]
    public void Events_are_read_from_the_sheet_that_holds_the_days_and_the_others_are_named()
    {
        // 46307 is 12 October 2026 and 46510 is 3 May 2027 in the 1900 date system of ISO/IEC 29500.
        var book = new MadeWorkbook().With("", "0", "14")
            .Sheet("About", Row(1, "Harbour Vale", "board", "caterer") + Row(2, "a", "b", "c") + Row(3, "a", "b", "c") + Row(4, "a", "b", "c") + Row(5, "a", "b", "c"))
            .Sheet("Breaks", Row(1, "What", "From", "To") + "<row r=\"2\">" + Cell("A2", "Autumn break") + "<c r=\"B2\" s=\"1\"><v>46307</v></c><c r=\"C2\" s=\"1\"><v>46313</v></c></row><row r=\"4\">" + Cell("A4", "Exams") + "<c r=\"B4\" s=\"1\"><v>46510</v></c><c r=\"C4\" s=\"1\"><v>46521</v></c></row>")
            .Sheet("Old", Row(1, "What", "From", "To") + "<row r=\"2\">" + Cell("A2", "Camp") + "<c r=\"B2\" s=\"1\"><v>46000</v></c><c r=\"C2\" s=\"1\"><v>46002</v></c></row>", state: "hidden");
        var source = SourceText.OfBytes("year.xlsx", book.Bytes());
        var list = EventReader.Read(source, new EventReading());
        Assert.Empty(list.Problems);
        Assert.Equal(["2 Autumn break 2026-10-12..2026-10-18", "4 Exams 2027-05-03..2027-05-14"], list.Rows.Select(row => FormattableString.Invariant($"{row.Line} {row.Title} {row.From:yyyy-MM-dd}..{row.To:yyyy-MM-dd}")), StringComparer.Ordinal);
        Assert.Contains("Breaks", source.Encoding, StringComparison.Ordinal);
        Assert.Contains("About, Old", source.Encoding, StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_without_a_real_day_is_found_by_its_rows_and_a_workbook_of_nothing_is_told()
    {
        var list = FixtureReader.Read(SourceText.OfBytes("a.xlsx", new MadeWorkbook().Sheet("Empty", "").Sheet("List", Row(1, "Date", "Opponent", "H/A") + Row(2, "5.9.2026", "Kalnes, Damer", "H") + Row(3, "19.9.2026", "Turnes", "A")).Bytes()), new FixtureOptions());
        Assert.Equal(["Kalnes, Damer", "Turnes"], list.Rows.Select(row => row.Opponent), StringComparer.Ordinal);
        Assert.Equal("empty", Assert.Single(FixtureReader.Read(SourceText.OfBytes("b.xlsx", new MadeWorkbook().Sheet("Empty", "").Bytes()), new FixtureOptions()).Problems).Id);
    }

    [Theory]
    [InlineData("=1+1")]
    [InlineData("&quot;Kalnes&quot; II")]
    [InlineData("Kal&#9;nes")]
    [InlineData("Kal&#10;nes")]
    public void What_a_cell_holds_never_makes_two_of_it_or_runs(string text)
    {
        var list = FixtureReader.Read(SourceText.OfBytes("a.xlsx", new MadeWorkbook().Sheet("List", Row(1, text) + Row(2, "Date", "Opponent", "H/A") + Row(3, "2026-09-05", text, "H") + Row(4, "2026-09-12", "Turnes", "A")).Bytes()), new FixtureOptions());
        Assert.Empty(list.Problems);
        Assert.Equal([3, 4], list.Rows.Select(row => row.Line));
    }

    [Fact]
    public void Damaged_lists_are_told_or_read_and_never_thrown()
    {
        var count = 0;
        foreach (var bytes in new[] { File.ReadAllBytes(Path.Combine(FixtureCases.Folder, "samples", "fixtures-14-list.xlsx")) }.Concat(Directory.GetFiles(Path.Combine(WorkbookTests.Folder, "old"), "*.xls").Order(StringComparer.Ordinal).Take(2).Select(File.ReadAllBytes)))
        {
            for (var place = 0; place < 60; place++, count += 2)
            {
                var turned = (byte[])bytes.Clone();
                turned[(int)((long)bytes.Length * place / 60)] ^= (byte)(1 << place % 8);
                Check(turned);
                Check(bytes[..(int)((long)bytes.Length * place / 60)]);
            }
        }
        Assert.True(count >= 250, $"{count} files");
    }

    /// <summary>Ten million bytes in a cell, a row a million lines down, a merge over another, an entity of a file, and text that is no workbook.</summary>
    [Fact]
    public void Hostile_lists_are_refused_in_words()
    {
        Check(new MadeWorkbook().Sheet("List", Row(1, new string('x', 10_000_000))).Bytes(), refused: true);
        Check(new MadeWorkbook().Sheet("List", Row(1, "Date", "Opponent") + $"<row r=\"1048576\">{Cell("A1048576", "2026-09-05")}</row>").Bytes(), refused: true);
        Check(new MadeWorkbook().Sheet("List", Row(1, "Date", "Opponent"), "<mergeCells><mergeCell ref=\"A1:B3\"/><mergeCell ref=\"A2:C2\"/></mergeCells>").Bytes(), refused: true);
        Check(new MadeWorkbook().Named("List").Part("xl/worksheets/sheet1.xml", "<!DOCTYPE x [<!ENTITY a SYSTEM \"file:///etc/passwd\">]><worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData><row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>&a;</t></is></c></row></sheetData></worksheet>").Bytes(), refused: true);
        Check(new MadeWorkbook().Sheet("List", string.Concat(Enumerable.Range(1, 19_000).Select(row => $"<row r=\"{row}\">{Cell($"XFD{row}", "2026-09-05")}</row>"))).Bytes(), refused: true);
        Check([.. "PK"u8, .. "Date,Opponent\n2026-09-05,Kalnes\n"u8], refused: true);
    }

    private static void Check(byte[] bytes, bool refused = false)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        var source = SourceText.OfBytes("list.xlsx", bytes);
        var (fixtures, events) = (FixtureReader.Read(source, new FixtureOptions("Harbour Vale")), EventReader.Read(source, new EventReading()));
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, MostAllocated);
        Assert.All(fixtures.Problems.Concat(events.Problems), problem => Assert.True(problem.What.Length > 10 && problem.Mend.Length > 10));
        if (refused) Assert.True(source.Problems.Count > 0, "read as a list");
        if (fixtures.Problems.Count > 0) Assert.Empty(fixtures.Rows);
        if (events.Problems.Count > 0) Assert.Empty(events.Rows);
    }
}
