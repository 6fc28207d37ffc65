using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Workbooks;
using Seasonwright.Documents.Tests.Year;

namespace Seasonwright.Documents.Tests.HandOut;

public class WorkbookTests
{
    private static readonly Edition Draft = new(null, new DateOnly(2027, 10, 18));

    private static Setup With(LocaleSettings locale, Load? hardWeek = null) => new(new("team"), FactSet.Empty.With(SetupFacets.Locale.Of(default), locale)
        .With(SetupFacets.ReferenceWeek.Of(default), hardWeek));

    private static BookParts Book(Season season, Setup? setup = null, WorkbookChoices? choices = null, Edition? edition = null) =>
        new(YearWorkbook.Write(season, setup ?? With(new LocaleSettings()), edition ?? Draft, choices ?? new WorkbookChoices()));

    /// <summary>1 July 2027 is a Thursday, and day 46,569 of the spreadsheets' count (1 January 1900 is 1; ISO/IEC 29500-1, 18.17.4, from memory).</summary>
    [Fact]
    public void The_first_day_has_a_name_and_everything_else_follows_it()
    {
        var book = Book(new SeasonBook(3, new DateOnly(2027, 7, 1)).Season);
        Assert.Equal("Year!$B$3", book.Names["FirstDay"]);
        Assert.Equal("46569", book.Value("Year", "B3"));
        Assert.Equal("FirstDay", book.Cell("Year", "B5")!.Element(BookParts.Main + "f")!.Value);
        Assert.Equal("46569 46572 46573 46579", string.Join(' ', new[] { "B5", "C5", "B6", "C6" }.Select(place => book.Value("Year", place))));
        // Only the first day itself is a number that nobody reckons.
        Assert.All(Enumerable.Range(5, 3).SelectMany(row => "BCDE".Select(column => $"{column}{row}")), place => Assert.NotNull(book.Cell("Year", place)!.Element(BookParts.Main + "f")));
    }

    [Theory]
    [InlineData(DateOrder.DayMonthYear, "d mmm yyyy", "ddd d mmm yyyy")]
    [InlineData(DateOrder.MonthDayYear, "mmm d, yyyy", "ddd mmm d, yyyy")]
    [InlineData(DateOrder.YearMonthDay, "yyyy-mm-dd", "ddd yyyy-mm-dd")]
    public void Days_are_in_the_teams_order(DateOrder order, string first, string match)
    {
        var book = Book(new SeasonBook(3).Match(new(2027, 7, 10), "Turnes").Season, With(new LocaleSettings(order)));
        Assert.Equal(first, book.Format(book.Cell("Year", "B3")!));
        Assert.Equal(match, book.Format(book.Cell("Matches", "B5")!));
    }

    [Theory]
    [InlineData(Paper.A4, "9")]
    [InlineData(Paper.Letter, "1")]
    public void It_prints_landscape_one_page_wide_with_headings_on_each(Paper paper, string size)
    {
        var book = Book(new SeasonBook(53).Season, With(new LocaleSettings(Paper: paper)));
        foreach (var (name, sheet) in book.Sheets)
        {
            var page = sheet.Element(BookParts.Main + "pageSetup")!;
            Assert.Equal($"{size} landscape 1 0", $"{page.Attribute("paperSize")!.Value} {page.Attribute("orientation")!.Value} {page.Attribute("fitToWidth")!.Value} {page.Attribute("fitToHeight")!.Value}");
            Assert.Equal("1", sheet.Descendants(BookParts.Main + "pageSetUpPr").Single().Attribute("fitToPage")!.Value);
            var pane = sheet.Descendants(BookParts.Main + "pane").Single();
            Assert.Equal("4 frozen", $"{pane.Attribute("ySplit")!.Value} {pane.Attribute("state")!.Value}");
            Assert.Contains($"{name}!$4:$4", book.Parts["xl/workbook.xml"].Descendants(BookParts.Main + "definedName").Where(defined => defined.Attribute("name")!.Value == "_xlnm.Print_Titles").Select(defined => defined.Value), StringComparer.Ordinal);
        }
    }

    [Fact]
    public void Every_sheet_says_whose_it_is_and_of_which_state()
    {
        var book = Book(new SeasonBook(3).Season);
        Assert.All(book.Sheets, sheet =>
        {
            Assert.Equal($"Harbour Vale: {sheet.Key}", book.Value(sheet.Key, "A1"));
            Assert.Equal("Draft, Mon 18 Oct 2027", book.Value(sheet.Key, "A2"));
            Assert.Equal("&LHarbour Vale&RDraft, Mon 18 Oct 2027", sheet.Value.Descendants(BookParts.Main + "oddHeader").Single().Value);
        });
        Assert.Contains("draft", book.Value("About", "A3"), StringComparison.Ordinal);
        var published = Book(new SeasonBook(3).Season, edition: new Edition(new Publication(3, "P&L"), new(2027, 10, 18)));
        Assert.Equal("Version 3 (P&L), Mon 18 Oct 2027", published.Value("Year", "A2"));
        Assert.EndsWith("&RVersion 3 (P&&L), Mon 18 Oct 2027", published.Sheets["Year"].Descendants(BookParts.Main + "oddHeader").Single().Value, StringComparison.Ordinal);
    }

    [Fact]
    public void A_week_tells_its_matches_events_tests_and_plan()
    {
        var book = new SeasonBook(6).Phase(1, 6, PhaseKind.Competition, "Cup run").Block(2, 4, BlockKind.Build)
            .Match(new(2027, 7, 17), "Turnes").Match(new(2027, 7, 14), "Kalmar", Venue.Away, MatchStatus.Postponed).Event(new(2027, 7, 10), new(2027, 7, 20), "Camp");
        book.Write(new SetTestDay(new TestDay(new("t"), new(2027, 7, 13), "Jumps", For: "Backs")), new SetWeekLoad(book.Week(2), book.Week(2), new Load(2_400)), new SetWeekKind(book.Week(2), book.Week(2), WeekKind.Overload),
            new SetPractices(book.Week(2), book.Week(2), new Practices(4)), new SetEmphasis(book.Week(2), book.Week(2), Quality.Defaults[2].Id, Emphasis.Focus));
        var told = Book(book.Season, With(new LocaleSettings(), new Load(3_000)));
        Assert.Equal(
            "2|46580|46586|46569|28|Cup run|Build|1|overload|0.8|████████|2400|4||1|Wed Kalmar (away), postponed; Sat Turnes (home)|Camp|Jumps (Backs)|||3||||||",
            string.Join('|', Enumerable.Range(0, 27).Select(column => told.Value("Year", $"{Letters(column)}6"))));
        // Without the team's own figures AU say nothing.
        Assert.DoesNotContain("Load, AU", Book(book.Season).Texts, StringComparer.Ordinal);

        static string Letters(int column) => column < 26 ? ((char)('A' + column)).ToString() : "A" + (char)('A' + column - 26);
    }

    [Fact]
    public void Key_matches_cannot_be_told_from_others_unless_switched_on()
    {
        Season With(Importance importance) => new SeasonBook(6).Match(new(2027, 7, 17), "Turnes", importance: importance).Season;
        byte[] Write(Season season, bool isShown) => YearWorkbook.Write(season, Setup.Empty(new("team")), Draft, new WorkbookChoices(KeyMatches: isShown));
        Assert.Equal(Write(With(Importance.Regular), false), Write(With(Importance.Key), false));
        Assert.Contains("key", new BookParts(Write(With(Importance.Key), true)).Texts, StringComparer.Ordinal);
        Assert.DoesNotContain(new BookParts(Write(With(Importance.Key), false)).Texts, text => text.Contains("key", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Notes_are_left_out_where_they_are_not_wanted()
    {
        var book = new SeasonBook(6);
        book.Write(new SetWeekNote(book.Week(2), "secret one"), new SetNote(new Note(new("n"), new(new(2027, 7, 17), new(2027, 7, 18)), "secret two")),
            new SetMatch(new Match(new("m"), new(2027, 7, 17), Note: "secret three")), new SetEvent(new Event(new("e"), EventKind.Camp, "Camp", new(new(2027, 7, 17), new(2027, 7, 18)), Note: "secret four")),
            new SetNote(new Note(new("o"), new(new(2029, 7, 17), new(2029, 7, 18)), "secret five")));
        Assert.Equal(5, Book(book.Season).Texts.Count(text => text.Contains("secret", StringComparison.Ordinal)));
        Assert.DoesNotContain(Book(book.Season, null, new WorkbookChoices(Notes: false)).Parts.Values, part => part.ToString().Contains("secret", StringComparison.Ordinal));
    }

    [Fact]
    public void What_lies_outside_the_season_is_listed()
    {
        var book = Book(new SeasonBook(3).Match(new(2029, 1, 1), "Turnes").Event(new(2026, 1, 1), new(2026, 1, 2), "Old camp").Season);
        Assert.Equal("outside", book.Value("Matches", "A5"));
        Assert.Equal("Match Event", $"{book.Value("Outside", "A5")} {book.Value("Outside", "A6")}");
        Assert.StartsWith("Monday 1 January, home to Turnes", book.Value("Outside", "D5"), StringComparison.Ordinal);
        Assert.DoesNotContain("Outside", Book(new SeasonBook(3).Season).Sheets.Keys, StringComparer.Ordinal);
    }

    /// <summary>The names of colours are the page's: what holds of their contrast there holds here.</summary>
    [Fact]
    public void Phases_have_the_colours_of_the_page()
    {
        var book = Book(new SeasonBook(3).Phase(1, 3, PhaseKind.Peak).Season);
        var look = book.Look(book.Cell("Year", "F5")!);
        var fill = book.Parts["xl/styles.xml"].Root!.Element(BookParts.Main + "fills")!.Elements().ElementAt((int)look.Attribute("fillId")!);
        var font = book.Parts["xl/styles.xml"].Root!.Element(BookParts.Main + "fonts")!.Elements().ElementAt((int)look.Attribute("fontId")!);
        Assert.Equal("FF8A2F4F FFFFFFFF", $"{fill.Descendants(BookParts.Main + "fgColor").Single().Attribute("rgb")!.Value} {font.Element(BookParts.Main + "color")!.Attribute("rgb")!.Value}");
    }
}
