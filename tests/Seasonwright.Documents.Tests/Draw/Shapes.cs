using CsCheck;
using Seasonwright.Core;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Tests.Draw;

/// <summary>Random shapes of the whole family.</summary>
internal static class Shapes
{
    private static readonly Gen<Point> Points =
        Gen.Select(Gen.Double[-50, 2000], Gen.Double[-50, 900], (x, y) => new Point(x, y));

    private static readonly Gen<Area> Areas = Gen.Select(
        Gen.Double[0, 1600], Gen.Double[0, 900], Gen.Double[0, 120], Gen.Double[0, 60], (x, y, w, h) => new Area(x, y, w, h));

    private static readonly Gen<MarkLook> Marks = Gen.OneOf(Looks.All.OfType<MarkLook>().ToArray());

    private static readonly Gen<MarkLook> Strokes = Gen.OneOf(
        Looks.All.OfType<MarkLook>().Where(look => look is { Fill: null, Stroke: not null }).ToArray());

    private static readonly Gen<Shape> Simple = Gen.OneOf<Shape>(
        Gen.Select(Areas, Marks, Gen.Double[0, 6], (area, look, corner) => (Shape)new Box(area, look, corner)),
        Gen.Select(Areas, Strokes, (area, look) => (Shape)new Hatch(area, look)),
        Gen.Select(Points, Points, Strokes, (from, to, look) => (Shape)new Line(from, to, look)),
        Gen.Select(Points.Array[0, 6], Strokes, (points, look) => (Shape)new Polyline(points.ToValueList(), look)),
        Gen.Select(Points, Gen.Double[1, 9], Marks, (at, radius, look) => (Shape)Polygon.Diamond(at, radius, look)),
        Gen.Select(Areas, Marks, (area, look) => (Shape)Polygon.Triangle(area, look)),
        Gen.Select(Points, Gen.Double[0, 9], Marks, (at, radius, look) => (Shape)new Circle(at, radius, look)),
        Gen.Select(
            Points, Texts.Any, Gen.OneOf(Looks.All.OfType<TextLook>().ToArray()), Gen.OneOf(Enum.GetValues<TextAnchor>()),
            (at, text, look, anchor) => (Shape)new TextRun(at, text, new TextStyle(11, FontWeight.Medium), look, anchor)));

    public static Gen<Shape> Any { get; } = Gen.Frequency(
        (8, Simple),
        (1, Gen.Select(Texts.Any, Simple.Array[0, 3], (label, parts) => (Shape)new Group(label, parts.ToValueList(), label))));

    private static readonly Gen<Cell> Cells = Gen.Select(
        Areas, Gen.Int[0, 59], Texts.Any, Gen.Bool,
        (area, week, label, daily) =>
            new Cell(area, new CellSpan(week, daily ? new DateOnly(2027, 7, 5).AddDays(week) : null), label));

    public static Gen<TrackDrawing> Tracks { get; } = Gen.Select(
        Texts.Any, Any.Array[0, 12], Cells.Array[0, 4],
        (label, marks, cells) => new TrackDrawing("load", label, 120, marks.ToValueList(), cells.ToValueList()));
}
