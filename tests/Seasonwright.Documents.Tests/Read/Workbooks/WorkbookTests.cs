using System.Globalization;
using System.Text;
using ExcelDataReader;
using Seasonwright.Documents.Read.Workbooks;

namespace Seasonwright.Documents.Tests.Read.Workbooks;

/// <summary>Cells as their file has them.</summary>
public class WorkbookTests
{
    public static string Folder { get; } = Path.Combine(FixtureCases.Folder, "..", "workbooks");

    public static TheoryData<string> Samples => new(Directory.GetFiles(Path.Combine(Folder, "samples"), "*.xlsx").Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal));

    private static Sheet One(MadeWorkbook made)
    {
        var book = Workbook.Read("made.xlsx", made.Bytes());
        Assert.Empty(book.Problems);
        return book.Sheets[0];
    }

    private static Workbook Sample(string name) => Workbook.Read(name, File.ReadAllBytes(Path.Combine(Folder, "samples", name)));

    /// <summary>Outside truth: ExcelDataReader reads the same files with code of its own.</summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public void Values_equal_those_of_a_second_reader(string name)
    {
        Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);
        using var other = ExcelReaderFactory.CreateReader(File.OpenRead(Path.Combine(Folder, "samples", name)));
        var cells = 0;
        foreach (var sheet in Sample(name).Sheets)
        {
            Assert.Equal(other.Name, sheet.Name);
            Assert.Equal(other.VisibleState != "visible", sheet.IsHidden);
            for (var row = 1; other.Read(); row++)
            {
                for (var column = 0; column < other.FieldCount; column++)
                {
                    var (theirs, ours) = (other.GetValue(column), sheet[row, column + 1]);
                    if (ours?.Value is CellValue.Error) continue; // It tells no errors.
                    Assert.Equal(theirs is "" ? null : theirs, ours?.Value switch
                    {
                        CellValue.Words words => words.Text,
                        CellValue.Number number => number.Amount,
                        CellValue.Day day => day.Date.ToDateTime(day.At ?? TimeOnly.MinValue),
                        CellValue.Time time => new DateTime(1899, 12, 31) + time.OfDay.ToTimeSpan(),
                        _ => null,
                    });
                    cells += theirs is null ? 0 : 1;
                }
            }
            other.NextResult();
        }
        Assert.True(cells > 50, $"{cells} cells");
    }

    /// <summary>Outside truth: LibreOffice saved each workbook of the samples as XLS.</summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public void An_old_workbook_has_the_values_of_the_new_one(string name)
    {
        if (!name.StartsWith("workbook-", StringComparison.Ordinal)) return;
        var old = Workbook.Read(name, File.ReadAllBytes(Path.Combine(Folder, "old", Path.ChangeExtension(name, ".xls"))));
        Assert.Empty(old.Problems);
        foreach (var (before, now) in old.Sheets.Zip(Sample(name).Sheets))
        {
            Assert.Equal((now.Name, now.IsHidden), (before.Name, before.IsHidden));
            Assert.Equal(now.Merges, before.Merges);
            Assert.Equal(now.HiddenRows.Order(), before.HiddenRows.Order());
            Assert.Equal(now.HiddenColumns.Order(), before.HiddenColumns.Order());
            Assert.Equal(now.Cells.Select(Told), before.Cells.Select(Told));
        }
    }

    // The file of old workbooks has 56 colours, so LibreOffice took the nearest; the texts of formulas are not read there.
    private static (CellAt, CellValue, string, bool, bool, string) Told(SheetCell cell) => (cell.At, cell.Value, cell.Text, cell.IsFormula, cell.Fill is not null, cell.Comment);

    [Fact]
    public void Samples_keep_merges_fills_comments_and_what_is_hidden()
    {
        var plan = Sample("workbook-01-weeks-across.xlsx").Sheets[0];
        Assert.Contains(plan.Merges, area => area.ToString() == "L8:Z8");
        Assert.Equal("#f2c98a", plan[8, 13]!.Fill.ToString());
        Assert.Equal("key match", plan[13, 26]!.Comment);
        Assert.Equal([11], plan.HiddenRows);
        Assert.Equal([27], plan.HiddenColumns);
        Assert.True(plan[7, 4]!.IsFormula);
        Assert.False(plan[7, 3]!.IsFormula);
        Assert.Equal("#DIV/0!", Assert.IsType<CellValue.Error>(plan[20, 3]!.Value).Code);
        Assert.True(Sample("workbook-03-several-sheets.xlsx").Sheets.Single(sheet => sheet.Name == "alt 25-26").IsHidden);
    }

    /// <summary>Days as ISO/IEC 29500-1, 18.17.4.1, counts them.</summary>
    [Theory]
    [InlineData("1", "1900-01-01")]
    [InlineData("59", "1900-02-28")]
    [InlineData("60", "1900-02-29")]
    [InlineData("61", "1900-03-01")]
    [InlineData("46204", "2026-07-01")]
    [InlineData("46204.75", "2026-07-01 18:00")]
    [InlineData("46203.99999999", "2026-07-01 00:00")]
    [InlineData("0.8125", "19:30")]
    [InlineData("2958465", "9999-12-31")]
    [InlineData("2958466", "2958466")]
    [InlineData("-3", "-3")]
    public void A_day_is_counted_from_1900(string number, string text) =>
        Assert.Equal(text.Split(' ')[0], One(new MadeWorkbook().With("", "14").Sheet("S", $"<c r=\"A1\" s=\"0\"><v>{number}</v></c>"))[1, 1]!.Text.Split(' ')[0]);

    [Theory]
    [InlineData("0", "1904-01-01")]
    [InlineData("60", "1904-03-01")]
    [InlineData("44742", "2026-07-01")]
    public void Or_from_1904(string number, string text) =>
        Assert.Equal(text, One(new MadeWorkbook { Settings = "date1904=\"1\"" }.With("", "14").Sheet("S", $"<c r=\"A1\" s=\"0\"><v>{number}</v></c>"))[1, 1]!.Text);

    [Theory]
    [InlineData("yyyy-mm-dd", "46204", "2026-07-01", typeof(CellValue.Day))]
    [InlineData("d.m.", "46204", "2026-07-01", typeof(CellValue.Day))]
    [InlineData("[$-407]ddd, d. mmmm", "46204", "2026-07-01", typeof(CellValue.Day))]
    [InlineData("mmm yy", "46204", "2026-07-01", typeof(CellValue.Day))]
    [InlineData("dd/mm/yyyy hh:mm", "46204.5", "2026-07-01 12:00", typeof(CellValue.Day))]
    [InlineData("h:mm AM/PM", "0.8125", "19:30", typeof(CellValue.Time))]
    [InlineData("hh:mm", "0", "00:00", typeof(CellValue.Time))]
    [InlineData("[h]:mm", "1.5", "36:00", typeof(CellValue.Span))]
    [InlineData("[mm]:ss", "0.0625", "1:30", typeof(CellValue.Span))]
    [InlineData("\"KW \"0", "34", "KW 34", typeof(CellValue.Number))]
    [InlineData("0\" AU\"", "2150", "2150 AU", typeof(CellValue.Number))]
    [InlineData("0%", "0.6", "60%", typeof(CellValue.Number))]
    [InlineData("#,##0.00", "1234.5", "1234.50", typeof(CellValue.Number))]
    [InlineData("0.0;-0.0", "-2.25", "-2.3", typeof(CellValue.Number))]
    [InlineData("[Red]0", "5", "5", typeof(CellValue.Number))]
    [InlineData("0 \"min\" ;\"-\"", "90", "90 min", typeof(CellValue.Number))]
    [InlineData("\"day\" 0", "3", "day 3", typeof(CellValue.Number))]
    [InlineData("General", "0.1", "0.1", typeof(CellValue.Number))]
    [InlineData("0.00E+00", "1500", "1500", typeof(CellValue.Number))]
    public void A_number_means_what_its_format_says(string format, string number, string text, Type type)
    {
        var code = System.Security.SecurityElement.Escape(format);
        var cell = One(new MadeWorkbook().With($"<numFmts><numFmt numFmtId=\"164\" formatCode=\"{code}\"/></numFmts>", "164").Sheet("S", $"<c r=\"A1\" s=\"0\"><v>{number}</v></c>"))[1, 1]!;
        Assert.Equal((text, type), (cell.Text, cell.Value.GetType()));
    }

    [Fact]
    public void Texts_come_shared_inline_rich_escaped_and_by_formula()
    {
        var sheet = One(new MadeWorkbook()
            .Part("xl/sharedStrings.xml", "<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><si><t>plain</t></si><si><r><rPr><b/></rPr><t>Bro</t></r><r><t xml:space=\"preserve\">vik </t></r><rPh sb=\"0\" eb=\"1\"><t>no</t></rPh></si></sst>")
            .Sheet("S", "<c r=\"A1\" t=\"s\"><v>0</v></c><c r=\"B1\" t=\"s\"><v>1</v></c><c t=\"inlineStr\"><is><t>in</t><r><t>line</t></r></is></c><c r=\"E1\" t=\"str\"><f>A1&amp;\"x\"</f><v>two_x000D__x000A_lines &lt;&amp;</v></c>"
                + "<c r=\"F1\" t=\"b\"><v>1</v></c><c r=\"G1\" t=\"e\"><v>#REF!</v></c><c r=\"H1\"><f>NOW()</f></c><c r=\"I1\" t=\"d\"><v>2026-09-05</v></c><c r=\"J1\" t=\"n\"><f t=\"shared\" si=\"0\"/><v>7</v></c>"));
        Assert.Equal(["plain", "Brovik ", "inline", "two\nlines <&", "TRUE", "#REF!", "", "2026-09-05", "7"], sheet.Cells.Select(cell => cell.Text), StringComparer.Ordinal);
        Assert.Equal("C1", sheet.Cells[2].At.ToString());
        Assert.Equal([null, null, null, "A1&\"x\"", null, null, "NOW()", null, ""], sheet.Cells.Select(cell => cell.Formula), StringComparer.Ordinal);
        Assert.IsType<CellValue.Empty>(sheet[1, 8]!.Value);
    }

    /// <summary>The tint of ISO/IEC 29500-1, 18.8.19. Expected colours as spreadsheets show them for the theme's accent 1 (from memory; their own rounding differs by up to 2).</summary>
    [Theory]
    [InlineData("theme=\"4\"", "#4472c4")]
    [InlineData("theme=\"4\" tint=\"0.7999\"", "#d9e1f2")]
    [InlineData("theme=\"4\" tint=\"0.3999\"", "#8ea9db")]
    [InlineData("theme=\"4\" tint=\"-0.249977\"", "#305496")]
    [InlineData("theme=\"0\" tint=\"-0.149998\"", "#d9d9d9")]
    [InlineData("theme=\"1\"", "#000000")]
    [InlineData("indexed=\"13\"", "#ffff00")]
    [InlineData("indexed=\"5\"", "#ffff00")]
    [InlineData("rgb=\"FF7FB3D5\"", "#7fb3d5")]
    [InlineData("rgb=\"7FB3D5\"", "#7fb3d5")]
    [InlineData("indexed=\"64\"", null)]
    [InlineData("auto=\"1\"", null)]
    public void A_fill_is_a_colour_of_the_theme_the_palette_or_its_own(string colour, string? expected)
    {
        const string Theme = "<a:theme xmlns:a=\"http://schemas.openxmlformats.org/drawingml/2006/main\"><a:themeElements><a:clrScheme name=\"x\"><a:dk1><a:sysClr val=\"windowText\" lastClr=\"000000\"/></a:dk1><a:lt1><a:sysClr val=\"window\" lastClr=\"FFFFFF\"/></a:lt1><a:dk2><a:srgbClr val=\"44546A\"/></a:dk2><a:lt2><a:srgbClr val=\"E7E6E6\"/></a:lt2><a:accent1><a:srgbClr val=\"4472C4\"/></a:accent1></a:clrScheme></a:themeElements></a:theme>";
        var sheet = One(new MadeWorkbook().Part("xl/theme/theme1.xml", Theme)
            .With($"<fills><fill><patternFill patternType=\"none\"/></fill><fill><patternFill patternType=\"gray125\"/></fill><fill><patternFill patternType=\"solid\"><fgColor {colour}/><bgColor indexed=\"64\"/></patternFill></fill></fills>", "0\" fillId=\"2")
            .Sheet("S", "<c r=\"A1\" s=\"0\"><v>1</v></c>"));
        var fill = sheet[1, 1]!.Fill;
        Assert.Equal(expected is null, fill is null);
        if (expected is null) return;
        var wanted = Seasonwright.Documents.Draw.Rgb.Parse(expected);
        Assert.True(Math.Abs(fill!.Value.Red - wanted.Red) <= 2 && Math.Abs(fill.Value.Green - wanted.Green) <= 2 && Math.Abs(fill.Value.Blue - wanted.Blue) <= 2, $"{fill} instead of {wanted}");
    }

    [Fact]
    public void Print_titles_very_hidden_sheets_and_notes_are_told()
    {
        var book = Workbook.Read("made.xlsx", new MadeWorkbook { DefinedNames = "<definedNames><definedName name=\"_xlnm.Print_Titles\" localSheetId=\"0\">'My plan'!$A:$B,'My plan'!$5:$7</definedName></definedNames>" }
            .Sheet("My plan", "<c r=\"A1\"><v>1</v></c>").Sheet("Old", "<c r=\"A1\"><v>1</v></c>", state: "veryHidden")
            .Part("xl/worksheets/_rels/sheet1.xml.rels", "<Relationships><Relationship Id=\"c\" Type=\"x/comments\" Target=\"../comments1.xml\"/></Relationships>")
            .Part("xl/comments1.xml", "<comments><authors><author>M. Rook</author></authors><commentList><comment ref=\"A1\" authorId=\"0\"><text><r><t>M. Rook:</t></r><r><t>\nask the hall</t></r></text></comment><comment ref=\"C3\" authorId=\"0\"><text><t>[Threaded comment] Your version of the program does not show it. Comment:\n    bus at 14:00</t></text></comment></commentList></comments>")
            .Bytes());
        Assert.Empty(book.Problems);
        Assert.Equal(new PrintTitles(5, 7, 1, 2), book.Sheets[0].Titles);
        Assert.True(book.Sheets[1].IsHidden);
        Assert.Equal("ask the hall", book.Sheets[0][1, 1]!.Comment);
        Assert.Equal("bus at 14:00", book.Sheets[0][3, 3]!.Comment);
    }

    [Fact]
    public void A_sheet_of_the_strict_form_reads_the_same()
    {
        var made = new MadeWorkbook().Sheet("S", "<c r=\"A1\" t=\"inlineStr\"><is><t>strict</t></is></c>");
        made.Bytes();
        foreach (var part in made.Parts.Keys.ToList())
            made.Parts[part] = made.Parts[part].Replace("http://schemas.openxmlformats.org/spreadsheetml/2006/main", "http://purl.oclc.org/ooxml/spreadsheetml/main", StringComparison.Ordinal).Replace("http://schemas.openxmlformats.org/officeDocument/2006/relationships", "http://purl.oclc.org/ooxml/officeDocument/relationships", StringComparison.Ordinal);
        Assert.Equal("strict", One(made)[1, 1]!.Text);
    }

    [Theory]
    [InlineData("A1", 1, 1)]
    [InlineData("$AA$27", 27, 27)]
    [InlineData("XFD1048576", 1048576, 16384)]
    [InlineData("XFE1", 0, 0)]
    [InlineData("A1048577", 0, 0)]
    [InlineData("A0", 0, 0)]
    [InlineData("A-1", 0, 0)]
    [InlineData("AAAAAAAA1", 0, 0)]
    [InlineData("1A", 0, 0)]
    [InlineData("", 0, 0)]
    [InlineData(null, 0, 0)]
    public void A_cell_has_a_name(string? name, int row, int column)
    {
        Assert.Equal(row > 0, CellAt.TryParse(name, out var at));
        if (row > 0) Assert.Equal((row, column, name!.Replace("$", "", StringComparison.Ordinal)), (at.Row, at.Column, at.ToString()));
    }
}
