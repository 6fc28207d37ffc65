using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Tests.Year;

/// <summary>Where the texts of a track stand, as rectangles around their letters.</summary>
internal static class Ink
{
    // Inter: capitals and figures reach 0.727 em above the baseline, letters 0.20 em below it.
    private const double Above = 0.727;
    private const double Below = 0.2;

    public static IEnumerable<Shape> Flat(this TrackDrawing track) => track.Marks.SelectMany(Flat);

    public static List<(Area Area, TextRun Text)> Texts(this TrackDrawing track) =>
        [.. track.Flat().OfType<TextRun>().Select(text => (Around(text), text))];

    public static bool Overlaps(Area a, Area b) =>
        a.X < b.Right - 0.02 && b.X < a.Right - 0.02 && a.Y < b.Bottom - 0.02 && b.Y < a.Bottom - 0.02;

    public static Area Around(TextRun text)
    {
        var left = text.At.X - text.Anchor switch { TextAnchor.Middle => text.Width / 2, TextAnchor.End => text.Width, _ => 0 };
        return new Area(left, text.At.Y - Above * text.Style.Size, text.Width, (Above + Below) * text.Style.Size);
    }

    private static IEnumerable<Shape> Flat(Shape shape) => shape is Group group ? group.Shapes.SelectMany(Flat) : [shape];
}
