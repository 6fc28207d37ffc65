namespace Seasonwright.Documents.Draw;

/// <summary>
/// The drawing's grid of 1/100 px. Coordinates are put on it when a shape is born, so shapes that would paint the
/// same bytes are equal values, and a track is not sent again because of a rounding error far behind the point.
/// </summary>
internal static class Grid
{
    /// <summary>To two decimals, halves away from zero; never negative zero.</summary>
    public static double Snap(double value)
    {
        if (!double.IsFinite(value))
            throw new ArgumentOutOfRangeException(nameof(value), value, "A coordinate is a finite number.");
        return Math.Round(value, 2, MidpointRounding.AwayFromZero) + 0.0;
    }

    /// <summary>As <see cref="Snap"/>, and not below zero.</summary>
    public static double SnapLength(double value)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(value);
        return Snap(value);
    }
}
