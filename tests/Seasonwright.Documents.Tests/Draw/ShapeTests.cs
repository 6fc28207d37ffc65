using CsCheck;
using Seasonwright.Core;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Tests.Draw;

public class ShapeTests
{
    [Fact]
    public void A_track_made_twice_is_equal_and_a_changed_one_is_not()
    {
        Assert.Equal(Make(92), Make(92));
        Assert.Equal(Make(92).GetHashCode(), Make(92).GetHashCode());
        Assert.NotEqual(Make(92), Make(91));

        static TrackDrawing Make(double height) => new(
            "load", "Load", 120,
            [
                new Box(new Area(226, 120 - height, 18, height), Looks.LoadPlanned, 1.5),
                new Hatch(new Area(226, 100, 18, 20), Looks.LoadMatch),
                new Group("match", [Polygon.Diamond(new(235, 40), 6, Looks.MatchKeyUnsure)], "m1"),
                new TextRun(new(235, 60), "FIN", new TextStyle(7.8, FontWeight.Medium), Looks.Muted, TextAnchor.Middle),
            ],
            [new Cell(new Area(226, 0, 23, 120), new CellSpan(0), "Week 1")]);
    }

    [Fact]
    public void Noise_behind_the_second_decimal_is_no_change()
    {
        Assert.Equal(new Area(0.1 + 0.2, 1, 22.956521739130434, 5), new Area(0.3, 1, 22.96, 5));
        Assert.Equal(new Point(-0.001, 0), new Point(0, 0));
        Assert.False(double.IsNegative(new Point(-0.001, 0).X));
    }

    /// <summary>What the page relies on when it leaves an equal track alone.</summary>
    [Fact]
    public void Tracks_that_paint_differently_are_not_equal() =>
        Gen.Select(Shapes.Tracks, Shapes.Any, Gen.Int[0, 11]).Sample((track, mark, at) =>
        {
            var copy = track with { Marks = track.Marks.ToArray().ToValueList() };
            Assert.Equal(track, copy);
            Assert.Equal(SvgPainter.Track(track), SvgPainter.Track(copy));

            var changed = track with { Marks = track.Marks.Select((was, i) => i == at ? mark : was).ToValueList() };
            if (!string.Equals(SvgPainter.Track(track), SvgPainter.Track(changed), StringComparison.Ordinal))
                Assert.NotEqual(track, changed);
        });

    [Fact]
    public void Hatching_stays_inside_and_joins_across_a_border()
    {
        Gen.Select(Gen.Double[0, 500], Gen.Double[0, 200], Gen.Double[0, 80], Gen.Double[0, 80]).Sample((x, y, width, height) =>
        {
            var area = new Area(x, y, width, height);
            var strokes = new Hatch(area, Looks.LoadMatch).Strokes().ToList();
            Assert.All(strokes, stroke =>
            {
                Assert.True(area.Contains(stroke.From) && area.Contains(stroke.To), $"{stroke} leaves {area}");
                // To 1/100 px per coordinate, hence 0.011 on their sum.
                Assert.Equal(0, Math.IEEERemainder(stroke.From.X + stroke.From.Y, Hatch.Step), 0.011);
                Assert.Equal(stroke.From.X + stroke.From.Y, stroke.To.X + stroke.To.Y, 0.021);
            });
            if (width + height > 2 * Hatch.Step && Math.Min(width, height) > Hatch.Step)
                Assert.NotEmpty(strokes);
        });
    }

    [Fact]
    public void What_cannot_be_drawn_is_not_born()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Area(0, 0, -1, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Point(double.NaN, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new TextStyle(0));
        Assert.Throws<ArgumentException>(() => new Line(new(0, 0), new(1, 1), Looks.LoadDone));
        Assert.Throws<ArgumentException>(() => new TrackDrawing("own: gym", "Gym", 10, [], []));
    }

    [Fact]
    public void A_margin_never_turns_an_area_inside_out()
    {
        Assert.Equal(new Area(2, 1, 6, 8), new Area(0, 0, 10, 10).Inset(2, 1));
        Assert.Equal(new Area(5, 5, 0, 0), new Area(0, 0, 10, 10).Inset(20, 20));
    }
}
