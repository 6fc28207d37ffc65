using MathNet.Numerics.Distributions;

namespace Seasonwright.Core.Strength;

/// <summary>The straight line of y on x with the least squares of y left over.</summary>
/// <param name="R2">Share of the variance of y that the line explains, 0 to 1; not a number where every y is the same.</param>
/// <param name="Error">Standard error of the estimate in the unit of y, n - 2 below; null for two points, which lie on their line.</param>
/// <param name="Count">Points.</param>
/// <param name="Mean">Of x and of y: the line passes there.</param>
/// <param name="SquaresOfX">Sum of the squared distances of x from its mean.</param>
public sealed record FittedLine(double Slope, double Intercept, double R2, double? Error, int Count, (double X, double Y) Mean, double SquaresOfX)
{
    /// <exception cref="ArgumentException">Fewer than two different x.</exception>
    public static FittedLine Of(IReadOnlyCollection<(double X, double Y)> points)
    {
        if (points.Select(point => point.X).Distinct().Count() < 2) throw new ArgumentException("A line needs two different x.", nameof(points));
        var (x, y) = (points.Average(point => point.X), points.Average(point => point.Y));
        var xx = points.Sum(point => (point.X - x) * (point.X - x));
        var slope = points.Sum(point => (point.X - x) * (point.Y - y)) / xx;
        var intercept = y - slope * x;
        // What is left over is added up itself: as a difference of two large sums it would be lost.
        var left = points.Sum(point => (point.Y - y - slope * (point.X - x)) * (point.Y - y - slope * (point.X - x)));
        return new(slope, intercept, 1 - left / points.Sum(point => (point.Y - y) * (point.Y - y)), points.Count > 2 ? Math.Sqrt(left / (points.Count - 2)) : null, points.Count, (x, y), xx);
    }

    public double YAt(double x) => Intercept + Slope * x;

    /// <summary>Where the line reaches y.</summary>
    public double XAt(double y) => (y - Intercept) / Slope;

    /// <summary>
    /// The calibration interval of the x at which one more observation would be y: all x whose prediction interval for one observation
    /// holds y. Null for two points, and where the slope is so uncertain that the interval has no end.
    /// </summary>
    /// <param name="confidence">Between 0 and 1.</param>
    /// <remarks>Classical calibration by Fieller's theorem: Draper NR, Smith H, Applied Regression Analysis, inverse regression (from memory); checked against R's prediction intervals.</remarks>
    public (double Low, double High)? XIntervalAt(double y, double confidence = 0.95)
    {
        if (Error is not { } error) return null;
        var t = StudentT.InvCDF(0, 1, Count - 2, (1 + confidence) / 2) * error;
        // (d - slope u)^2 <= t^2 (1 + 1/n + u^2 / xx), u counted from the mean of x.
        var (d, steep) = (y - Mean.Y, Slope * Slope - t * t / SquaresOfX);
        if (!(steep > 0)) return null;
        var wide = t * Math.Sqrt(d * d / SquaresOfX + steep * (1 + 1d / Count));
        var (one, other) = (Mean.X + (Slope * d - wide) / steep, Mean.X + (Slope * d + wide) / steep);
        return (Math.Min(one, other), Math.Max(one, other));
    }
}
