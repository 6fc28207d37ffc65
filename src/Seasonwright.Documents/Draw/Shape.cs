using Seasonwright.Core;

namespace Seasonwright.Documents.Draw;

/// <summary>
/// The closed family of things a drawing is made of: immutable, equal by value, in px at 1x, y downwards from the
/// track's top. Two equal shapes paint the same bytes.
/// </summary>
public abstract record Shape
{
    private protected Shape() { }
}

/// <summary>A rectangle.</summary>
/// <param name="Area">Where.</param>
/// <param name="Look">Fill and edge; the edge is centred on the border.</param>
/// <param name="Corner">Radius of the corners, px.</param>
public sealed record Box(Area Area, MarkLook Look, double Corner = 0) : Shape
{
    public double Corner { get; } = Grid.SnapLength(Corner);
}

/// <summary>Slanting strokes over a rectangle; a box beneath gives the ground.</summary>
public sealed record Hatch(Area Area, MarkLook Look) : Shape
{
    public MarkLook Look { get; } = Hollow.Checked(Look);

    /// <summary>Distance between strokes along an edge, px.</summary>
    public const double Step = 6;

    /// <summary>
    /// The strokes, clipped to the area, rising to the right. They lie on lines x + y = n · <see cref="Step"/> of the
    /// whole drawing, so neighbouring areas join without a seam, and no painter needs a pattern.
    /// </summary>
    public IEnumerable<(Point From, Point To)> Strokes()
    {
        var first = (Math.Floor((Area.X + Area.Y) / Step) + 1) * Step;
        for (var sum = first; sum < Area.Right + Area.Bottom; sum += Step)
        {
            var left = Math.Max(Area.X, sum - Area.Bottom);
            var right = Math.Min(Area.Right, sum - Area.Y);
            if (right > left)
                yield return (new(left, sum - left), new(right, sum - right));
        }
    }
}

/// <summary>A straight line.</summary>
public sealed record Line(Point From, Point To, MarkLook Look) : Shape
{
    public MarkLook Look { get; } = Hollow.Checked(Look);
}

/// <summary>An open run of straight lines, never filled.</summary>
public sealed record Polyline(ValueList<Point> Points, MarkLook Look) : Shape
{
    public MarkLook Look { get; } = Hollow.Checked(Look);
}

/// <summary>A closed figure of straight lines.</summary>
public sealed record Polygon(ValueList<Point> Points, MarkLook Look) : Shape
{
    /// <summary>A square on its corner; the radius reaches from the centre to each corner, px.</summary>
    public static Polygon Diamond(Point centre, double radius, MarkLook look) => new(
        [
            new(centre.X, centre.Y - radius), new(centre.X + radius, centre.Y),
            new(centre.X, centre.Y + radius), new(centre.X - radius, centre.Y),
        ],
        look);

    /// <summary>An upright triangle that fills the area, its tip at the middle of the top.</summary>
    public static Polygon Triangle(Area area, MarkLook look) => new(
        [new(area.X + area.Width / 2, area.Y), new(area.Right, area.Bottom), new(area.X, area.Bottom)],
        look);
}

/// <summary>A circle.</summary>
public sealed record Circle(Point Centre, double Radius, MarkLook Look) : Shape
{
    public double Radius { get; } = Grid.SnapLength(Radius);
}

/// <summary>Which part of a text stands at its place.</summary>
public enum TextAnchor
{
    Start,
    Middle,
    End,
}

/// <summary>
/// One line of text; its anchor stands at a place on the baseline. The text is cleaned on birth, see
/// <see cref="PlainText.Clean"/>.
/// </summary>
public sealed record TextRun(
    Point At, string Text, TextStyle Style, TextLook Look, TextAnchor Anchor = TextAnchor.Start) : Shape
{
    public string Text { get; } = PlainText.Clean(Text);

    /// <summary>px at 1x, as shaped.</summary>
    public double Width => TextWidths.Of(Text, Style);
}

/// <summary>Shapes that are one thing to a reader: spoken as one image and, with an item, grasped as one.</summary>
/// <param name="Label">What a screen reader says, cleaned on birth.</param>
/// <param name="Shapes">In painting order.</param>
/// <param name="Item">What the pointer has hold of, for instance a match's id; null cannot be grasped.</param>
public sealed record Group(string Label, ValueList<Shape> Shapes, string? Item = null) : Shape
{
    public string Label { get; } = PlainText.Clean(Label);

    public string? Item { get; } = Item is null ? null : PlainText.Clean(Item);
}

/// <summary>Lines are strokes: a look with a fill or without a stroke would be drawn wrong or not at all.</summary>
file static class Hollow
{
    public static MarkLook Checked(MarkLook look) =>
        look is { Fill: null, Stroke: not null }
            ? look
            : throw new ArgumentException($"The look {look.Name} is not one for lines.", nameof(look));
}
