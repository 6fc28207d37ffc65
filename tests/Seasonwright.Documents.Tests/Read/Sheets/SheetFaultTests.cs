using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Sheets;
using Seasonwright.Documents.Read.Workbooks;
using Seasonwright.Documents.Tests.Read.Workbooks;

namespace Seasonwright.Documents.Tests.Read.Sheets;

/// <summary>Whatever a workbook holds, it is read, asked about or refused in words; nothing is thrown.</summary>
public class SheetFaultTests
{
    private static readonly CellValue[] Odd =
    [
        new CellValue.Empty(), new CellValue.Error("#REF!"), new CellValue.Number(double.NaN), new CellValue.Number(-1), new CellValue.Number(1e300), new CellValue.Truth(true), new CellValue.Time(new(19, 30)), new CellValue.Span(TimeSpan.FromHours(40)),
        new CellValue.Day(DateOnly.MinValue, null), new CellValue.Day(DateOnly.MaxValue, null), new CellValue.Day(new(2026, 9, 5), new(18, 0)),
        .. new[] { "KW 99", "KW 53", "31.2.26", "if (", "((((", "@", "H ", "!!", "x", "?", "Cup", "Cup?", "F @", "=1+1", "\ud800", "2026/27", "9999/00", "H = ", "a = b", "moved to", "– moved to 40.40.", "Sat + Sun", "0:00", "torn ACL", new string('(', 3000), new string('x', 32000) }.Select(text => new CellValue.Words(text)),
    ];

    [Theory]
    [MemberData(nameof(SheetSampleTests.Samples), MemberType = typeof(SheetSampleTests))]
    public void A_spoilt_workbook_is_read_or_refused_in_words(string name)
    {
        var book = Workbook.Read(name, File.ReadAllBytes(SheetSampleTests.PathOf($"samples/{name}.xlsx")));
        var (random, read) = (new Random(name.Length), 0);
        for (var round = 0; round < 50; round++)
        {
            var spoilt = book with { Sheets = book.Sheets.Select(sheet => Spoil(sheet, random)).ToValueList() };
            var reading = SheetReader.Read(spoilt, SheetMap.Empty.With($"{book.Sheets[0].Name}!{random.Next(1, 20)}", (RowRole)random.Next(9)).With("Q-day", "sunday").With("Q-load", "hard=90"));
            Assert.True(reading.Grid is not null || reading.Problems.Count + reading.Questions.Count > 0);
            Assert.DoesNotContain("torn ACL", string.Concat(reading.Rows.SelectMany(row => row.Entries.Select(entry => entry.Text)).Concat(reading.LeftOut.Select(left => left.Text)).Concat(reading.Questions.Select(question => question.Text))), StringComparison.Ordinal);
            if (reading.Grid is not { } grid) continue;
            read++;
            Assert.NotNull(new SheetImport(reading, Enumerable.Range(1, grid.Count).Select(number => new WeekId($"w{number}")).ToValueList(), new(3000), (kind, key) => kind).Edits());
        }
        Assert.True(read > 10, $"Only {read} of 50 could be read: they are spoilt too much to tell anything.");
    }

    [Theory]
    [InlineData("<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>Load</t></is></c></row>", "sheet-no-dates")]
    [InlineData("<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>Week</t></is></c><c r=\"B1\"><v>1</v></c><c r=\"C1\"><v>2</v></c><c r=\"D1\"><v>3</v></c><c r=\"E1\"><v>4</v></c></row>", "Q-first-day")]
    public void Weeks_without_dates_are_asked_for_or_refused(string rows, string wanted)
    {
        var read = SheetReader.Read(Workbook.Read("plan.xlsx", new MadeWorkbook().Sheet("Plan", rows).Bytes()), SheetMap.Empty);
        Assert.Equal(wanted, read.Problems.Select(problem => problem.Id).Concat(read.Questions.Select(question => question.Kind)).FirstOrDefault());
        Assert.Null(read.Grid);
    }

    /// <summary>A word in the last column and weeks a million rows down: a few kB that once asked for every place between them.</summary>
    [Fact]
    public void Far_corners_cost_nothing()
    {
        static string Cell(string at, string text) => $"<c r=\"{at}\" t=\"inlineStr\"><is><t>{text}</t></is></c>";
        var rows = Enumerable.Range(0, 60).Select(n => (Row: 1_000_000 + n, Day: new DateOnly(2026, 8, 3).AddDays(7 * n)));
        var sheet = $"<row r=\"1\">{Cell("XFD1", "Load")}</row>{string.Concat(rows.Select(row => $"<row r=\"{row.Row}\">{Cell($"A{row.Row}", $"{row.Day:yyyy-MM-dd}")}{Cell($"XFD{row.Row}", "60")}</row>"))}";
        var read = SheetReader.Read(Workbook.Read("plan.xlsx", new MadeWorkbook().Sheet("Plan", sheet).Bytes()), SheetMap.Empty);
        Assert.Equal((60, "Load"), (read.Grid!.Value.Count, Assert.Single(read.Rows).Label));
    }

    [Fact]
    public void A_list_of_matches_alone_is_no_year_and_is_told_where_it_belongs()
    {
        var rows = string.Concat(Enumerable.Range(0, 8).Select(i => $"<row r=\"{i + 2}\"><c r=\"A{i + 2}\" s=\"1\"><v>{46265 + 7 * i}</v></c><c r=\"B{i + 2}\" t=\"inlineStr\"><is><t>Kalnes {(char)('A' + i)}</t></is></c><c r=\"C{i + 2}\" t=\"inlineStr\"><is><t>{(i % 2 == 0 ? "H" : "A")}</t></is></c></row>"));
        const string Headings = "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>Date</t></is></c><c r=\"B1\" t=\"inlineStr\"><is><t>Opponent</t></is></c><c r=\"C1\" t=\"inlineStr\"><is><t>H/A</t></is></c></row>";
        var read = SheetReader.Read(Workbook.Read("list.xlsx", new MadeWorkbook().With("", "0", "14").Sheet("Games", Headings + rows).Bytes()), SheetMap.Empty);
        Assert.Equal("sheet-only-list", Assert.Single(read.Problems).Id);
    }

    /// <summary>2958465 is the last day a spreadsheet knows, 31 December 9999 (ISO/IEC 29500-1, from memory).</summary>
    [Theory]
    [InlineData("<c r=\"B1\" s=\"1\"><v>2958465</v></c><c r=\"D1\" s=\"1\"><v>2958465</v></c>")]
    [InlineData("<c r=\"B1\" t=\"inlineStr\"><is><t>December 9999</t></is></c><c r=\"D1\" t=\"inlineStr\"><is><t>January</t></is></c>")]
    public void Months_at_the_end_of_time_over_numbers_of_days_are_refused_in_words(string months)
    {
        const string Days = "<row r=\"2\"><c r=\"B2\"><v>6</v></c><c r=\"C2\"><v>13</v></c><c r=\"D2\"><v>20</v></c><c r=\"E2\"><v>27</v></c></row>";
        var read = SheetReader.Read(Workbook.Read("plan.xlsx", new MadeWorkbook().With("", "0", "14").Sheet("Plan", $"<row r=\"1\">{months}</row>{Days}").Bytes()), SheetMap.Empty);
        Assert.Null(read.Grid);
        Assert.NotEqual(0, read.Problems.Count + read.Questions.Count);
    }

    [Fact]
    public void Counted_weeks_take_their_days_from_the_answer()
    {
        const string Rows = "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>Week</t></is></c><c r=\"B1\"><v>1</v></c><c r=\"C1\"><v>2</v></c><c r=\"D1\"><v>3</v></c><c r=\"E1\"><v>4</v></c></row>"
            + "<row r=\"2\"><c r=\"A2\" t=\"inlineStr\"><is><t>Sauna</t></is></c><c r=\"C2\" t=\"inlineStr\"><is><t>yes</t></is></c></row>";
        var read = SheetReader.Read(Workbook.Read("plan.xlsx", new MadeWorkbook().Sheet("Plan", Rows).Bytes()), SheetMap.Empty.With("Q-first-day", "2026-08-31"));
        Assert.Equal((new DateOnly(2026, 8, 31), 4), (read.Grid!.Value.FirstDay, read.Grid.Value.Count));
        Assert.Equal(("Sauna", RowRole.Own, new DateOnly(2026, 9, 7)), (read.Rows[0].Label, read.Rows[0].Role, Assert.Single(read.Rows[0].Entries).Days.First));
    }

    private static Sheet Spoil(Sheet sheet, Random random)
    {
        var cells = sheet.Cells.Where(_ => random.Next(40) != 0).Select(cell =>
        {
            if (random.Next(30) != 0) return cell;
            var value = Odd[random.Next(Odd.Length)];
            return cell with { Value = value, Text = value switch { CellValue.Words words => words.Text, CellValue.Error error => error.Code, CellValue.Day day => $"{day.Date:yyyy-MM-dd}", CellValue.Number number => $"{number.Amount}", CellValue.Empty => "", _ => "19:30" } };
        });
        return new(sheet.Name, sheet.IsHidden, cells, random.Next(4) == 0 ? [] : sheet.Merges, sheet.HiddenRows, sheet.HiddenColumns, sheet.Titles);
    }
}
