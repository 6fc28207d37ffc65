using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Year;

/// <summary>Small marks beneath a week's number: a padlock, a tick.</summary>
internal static class WeekMarks
{
    public static IEnumerable<Shape> Locked(Point centre) =>
    [
        new Circle(new(centre.X, centre.Y - 1.4), 1.8, Looks.MatchDay),
        new Box(new(centre.X - 2.8, centre.Y - 1, 5.6, 4), Looks.MatchHome, 0.8),
    ];

    public static IEnumerable<Shape> Ready(Point centre) =>
        [new Polyline([new(centre.X - 3, centre.Y), new(centre.X - 0.8, centre.Y + 2.2), new(centre.X + 3, centre.Y - 2.4)], Looks.MatchDay)];
}
