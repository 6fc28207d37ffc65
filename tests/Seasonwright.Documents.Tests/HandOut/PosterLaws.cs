using System.Text.RegularExpressions;
using System.Xml.Linq;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Posters;
using Seasonwright.Documents.Tests.Year;

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

    private static IEnumerable<double> Ends(IEnumerable<Shape> shapes) => shapes.SelectMany(shape => shape switch
    {
        TextRun text => [text.At.X + text.Width * text.Anchor switch { TextAnchor.Start => 1, TextAnchor.Middle => 0.5, _ => 0 }],
        Box box => [box.Area.X, box.Area.Right],
        Seasonwright.Documents.Draw.Group group => Ends(group.Shapes),
        _ => Enumerable.Empty<double>(),
    });
}
