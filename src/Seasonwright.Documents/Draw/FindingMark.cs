using Seasonwright.Core.Seasons;
using Seasonwright.Core;
using Seasonwright.Core.Rules;

namespace Seasonwright.Documents.Draw;

/// <summary>The mark of a finding: a ring for a caution, a square for a warning, an octagon for a stop, so that grey paper tells them apart.</summary>
public static class FindingMark
{
    /// <param name="radius">px from the centre to the outermost point.</param>
    public static Shape Of(Severity severity, Point centre, double radius) => severity switch
    {
        Severity.Caution => new Circle(centre, radius, Looks.CautionMark),
        Severity.Warning => new Box(new(centre.X - 0.85 * radius, centre.Y - 0.85 * radius, 1.7 * radius, 1.7 * radius), Looks.WarningMark),
        _ => new Polygon(Corners(centre, radius), Looks.StopMark),
    };

    private static ValueList<Point> Corners(Point centre, double radius) => new(Enumerable.Range(0, 8).Select(corner => Math.PI * (2 * corner + 1) / 8)
        .Select(angle => new Point(centre.X + radius * Math.Cos(angle), centre.Y + radius * Math.Sin(angle))));
}
