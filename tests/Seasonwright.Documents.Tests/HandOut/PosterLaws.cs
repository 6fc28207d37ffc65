using System.Text.RegularExpressions;
using System.Xml.Linq;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Posters;
using Seasonwright.Documents.Tests.Year;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.Tests.HandOut;

/// <summary>Whatever the season, a poster is one page that holds everything it shows.</summary>
public sealed class PosterLaws
{
    private static readonly Edition Draft = Edition.Draft(new(2027, 10, 18));

    [Theory]
    [InlineData("a3")]
    [InlineData("letter")]
    public void Any_season_fits_its_paper_and_the_same_season_gives_the_same_bytes(string paper)
    {
        var choices = new PosterChoices(PaperSize.Find(paper)!) { Hidden = [] };
        foreach (var (season, setup) in HostileSeasons.All)
        {
            var shared = new SharedSeason(season, setup, Draft, KeyMatches: true);
            var poster = Poster.Of(shared, choices);
            var sheet = poster.Sheet;
            Assert.True(sheet.Tracks.Sum(track => track.Height) * sheet.PointsPerPx <= sheet.Height - 2 * sheet.Margin + 0.01, "higher than the page");
            Assert.All(sheet.Tracks.SelectMany(track => Ends(track.Marks)), end => Assert.InRange(end * sheet.PointsPerPx, -1, sheet.Width - 2 * sheet.Margin + 1));
            Assert.Equal(poster.Pdf(Draft, Scheme.Light), Poster.Of(shared, choices).Pdf(Draft, Scheme.Light));
            Assert.NotNull(XDocument.Parse(poster.Svg(Scheme.Grey)).Root);
            Assert.Matches(new Regex(@"^[a-z0-9]+(-[a-z0-9]+)*-draft-poster-(a3|letter)\.pdf$", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(10)), HandOuts.Poster(shared, choices).Name);
        }
    }

    [Fact]
    public void Tracks_with_nothing_on_them_are_not_on_the_wall()
    {
        string[] Tracks(Season season) => [.. Poster.Of(new SharedSeason(season, Core.Setups.Setup.Empty(new("team")), Draft), new PosterChoices(PaperSize.A3)).Sheet.Tracks.Select(track => track.Id)];
        Assert.Equal(["letterhead", "months", "weeks", "dates", "foot"], Tracks(new SeasonBook(40).Season));
        var book = new SeasonBook(40).Match(new(2027, 8, 7), "Turnes").Event(new(2027, 8, 9), new(2027, 8, 13), "Camp").Phase(1, 4, PhaseKind.GeneralPreparation);
        Assert.Equal(["letterhead", "months", "weeks", "dates", "matches", "events", "phases", "load", "foot"], Tracks(book.Season));
    }

    [Theory]
    [InlineData(Venue.Home, MatchStatus.Confirmed, Importance.Regular, "home")]
    [InlineData(Venue.Home, MatchStatus.Provisional, Importance.Regular, "home Dashed: not certain yet.")]
    [InlineData(Venue.Away, MatchStatus.Confirmed, Importance.Regular, "away")]
    [InlineData(Venue.Neutral, MatchStatus.Confirmed, Importance.Regular, "neutral ground")]
    [InlineData(null, MatchStatus.Conditional, Importance.Regular, "ground not yet known Dashed: not certain yet.")]
    [InlineData(Venue.Home, MatchStatus.Confirmed, Importance.Friendly, "friendly")]
    [InlineData(Venue.Away, MatchStatus.Cancelled, Importance.Regular, "called off")]
    [InlineData(Venue.Away, MatchStatus.Confirmed, Importance.Key, "key match")]
    public void The_key_explains_the_sign_of_a_match_and_no_other(Venue? venue, MatchStatus status, Importance importance, string words)
    {
        var season = new SeasonBook(47).Match(new(2027, 8, 7), "Turnes", venue, status, importance).Season;
        Assert.Equal($"{words} {Say("paper.caution")}", Foot(season));
    }

    [Fact]
    public void The_key_explains_what_else_stands_on_the_poster_and_nothing_that_was_taken_off()
    {
        var book = new SeasonBook(47).Match(new(2027, 8, 4), "Turnes", Venue.Away, MatchStatus.Window, lastDay: new(2027, 8, 12)).Block(1, 4, BlockKind.Build);
        book.Write(new SetWeekKind(book.Week(3), book.Week(3), WeekKind.Overload), new SetWeekKind(book.Week(4), book.Week(4), WeekKind.Unloading), new LockWeeks(book.Week(1), book.Week(2), true));
        Assert.Equal($"away on one of these days 3 hardest week of its block 4 easier week that ends it Dashed: not certain yet. {Say("paper.caution")}", Foot(book.Season));
        Assert.StartsWith("locked week away", Foot(book.Season, ["notes"]), StringComparison.Ordinal);
        Assert.Equal(Say("paper.caution"), Foot(book.Season, ["notes", "marks", "matches", "dates", "blocks"]));
    }

    [Fact]
    public void The_looks_in_the_key_are_those_on_the_poster()
    {
        foreach (var seed in Enumerable.Range(1, 60))
        {
            var random = new Random(seed);
            var book = new SeasonBook(47);
            for (var week = 1; week <= seed % 12; week++)
                book.Match(book.Day(week, 5), "Turnes", random.Next(4) == 3 ? null : (Venue)random.Next(3), (MatchStatus)(random.Next(6) switch { 3 => 0, var status => status }), (Importance)random.Next(3));
            var tracks = OfSeason(book.Season, ["notes", "dates"]).Sheet.Tracks;
            Assert.Equal(Signs(tracks, "matches"), Signs(tracks, "foot"));
        }

        // What kind of figure in which look; a struck code has the line of a struck sign.
        static string Signs(IEnumerable<TrackDrawing> tracks, string id) => string.Join(' ', tracks.Where(track => track.Id == id).SelectMany(track => track.Flat()).Select(shape => shape switch
        {
            Circle circle => $"circle-{circle.Radius:0.0}-{circle.Look.Name}",
            Box box => $"box-{box.Area.Width:0.0}-{box.Look.Name}",
            Polygon polygon => $"diamond-{polygon.Points[1].X - polygon.Points[3].X:0.0}-{polygon.Look.Name}",
            Line line => $"line-{line.Look.Name}",
            _ => "",
        }).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Qualities_without_any_emphasis_are_not_on_the_wall()
    {
        var book = new SeasonBook(20).Phase(1, 4, PhaseKind.Competition);
        string[] Rows() => [.. OfSeason(book.Season).Sheet.Tracks.Select(track => track.Id).Where(id => id.StartsWith("emphasis", StringComparison.Ordinal))];
        Assert.Empty(Rows());
        book.Write(new SetEmphasis(book.Week(2), book.Week(3), new("power"), Emphasis.Develop));
        Assert.Equal(["emphasis", "emphasis-power"], Rows());
        book.Write(new SetEmphasis(book.Week(2), book.Week(3), new("power"), Emphasis.None));
        Assert.Empty(Rows());
    }

    [Fact]
    public void Draft_version_and_dates_end_where_the_chart_does()
    {
        var season = new SeasonBook(47).Match(new(2027, 8, 7), "Turnes").Season;
        foreach (var edition in new[] { Draft, new Edition(new Publication(3, "after the cup"), new(2027, 10, 18)) })
        {
            var sheet = Poster.Of(new SharedSeason(season, Setup, edition), new PosterChoices(PaperSize.A3)).Sheet;
            var chart = Ends(sheet.Tracks.Single(track => track.Id == "load").Marks.OfType<Line>()).Max();
            var head = sheet.Tracks[0].Marks;
            Assert.All(head.Where(shape => edition.IsDraft ? shape is Box : shape is TextRun { Anchor: TextAnchor.End }), shape => Assert.InRange(Ends([shape]).Max(), chart - 0.5, chart + 0.5));
            Assert.Contains(head, shape => Math.Abs(Ends([shape]).Max() - chart) < 0.5);
        }
    }

    [Fact]
    public void What_is_over_of_the_height_makes_the_load_chart_higher()
    {
        double Chart(SeasonBook book) => OfSeason(book.Season).Sheet.Tracks.Single(track => track.Id == "load").Height;
        var few = new SeasonBook(47).Match(new(2027, 8, 7), "Turnes");
        var height = Chart(few);
        for (var n = 0; n < 30; n++)
            few.Event(new(2027, 8, 2), new(2027, 8, 15 + n % 10), $"Camp {n}");
        Assert.InRange(Chart(few), 60, height - 1);
    }

    private static readonly Core.Setups.Setup Setup = Core.Setups.Setup.Empty(new("team"));

    private static Poster OfSeason(Season season, string[]? hidden = null) =>
        Poster.Of(new SharedSeason(season, Setup, Draft, KeyMatches: true), hidden is null ? new PosterChoices(PaperSize.A3) : new PosterChoices(PaperSize.A3) { Hidden = [.. hidden] });

    /// <summary>The words at the foot, in order.</summary>
    private static string Foot(Season season, string[]? hidden = null) =>
        string.Join(' ', OfSeason(season, hidden).Sheet.Tracks.Single(track => track.Id == "foot").Marks.OfType<TextRun>().Select(text => text.Text));

    private static IEnumerable<double> Ends(IEnumerable<Shape> shapes) => shapes.SelectMany(shape => shape switch
    {
        TextRun text => [text.At.X + text.Width * text.Anchor switch { TextAnchor.Start => 1, TextAnchor.Middle => 0.5, _ => 0 }],
        Box box => [box.Area.X, box.Area.Right],
        Line line => [line.From.X, line.To.X],
        Seasonwright.Documents.Draw.Group group => Ends(group.Shapes),
        _ => Enumerable.Empty<double>(),
    });
}
