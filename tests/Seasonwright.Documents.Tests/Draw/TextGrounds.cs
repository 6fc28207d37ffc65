using Seasonwright.Core;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Tests.Draw;

/// <summary>
/// Finds texts that a drawing puts on a ground their look does not declare, so that the contrast checks of
/// <see cref="PaletteTests"/> cover every pair that is really drawn.
/// </summary>
internal static class TextGrounds
{
    /// <param name="paper">The tint beneath the track, where nothing is painted.</param>
    public static IEnumerable<string> Undeclared(TrackDrawing track, Tint paper)
    {
        var marks = track.Marks.SelectMany(Flat).ToList();
        for (var i = 0; i < marks.Count; i++)
        {
            if (marks[i] is not TextRun text)
                continue;
            foreach (var place in Places(text))
            {
                var ground = marks.Take(i).Select(mark => Fill(mark, place)).LastOrDefault(tint => tint is not null) ?? paper;
                if (!text.Look.On.Contains(ground))
                    yield return $"{track.Id}: '{text.Text}' ({text.Look.Name}) on {ground.Name}";
            }
        }
    }

    private static IEnumerable<Shape> Flat(Shape shape) => shape is Group group ? group.Shapes.SelectMany(Flat) : [shape];

    /// <summary>Begin, middle and end of the text at half the height of a small letter (about a quarter of an em).</summary>
    private static IEnumerable<Point> Places(TextRun text)
    {
        var left = text.At.X - text.Anchor switch
        {
            TextAnchor.Middle => text.Width / 2,
            TextAnchor.End => text.Width,
            _ => 0,
        };
        double[] shares = [0.05, 0.5, 0.95];
        return shares.Select(share => new Point(left + share * text.Width, text.At.Y - text.Style.Size / 4));
    }

    private static Tint? Fill(Shape shape, Point place) => shape switch
    {
        Box box when box.Area.Contains(place) => box.Look.Fill,
        Circle circle when double.Hypot(place.X - circle.Centre.X, place.Y - circle.Centre.Y) <= circle.Radius => circle.Look.Fill,
        Polygon polygon when Inside(polygon.Points, place) => polygon.Look.Fill,
        _ => null,
    };

    private static bool Inside(ValueList<Point> corners, Point place)
    {
        var inside = false;
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Count]);
            if (a.Y > place.Y != b.Y > place.Y && place.X < (b.X - a.X) * (place.Y - a.Y) / (b.Y - a.Y) + a.X)
                inside = !inside;
        }
        return inside;
    }
}
