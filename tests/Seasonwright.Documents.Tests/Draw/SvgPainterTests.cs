using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using CsCheck;
using Seasonwright.Documents.Draw;
using Group = Seasonwright.Documents.Draw.Group;

namespace Seasonwright.Documents.Tests.Draw;

public partial class SvgPainterTests
{
    private static readonly string[] Classes = [.. Looks.All.Select(look => look.Name), "track", "cell", "drawing"];

    /// <summary>Judge from outside: .NET's own XML reader.</summary>
    [Fact]
    public void Any_text_gives_well_formed_markup_that_reads_back_as_drawn() => Shapes.Tracks.Sample(track =>
    {
        var svg = XElement.Parse(SvgPainter.Track(track), LoadOptions.PreserveWhitespace);
        var drawn = track.Marks.SelectMany(mark => mark is Group group ? group.Shapes : [mark]).OfType<TextRun>();
        Assert.Equal(drawn.Select(run => run.Text), svg.Descendants("text").Select(text => text.Value), StringComparer.Ordinal);
        Assert.Equal(
            track.Cells.Select(cell => cell.Label),
            svg.Descendants().Where(e => (string?)e.Attribute("role") == "gridcell").Select(e => e.Attribute("aria-label")!.Value),
            StringComparer.Ordinal);
    });

    [Fact]
    public void Only_known_classes_and_never_a_style_attribute() => Shapes.Tracks.Sample(track =>
        Assert.All(XElement.Parse(SvgPainter.Track(track)).DescendantsAndSelf(), element =>
        {
            Assert.Null(element.Attribute("style"));
            if ((string?)element.Attribute("class") is { } name)
                Assert.Contains(name, Classes, StringComparer.Ordinal);
        }));

    [Fact]
    public void Numbers_are_invariant_with_at_most_two_decimals() => Shapes.Tracks.Sample(track =>
    {
        string[] numeric = ["x", "y", "width", "height", "rx", "x1", "y1", "x2", "y2", "cx", "cy", "r", "points", "d", "font-size"];
        var values = XElement.Parse(SvgPainter.Track(track)).Descendants().Attributes().Where(a => numeric.Contains(a.Name.LocalName));
        Assert.All(values, attribute => Assert.Matches(Numbers(), attribute.Value));
    });

    [Fact]
    public void Numbers_read_back_as_they_were_drawn() => Gen.Double[-3000, 3000].Array[4].Sample(at =>
    {
        var line = new Line(new(at[0], at[1]), new(at[2], at[3]), Looks.Hairline);
        var drawn = XElement.Parse(SvgPainter.Track(new TrackDrawing("t", "", 1, [line], []))).Descendants("line").Single();
        double[] expected = [line.From.X, line.From.Y, line.To.X, line.To.Y];
        Assert.Equal(expected, new[] { "x1", "y1", "x2", "y2" }.Select(name =>
            double.Parse(drawn.Attribute(name)!.Value, CultureInfo.InvariantCulture)));
    });

    [Fact]
    public void The_readers_culture_changes_no_byte()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            Shapes.Tracks.Sample(
                track =>
                {
                    CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
                    var invariant = SvgPainter.File(Sheet(track), Scheme.Light);
                    CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
                    Assert.Equal(invariant, SvgPainter.File(Sheet(track), Scheme.Light));
                },
                threads: 1);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Cells_speak_for_the_marks_and_lie_beneath_what_can_be_grasped()
    {
        var match = new Group("Sat 16 Oct, home to Turnes", [new Circle(new(238, 20), 4, Looks.MatchHome)], "m7");
        var track = new TrackDrawing(
            "matches", "Matches", 40, [match], [new Cell(new Area(226, 0, 23, 40), new CellSpan(14), "Week 15, one home match")]);

        Assert.Equal(
            """
            <g class="track" data-track="matches"><g role="row" aria-label="Matches"><rect role="gridcell" class="cell" id="matches-w14" data-week="14" x="226" y="0" width="23" height="40" fill="none" pointer-events="all" aria-label="Week 15, one home match"/></g><g pointer-events="none" aria-hidden="true"><g role="img" aria-label="Sat 16 Oct, home to Turnes" data-item="m7" pointer-events="all"><circle class="match-home" cx="238" cy="20" r="4"/></g></g></g>
            """,
            SvgPainter.Track(track));
    }

    [Fact]
    public void A_file_stands_on_its_own_and_stacks_its_tracks()
    {
        TrackDrawing Track(string id, double height) => new(
            id, id, height, [new TextRun(new(4, 12), "Łódź & <Vale>", new TextStyle(12), Looks.Ink)], []);

        var text = SvgPainter.File(
            new SheetDrawing("Year of \"Harbour Vale\"", 200, 80, 5, 0.5, [Track("month", 20), Track("week", 30.5), Track("load", 100)]), Scheme.Grey);
        var svg = XDocument.Parse(text).Root!;
        XNamespace ns = "http://www.w3.org/2000/svg";

        Assert.Equal(("0 0 400 160", "200pt", "80pt"), ((string?)svg.Attribute("viewBox"), (string?)svg.Attribute("width"), (string?)svg.Attribute("height")));
        Assert.Equal("Year of \"Harbour Vale\"", svg.Element(ns + "title")!.Value);
        Assert.Equal("translate(10 10)|translate(10 30)|translate(10 60.5)", string.Join('|', svg.Elements(ns + "g").Select(g => (string?)g.Attribute("transform"))));
        var style = svg.Element(ns + "style")!.Value;
        Assert.Contains(".drawing .phase-peak{fill:#262626;stroke:#000000;stroke-width:1}", style, StringComparison.Ordinal);
        Assert.DoesNotContain("var(", style, StringComparison.Ordinal);
        // Nothing is fetched: the fonts are inside.
        Assert.Equal(FontFile.All.Length, Regex.Count(style, @"url\(", RegexOptions.NonBacktracking));
        Assert.Equal(FontFile.All.Length, Regex.Count(style, @"url\(data:font/woff;base64,", RegexOptions.NonBacktracking));
        Assert.DoesNotContain("@import", text, StringComparison.Ordinal);
    }

    private static SheetDrawing Sheet(TrackDrawing track) => new("Year", 1200.38, 600, 0, 0.75, [track]);

    [GeneratedRegex(@"^[ML, ]*(-?\d+(\.\d{1,2})?[ ,ML]*)*$", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex Numbers();
}
