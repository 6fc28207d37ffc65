using Seasonwright.Documents.Tests.Draw;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.Year;

namespace Seasonwright.Documents.Tests.Year;

/// <summary>Seasons at the edge of what a season can be.</summary>
public class EdgeSeasonTests
{
    private static readonly Setup Setup = Setup.Empty(new("harbour-vale"));

    [Fact]
    public void A_season_without_weeks_has_no_tracks()
    {
        var drawing = Draw(Season.Empty(new("s")));
        Assert.Empty(drawing.Tracks);
        Assert.Empty(drawing.Columns);
        Assert.Equal(0, drawing.Height);
    }

    [Fact]
    public void A_season_without_anything_shows_its_calendar_and_draws_nothing_else()
    {
        var drawing = Draw(new SeasonBook(40).Season);
        Assert.Empty(drawing.Tracks.SelectMany(track => track.Marks).OfType<Group>());
        Assert.DoesNotContain(drawing.Tracks.SelectMany(track => track.Flat()).OfType<Box>(), box => box.Look.Name.StartsWith("load", StringComparison.Ordinal));
        Assert.Equal(280, Texts(drawing, "dates").Count(text => text.All(char.IsAsciiDigit)));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(53)]
    [InlineData(60)]
    public void Every_week_has_its_number_and_all_fits_the_width(int weeks)
    {
        var drawing = Draw(new SeasonBook(weeks).Season);
        Assert.Equal(weeks, drawing.Columns.Count);
        Assert.Equal(
            string.Join(' ', Enumerable.Range(1, weeks)),
            string.Join(' ', Track(drawing, "weeks").Flat().OfType<TextRun>().Where(text => text.Style.Weight == FontWeight.SemiBold).Skip(1).Select(text => text.Text)));
        Assert.True(drawing.Columns[^1].Right <= drawing.Width);
    }

    [Fact]
    public void A_short_first_week_stands_under_its_weekdays()
    {
        // 1 July 2027 is a Thursday.
        var drawing = Draw(new SeasonBook(10, new DateOnly(2027, 7, 1)).Season);
        var first = drawing.Columns[0];
        Assert.Equal(first.X + 3 * first.DayWidth, first.XOf(new DateOnly(2027, 7, 1)), 0.001);
        var cells = Track(drawing, "dates").Cells;
        Assert.Equal(4 + 9 * 7, cells.Count);
        Assert.Equal(cells.First(cell => cell.Span.Day == new DateOnly(2027, 7, 8)).Area.Y, cells[0].Area.Y);
    }

    [Fact]
    public void Three_matches_in_a_week_have_three_places()
    {
        var book = new SeasonBook(40).Match(new(2027, 8, 3), "Turnes").Match(new(2027, 8, 5), "Kalmar", Venue.Away).Match(new(2027, 8, 8), "Orsund");
        var drawing = Draw(book.Season);
        var groups = Track(drawing, "matches").Marks.OfType<Group>().ToList();
        Assert.Equal(3, groups.Count);
        Assert.Distinct(groups.Select(group => group.Shapes.OfType<Circle>().First().Centre));
        Assert.Equal("TUR|KAL|2|ORS|3", string.Join('|', groups.SelectMany(group => group.Shapes.OfType<TextRun>()).Select(text => text.Text)));
        Assert.Contains("2 home matches, one away match", Track(drawing, "weeks").Cells[4].Label, StringComparison.Ordinal);
    }

    [Fact]
    public void Ten_events_at_once_lie_in_ten_lanes()
    {
        var book = new SeasonBook(20);
        for (var i = 0; i < 10; i++)
            book.Event(new(2027, 8, 2), new(2027, 8, 15 + i), $"Camp {i}");
        var tops = Track(Draw(book.Season), "events").Marks.OfType<Group>().Select(group => group.Shapes.OfType<Box>().Single().Area.Y);
        Assert.Equal(10, tops.Distinct().Count());
    }

    [Fact]
    public void Events_that_only_follow_each_other_share_a_lane()
    {
        var book = new SeasonBook(20).Event(new(2027, 8, 2), new(2027, 8, 29), "Camp").Event(new(2027, 9, 6), new(2027, 10, 3), "Exams");
        Assert.Single(Track(Draw(book.Season), "events").Marks.OfType<Group>().Select(group => group.Shapes.OfType<Box>().Single().Area.Y).Distinct());
    }

    [Theory]
    [InlineData(MatchStatus.Confirmed, "match-home")]
    [InlineData(MatchStatus.Provisional, "match-unsure match-home")]
    [InlineData(MatchStatus.Conditional, "match-unsure match-home")]
    [InlineData(MatchStatus.Cancelled, "match-home-quiet match-day match-day")]
    [InlineData(MatchStatus.Postponed, "match-home-quiet match-day match-day")]
    public void The_sign_of_a_match_tells_how_sure_it_is(MatchStatus status, string looks)
    {
        var drawing = Draw(new SeasonBook(10).Match(new(2027, 8, 7), "Turnes", status: status).Season);
        Assert.Equal(looks, string.Join(' ', Track(drawing, "matches").Flat().Select(Look).Where(name => name.StartsWith("match", StringComparison.Ordinal))));
        var rings = Track(drawing, "dates").Flat().OfType<Circle>().Select(ring => ring.Look.Name);
        Assert.Equal(status switch { MatchStatus.Confirmed => "match-day", MatchStatus.Cancelled or MatchStatus.Postponed => "", _ => "match-day-unsure" }, string.Join(' ', rings));
    }

    [Fact]
    public void A_window_has_a_bracket_over_its_days()
    {
        var drawing = Draw(new SeasonBook(10).Match(new(2027, 8, 4), "Turnes", status: MatchStatus.Window, lastDay: new(2027, 8, 12)).Season);
        var bracket = Assert.Single(Track(drawing, "matches").Flat().OfType<Polyline>());
        Assert.Equal(drawing.Columns[4].XOf(new(2027, 8, 4)) + 1, bracket.Points[0].X, 0.01);
        Assert.Equal(drawing.Columns[5].XOf(new(2027, 8, 13)) - 1, bracket.Points[^1].X, 0.01);
    }

    [Fact]
    public void The_sentence_of_a_week_is_the_one_of_the_guide()
    {
        var book = new SeasonBook(46).Phase(9, 24, PhaseKind.Competition).Match(new(2027, 10, 16), "Turnes");
        book.Write(new SetWeekLoad(book.Week(15), book.Week(15), Load.FromPercent(new(92), Setup.ReferenceWeek)));
        Assert.StartsWith("Week 15, 11 to 17 October, competition, 92 per cent, one home match", Track(Draw(book.Season), "weeks").Cells[14].Label, StringComparison.Ordinal);
    }

    [Fact]
    public void Order_hiding_and_folding_are_the_viewers()
    {
        var season = new SeasonBook(20).Season;
        var drawing = YearDrawing.Of(season, Setup, new YearView { TrackOrder = ["load", "phases", "no such track"], Hidden = ["dates", "notes"], Folded = ["emphasis"] });
        Assert.Equal("load emphasis tests phases blocks", string.Join(' ', drawing.Tracks.Select(track => track.Id)
            .Where(id => id is "load" or "emphasis" or "tests" or "phases" or "blocks")));
        Assert.DoesNotContain(drawing.Tracks, track => track.Id is "dates" or "notes" || track.Id.StartsWith("emphasis-", StringComparison.Ordinal));
        var folded = Track(drawing, "emphasis");
        Assert.True(folded.Height < 16);
        Assert.Equal(20, folded.Cells.Count);
        Assert.Equal("Emphasis", Assert.Single(folded.Flat().OfType<TextRun>()).Text);
    }

    [Theory]
    [InlineData(YearZoom.Week, 12)]
    [InlineData(YearZoom.Day, 5)]
    public void A_closer_look_shows_some_weeks_and_stops_at_the_end(YearZoom zoom, int weeks)
    {
        var season = new SeasonBook(40).Season;
        YearDrawing From(int week) => YearDrawing.Of(season, Setup, new YearView { Zoom = zoom, Weeks = weeks, FirstWeek = week });
        Assert.Equal(Enumerable.Range(9, weeks), From(9).Columns.Select(column => column.Week.Number));
        Assert.Equal(40, From(39).Columns[^1].Week.Number);
        Assert.Equal(weeks, From(39).Columns.Count);
        Assert.Equal(1, From(-3).Columns[0].Week.Number);
        if (zoom == YearZoom.Day)
            Assert.All(From(9).Tracks.Where(track => track.Id is "dates" or "matches" or "events" or "tests" or "notes"), track => Assert.Equal(7 * weeks, track.Cells.Count));
    }

    /// <summary>Common practice, no source: the nearer match names the day, the coming one where both are equally near.</summary>
    [Fact]
    public void Day_zoom_names_the_days_around_matches()
    {
        // Saturdays 10 and 24 July 2027; the season begins on Monday 5 July.
        var season = new SeasonBook(6).Match(new(2027, 7, 10), "Kalmar").Match(new(2027, 7, 24), "Kalsund").Season;
        var drawing = YearDrawing.Of(season, Setup, new YearView { Zoom = YearZoom.Day, Weeks = 5, FirstWeek = 1, Width = 1600 });
        var days = "MD-5 MD-4 MD-3 MD-2 MD-1 MD MD+1 MD+2 MD+3 MD+4 MD+5 MD+6 MD-7 MD-6 MD-5 MD-4 MD-3 MD-2 MD-1 MD MD+1 MD+2 MD+3 MD+4 MD+5 MD+6 MD+7";
        Assert.Equal(days, string.Join(' ', Texts(drawing, "dates").Where(text => text.StartsWith("MD", StringComparison.Ordinal))));
    }

    [Theory]
    [InlineData(YearZoom.Season, false)]
    [InlineData(YearZoom.Day, true)]
    public void The_name_of_a_track_explains_only_what_is_drawn(YearZoom zoom, bool figures)
    {
        var season = new SeasonBook(47).Match(new(2027, 7, 10), "Kalmar").Match(new(2027, 7, 17), "Kalsund").Season;
        var texts = Texts(YearDrawing.Of(season, Setup, new YearView { Zoom = zoom, Weeks = 5, FirstWeek = 1, Width = 1040 }), "matches").ToList();
        Assert.Equal(figures, texts.Contains("7", StringComparer.Ordinal));
        Assert.Equal(figures, texts.Exists(text => text.Contains("since", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_drag_reads_back_the_load_it_is_drawn_at()
    {
        var book = new SeasonBook(10);
        book.Write(new SetWeekLoad(book.Week(3), book.Week(3), new Load(7_000)));
        var scale = Draw(book.Season).Load!;
        Assert.Equal(225, scale.Top);
        Assert.All(Enumerable.Range(0, 226), percent => Assert.Equal(percent, scale.At(scale.YOf(percent)).Value));
        Assert.Equal(225, scale.At(-50).Value);
    }

    [Fact]
    public void Opponents_whose_names_begin_alike_have_different_codes()
    {
        var book = new SeasonBook(40).Match(new(2027, 7, 10), "Kalmar").Match(new(2027, 7, 17), "Kalsund").Match(new(2027, 7, 24), "HC Kalmont").Match(new(2027, 7, 31), null);
        Assert.Equal("KAM KAS KAL ?", string.Join(' ', Texts(Draw(book.Season), "matches").Where(text => text == "?" || text.StartsWith('K'))));
    }

    /// <summary>F, SF, QF and the game of a series: common practice, no source.</summary>
    [Theory]
    [InlineData("Final", "Cup", null, "F")]
    [InlineData("Semi-final", "Cup", null, "SF")]
    [InlineData("Semi final", "Cup", null, "SF")]
    [InlineData("Semifinal", null, null, "SF")]
    [InlineData("Halbfinale", null, null, "HF")]
    [InlineData("1/4 final", null, null, "QF")]
    [InlineData("Quarter-final 2", null, null, "QF2")]
    [InlineData("Sea cup final", null, null, "F")]
    [InlineData("Round of 16", "Cup", null, "R16")]
    [InlineData("Play-off", null, null, "PO")]
    [InlineData("25", "League", null, "R25")]
    [InlineData(null, "Cup", null, "CUP")]
    [InlineData("?", "Cup", null, "CUP")]
    [InlineData("", "Cup", null, "CUP")]
    [InlineData("Game 2", "Championship final", 2, "F2")]
    [InlineData(null, "Championship final", 3, "F3")]
    [InlineData("Semi-final", "Championship", 1, "SF1")]
    [InlineData("Semi-final, game 1", "Championship", 1, "SF1")]
    [InlineData("Semi-final 1", "Championship", 1, "SF1")]
    [InlineData("Kvart-final", null, null, "KF")]
    [InlineData(null, null, null, "?")]
    public void An_opponent_not_yet_known_is_named_by_the_round_or_the_competition(string? round, string? competition, int? game, string code)
    {
        foreach (var opponent in new[] { null, "?", "TBD" })
        {
            var match = new Match(new("m"), new(2027, 8, 7), Opponent: opponent, Round: round, Competition: competition, Series: game is { } number ? new(competition!, number, 3) : null);
            Assert.Equal(code, Draw(new SeasonBook(40).Write(new SetMatch(match)).Season).Tracks.Single(track => track.Id == "matches").Marks.OfType<Group>().Single().Shapes.OfType<TextRun>().First().Text);
        }
    }

    [Theory]
    [InlineData(1500, 3)]
    [InlineData(1300, 3)]
    [InlineData(1080, 2)]
    public void All_codes_of_opponents_are_equally_long_and_differ(double width, int letters)
    {
        string[] clubs = ["Moarvik", "Gambury", "Moldavik", "Hestmark", "Esten", "Stene", "Stavdal"];
        var book = new SeasonBook(47);
        for (var week = 1; week <= 47; week++)
            book.Match(book.Day(week, 5), clubs[week % clubs.Length]);
        var codes = Texts(YearDrawing.Of(book.Season, Setup, new YearView { Width = width }), "matches").Where(text => text.All(char.IsAsciiLetterUpper)).ToList();
        Assert.Equal(47, codes.Count);
        Assert.All(codes, code => Assert.Equal(letters, code.Length));
        Assert.Equal(clubs.Length, codes.Distinct(StringComparer.Ordinal).Count());
    }

    private static YearDrawing Draw(Season season) => YearDrawing.Of(season, Setup, new YearView());

    private static TrackDrawing Track(YearDrawing drawing, string id) => drawing.Tracks.Single(track => track.Id == id);

    private static IEnumerable<string> Texts(YearDrawing drawing, string track) => Track(drawing, track).Flat().OfType<TextRun>().Select(text => text.Text);

    private static string Look(Shape shape) => shape switch
    {
        Circle circle => circle.Look.Name,
        Line line => line.Look.Name,
        Box box => box.Look.Name,
        _ => "",
    };

    /// <summary>The slimmest columns: a date is wider than its own and must not reach a match day beside it.</summary>
    [Fact]
    public void A_date_does_not_stand_on_the_spot_of_a_match_in_the_week_beside_it()
    {
        var book = new SeasonBook(60);
        var drawings = Enumerable.Range(1, 59).Select(week => YearDrawing.Of(
            new SeasonBook(60).Match(book.Season.Weeks[week].Days.First, "Turnes").Season, Setup.Empty(new("team")), new YearView { Width = YearView.LeastWidth }));
        Assert.All(drawings, drawing => Assert.Empty(TextGrounds.Undeclared(drawing.Tracks.Single(track => track.Id == "dates"), Palette.Paper)));
    }
}
