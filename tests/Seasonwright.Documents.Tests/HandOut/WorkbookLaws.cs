using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Workbooks;
using Seasonwright.Documents.Tests.Year;

namespace Seasonwright.Documents.Tests.HandOut;

/// <summary>What holds of the workbook of every season. Source of the form: ISO/IEC 29500, by the Open XML SDK's validator.</summary>
public partial class WorkbookLaws
{
    /// <summary>Functions that spreadsheets have had since the nineties, but for IFERROR and COUNTIFS, which came with the file format.</summary>
    private static readonly HashSet<string> Known = new(StringComparer.Ordinal)
    {
        "AND", "CHOOSE", "COUNTIFS", "DATE", "IF", "IFERROR", "INDEX", "INT", "MATCH", "MID", "MIN", "MOD", "MONTH", "N", "OR", "REPT", "ROUND", "ROW", "SMALL", "SUMPRODUCT", "WEEKDAY", "YEAR",
    };

    private static readonly Edition Draft = new(null, new DateOnly(2027, 10, 18));

    private static readonly OpenXmlValidator Validator = new(FileFormatVersions.Office2007);

    private static byte[] Written(Season season, Setup setup) => YearWorkbook.Write(season, setup, Draft, new WorkbookChoices(KeyMatches: true));

    [Fact]
    public void Workbooks_of_any_season_keep_the_form() => RandomSeasons.Any.Sample(season => KeepsTheForm(season, Setup.Empty(new("team"))), iter: 20, print: season => season.Id.Text);

    [Fact]
    public void Workbooks_of_hostile_seasons_keep_the_form()
    {
        foreach (var (season, setup) in HostileSeasons.All) KeepsTheForm(season, setup);
    }

    private static void KeepsTheForm(Season season, Setup setup)
    {
        var file = Written(season, setup);
        Assert.Equal(file, Written(season, setup));
        using (var document = SpreadsheetDocument.Open(new MemoryStream(file), isEditable: false))
            Assert.Equal("", string.Join(Environment.NewLine, Validator.Validate(document).Take(3).Select(error => $"{season.Id}: {error.Description} {error.Part?.Uri} {error.Path?.XPath}")));

        var book = new BookParts(file);
        Assert.All(book.Parts.Keys, part => Assert.Matches(@"\A(\[Content_Types\]|_rels/|docProps/core|xl/(_rels/)?(workbook|styles|sharedStrings|worksheets/sheet\d))", part));
        Assert.Equal(season.Weeks.Length, book.Sheets["Year"].Descendants(BookParts.Main + "row").Count() - 4);
        // The sheet of a week without a name and its notes stay; what lies outside is named as often as it is there.
        Assert.Equal(season.Outside.Count, book.Sheets.TryGetValue("Outside", out var outside) ? outside.Descendants(BookParts.Main + "row").Count() - 4 : 0);
        Assert.Equal(season.AllMatches.Length, book.Sheets["Matches"].Descendants(BookParts.Main + "row").Count() - 4);
        foreach (var cell in book.Cells)
        {
            var value = book.Value(cell);
            if (cell.Element(BookParts.Main + "f")?.Value is { } formula) IsTame(formula);
            // Editing such a cell must not make a formula of it.
            else if (cell.Attribute("t")?.Value == "s" && value is ['=' or '+' or '-' or '@' or '\t' or '\'', ..])
                Assert.Equal("1", book.Look(cell).Attribute("quotePrefix")?.Value);
        }
    }

    /// <summary>Only known functions, names and cells; what stands in quotes is ours, whatever a season holds.</summary>
    private static void IsTame(string formula)
    {
        // The longest formula every spreadsheet takes.
        Assert.InRange(formula.Length, 1, 8_192);
        Assert.All(Quoted().Matches(formula).Select(quoted => quoted.Value), quoted => Assert.Matches(
            """\A"(|; |, | |\?| \(|\)|█|; and |\d? more|>=|<=|outside|confirmed|postponed|cancelled|Mon|Tue|Wed|Thu|Fri|Sat|Sun)"\z""", quoted));
        var bare = Quoted().Replace(formula, "");
        Assert.All(Called().Matches(bare), called => Assert.Contains(called.Value, Known));
        Assert.Matches(@"\A[A-Za-z0-9_$:!(),;<>=&*/+.\- ]*\z", bare);
    }

    /// <summary>Reference reader: ExcelDataReader finds days as days and numbers as numbers, without reckoning anything.</summary>
    [Fact]
    public void A_reader_that_reckons_nothing_sees_the_season()
    {
        System.Text.Encoding.RegisterProvider(System.Text.CodePagesEncodingProvider.Instance);
        RandomSeasons.Any.Sample(season =>
        {
            using var reader = ExcelDataReader.ExcelReaderFactory.CreateOpenXmlReader(new MemoryStream(Written(season, Setup.Empty(new("team")))));
            Assert.Equal("Year", reader.Name);
            for (var row = 0; row < 4; row++) reader.Read();
            foreach (var week in season.Weeks)
            {
                Assert.True(reader.Read());
                Assert.Equal(week.Number, Convert.ToInt32(reader.GetValue(0), CultureInfo.InvariantCulture));
                Assert.Equal((week.Days.First, week.Days.Last), (DateOnly.FromDateTime(reader.GetDateTime(1)), DateOnly.FromDateTime(reader.GetDateTime(2))));
                Assert.Equal(week.IsoWeek.Number, Convert.ToInt32(reader.GetValue(4), CultureInfo.InvariantCulture));
            }
        }, iter: 10, print: _ => "");
    }

    [GeneratedRegex("\"[^\"]*\"", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Quoted();

    [GeneratedRegex(@"[A-Za-z.]+(?=\()", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Called();
}
