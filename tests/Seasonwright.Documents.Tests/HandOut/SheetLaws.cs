using System.Xml.Linq;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.HeadCoach;
using Seasonwright.Documents.HandOut.WeekSheets;
using Seasonwright.Documents.Tests.Year;

namespace Seasonwright.Documents.Tests.HandOut;

/// <summary>Whatever the season, the sheets hold all of it within their pages and show nothing that stays with the staff.</summary>
public sealed class SheetLaws
{
    private static readonly DateOnly Day = new(2027, 10, 18);

    [Fact]
    public void Any_season_makes_whole_sheets_and_the_same_season_the_same_bytes()
    {
        foreach (var (season, setup) in HostileSeasons.All)
        {
            var shared = new SharedSeason(season, setup, Edition.Draft(Day));
            var from = season.Days?.First ?? Day;
            var page = HandOuts.HeadCoachPage(shared, from);
            Assert.Equal(page.Bytes, HandOuts.HeadCoachPage(shared, from).Bytes);
            var html = XDocument.Parse(System.Text.Encoding.UTF8.GetString(page.Bytes));
            Assert.Equal(season.Weeks.Length, html.Descendants("table").Where(table => (string?)table.Attribute("class") == "weeks").Descendants("th").Count(th => (string?)th.Attribute("scope") == "row"));
            Assert.Empty(html.Descendants("script"));
            Assert.DoesNotContain(html.Descendants().Attributes(), attribute => attribute.Name.LocalName is "src" or "href" || attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));

            Assert.Equal(HandOuts.HeadCoachPaper(shared, from, PaperSize.Letter).Bytes, HandOuts.HeadCoachPaper(shared, from, PaperSize.Letter).Bytes);
            Within(HeadCoachPaper.Of(HeadCoachSheet.Of(shared, from), PaperSize.A4));
            foreach (var week in season.Weeks.Take(3)) Within(WeekSheet.Of(shared, week, PaperSize.A4));
        }
    }

    [Fact]
    public void The_head_coach_is_not_told_what_stays_with_the_staff()
    {
        var book = new SeasonBook(20);
        book.Write(
            new SetMatch(new Match(new("m"), new(2027, 8, 7), Opponent: "Turnes", Venue: Venue.Home, Importance: Importance.Key, Note: "secret one")),
            new SetWeekLoad(book.Week(1), book.Week(3), new Load(2_000)), new SetWeekNote(book.Week(2), "secret two"),
            new SetNote(new Note(new("n"), new(new(2027, 7, 17), new(2027, 7, 18)), "secret three")), new SetPracticeWish(book.Week(2), "Keep Thursday short"));
        var shared = new SharedSeason(book.Season, Setup.Empty(new("team")), Edition.Draft(Day));
        var html = System.Text.Encoding.UTF8.GetString(HandOuts.HeadCoachPage(shared, book.Season.Days!.Value.First).Bytes);
        var words = XDocument.Parse(html).Root!.Element("body")!.Value;
        Assert.Contains("Keep Thursday short", words, StringComparison.Ordinal);
        Assert.Contains("Home v Turnes", words, StringComparison.Ordinal);
        foreach (var word in new[] { "secret", "2000", "2,000", "key match", "emphasis", "preparedness" })
            Assert.DoesNotContain(word, words, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("AU", words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(WeekKind.Congested, 50, WeekFeel.MatchOnly)]
    [InlineData(WeekKind.Overload, 70, WeekFeel.Hard)]
    [InlineData(WeekKind.Building, 89, WeekFeel.Normal)]
    [InlineData(WeekKind.Building, 90, WeekFeel.Hard)]
    [InlineData(WeekKind.Competition, null, WeekFeel.Normal)]
    [InlineData(WeekKind.Unloading, 95, WeekFeel.Easy)]
    [InlineData(null, 60, WeekFeel.Easy)]
    [InlineData(null, 61, WeekFeel.Normal)]
    [InlineData(null, 90, WeekFeel.Hard)]
    [InlineData(null, null, null)]
    public void A_week_feels_as_its_kind_and_load_say(WeekKind? kind, int? percent, WeekFeel? feel)
    {
        var (book, setup) = (new SeasonBook(20), Setup.Empty(new("team")));
        book.Write(new SetWeekKind(book.Week(4), book.Week(4), kind));
        if (percent is { } share) book.Write(new SetWeekLoad(book.Week(4), book.Week(4), Load.FromPercent(new Percent(share), setup.ReferenceWeek)));
        Assert.Equal(feel, book.Season.FeelOf(setup, book.Season.Weeks[3]));
    }

    private static void Within(IEnumerable<SheetDrawing> sheets)
    {
        foreach (var sheet in sheets)
        {
            var (width, height) = ((sheet.Width - 2 * sheet.Margin) / sheet.PointsPerPx, (sheet.Height - 2 * sheet.Margin) / sheet.PointsPerPx);
            foreach (var text in sheet.Tracks.SelectMany(track => track.Marks).OfType<TextRun>())
            {
                var left = text.At.X - text.Anchor switch { TextAnchor.Start => 0, TextAnchor.Middle => text.Width / 2, _ => text.Width };
                Assert.InRange(left, -0.5, width);
                Assert.InRange(left + text.Width, 0, width + 0.5);
                Assert.InRange(text.At.Y, 0, height + 0.5);
            }
        }
    }
}
