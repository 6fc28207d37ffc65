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
    [InlineData(WeekKind.Overload, 70, WeekFeel.Normal)]
    [InlineData(WeekKind.Overload, null, WeekFeel.Hard)]
    [InlineData(WeekKind.Building, 89, WeekFeel.Normal)]
    [InlineData(WeekKind.Building, 90, WeekFeel.Hard)]
    [InlineData(WeekKind.Competition, null, WeekFeel.Normal)]
    [InlineData(WeekKind.Unloading, null, WeekFeel.Easy)]
    [InlineData(WeekKind.Unloading, 95, WeekFeel.Hard)]
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

    [Fact]
    public void Two_match_days_are_a_week_of_matches_whatever_its_load()
    {
        var book = new SeasonBook(20);
        var days = book.Season.Weeks[3].Days;
        book.Write(new SetMatch(new Match(new("a"), days.First, Opponent: "Turnes")), new SetWeekLoad(book.Week(4), book.Week(4), new Load(500)));
        Assert.Equal(WeekFeel.Easy, book.Season.FeelOf(Setup.Empty(new("team")), book.Season.Weeks[3]));
        book.Write(new SetMatch(new Match(new("b"), days.Last, Opponent: "Kalnes")));
        Assert.Equal(WeekFeel.MatchOnly, book.Season.FeelOf(Setup.Empty(new("team")), book.Season.Weeks[3]));
    }

    [Fact]
    public void What_lasts_stands_in_every_week_it_touches_and_journeys_say_when_they_leave()
    {
        var book = new SeasonBook(20);
        var weeks = book.Season.Weeks;
        book.Write(
            new SetEvent(new Event(new("hall"), EventKind.RoomClosed, "Hall closed", new(weeks[2].Days.First.AddDays(2), weeks[4].Days.First))),
            new SetEvent(new Event(new("trip"), EventKind.Travel, "To Skeldby", new(weeks[6].Days.First, weeks[6].Days.First.AddDays(1)),
                Legs: [new Leg(weeks[6].Days.First, "Ostham", "Skeldby", new(13, 0), new(16, 20)), new Leg(weeks[6].Days.First.AddDays(1), "Skeldby", "Ostham", new(20, 0), new(23, 59))])));
        var shared = new SharedSeason(book.Season, Setup.Empty(new("team")), Edition.Draft(Day));
        var told = HeadCoachSheet.Of(shared, Day).Weeks.Select(week => string.Join('|', week.Away)).ToList();
        Assert.Equal([false, false, true, true, true, false], told.Take(6).Select(line => line.Contains("Hall closed", StringComparison.Ordinal)));
        Assert.StartsWith("until ", told[3], StringComparison.Ordinal);
        Assert.Matches("leaves .* 13:00, back .* 23:59", told[6]);
        var sheet = string.Join('|', WeekSheet.Of(shared, weeks[6], PaperSize.A4).SelectMany(page => page.Tracks).SelectMany(track => track.Marks).OfType<TextRun>().Select(text => text.Text));
        Assert.Contains("13:00 Ostham", sheet, StringComparison.Ordinal);
        Assert.Contains("there 16:20", sheet, StringComparison.Ordinal);
    }

    /// <summary>Two things on every day of a week whose heading leaves the days any height: all of both are there.</summary>
    [Fact]
    public void A_week_sheet_shows_everything_there_is_room_for()
    {
        for (var length = 0; length < 60; length++)
        {
            var book = new SeasonBook(20);
            var week = book.Season.Weeks[5];
            book.Write(new SetEvent(new Event(new("a"), EventKind.Holiday, "Mid-season break", week.Days)), new SetEvent(new Event(new("b"), EventKind.RoomClosed, "Hall closed", week.Days)),
                new SetPracticeWish(week.Id, string.Concat(Enumerable.Repeat("legs ", 1 + 3 * length))));
            foreach (var paper in new[] { PaperSize.A4, PaperSize.Letter })
            {
                var texts = WeekSheet.Of(new SharedSeason(book.Season, Setup.Empty(new("team")), Edition.Draft(Day)), week, paper).SelectMany(page => page.Tracks).SelectMany(track => track.Marks).OfType<TextRun>().Select(text => text.Text).ToList();
                Assert.Equal((7, 7), (texts.Count(text => text.StartsWith("Mid-season break", StringComparison.Ordinal)), texts.Count(text => text.StartsWith("Hall closed", StringComparison.Ordinal))));
            }
        }
    }

    /// <summary>Whoever has the version before sees at once what is otherwise; sessions of a week that had none are not all called changed.</summary>
    [Fact]
    public void A_week_sheet_marks_the_sessions_that_were_published_otherwise_before()
    {
        var book = new SeasonBook(20);
        var week = book.Season.Weeks[5];
        Session On(string id, int day, TimeOnly start) => new(new(id), week.Days.First.AddDays(day), DaySlot.Evening, SessionKind.Practice, new Minutes(85), new Rpe(5m), Name: id, Start: start);
        var bare = book.Season;
        var before = book.Write(new SetSession(On("first", 0, new(18, 30))), new SetSession(On("second", 2, new(18, 30)))).Season;
        var now = book.Write(new SetSession(On("second", 3, new(19, 0)) with { IsCancelled = true })).Season;
        Assert.Equal(["18:30 first, 85 min, RPE 5", "19:00 second, 85 min, RPE 5 · CANCELLED · changed 12:04"], Lines(before));
        Assert.DoesNotContain(Lines(bare), line => line.Contains("changed", StringComparison.Ordinal));

        List<string> Lines(Season other) => [.. WeekSheet.Of(new SharedSeason(now, Setup.Empty(new("team")), Edition.Draft(Day)) { Since = (other, new(12, 4)) }, week, PaperSize.A4)
            .SelectMany(page => page.Tracks).SelectMany(track => track.Marks).OfType<TextRun>().Select(text => text.Text).Where(text => text.Contains("85 min", StringComparison.Ordinal))];
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
