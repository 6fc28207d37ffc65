namespace Seasonwright.Core.Strength;

/// <summary>The load-velocity profile of one athlete in one lift: how the velocity of the fastest repetition falls as load rises.</summary>
/// <param name="VelocityOnLoad">The profile: loads are set, velocities measured. Of two points their own line (the two-point method).</param>
/// <param name="LoadOnVelocity">The other direction, which some print and which gives other figures.</param>
public sealed record VelocityProfile(ValueList<VelocityPoint> Points, FittedLine VelocityOnLoad, FittedLine LoadOnVelocity)
{
    /// <summary>A maximum at more than so many times the heaviest load lifted says nothing. Common practice, no source.</summary>
    public const double MostTimesLifted = 3;

    /// <summary>Load at which the line reaches no velocity (L0), in the unit of the loads.</summary>
    public double LoadAtRest => VelocityOnLoad.XAt(0);

    /// <returns>The profile, or why there is none.</returns>
    public static (VelocityProfile? Profile, VelocityTrouble? Trouble) Of(IEnumerable<VelocityPoint> points)
    {
        var list = points.ToValueList();
        if (list.Select(point => point.Load).Distinct().Count() < 2) return (null, VelocityTrouble.OneLoad);
        var line = FittedLine.Of([.. list.Select(point => (point.Load, point.Velocity))]);
        // Equal velocities leave a slope of a few rounding errors.
        if (!(line.Slope < 0) || list.Select(point => point.Velocity).Distinct().Count() < 2) return (null, VelocityTrouble.NotFalling);
        return (new(list, line, FittedLine.Of([.. list.Select(point => (point.Velocity, point.Load))])), null);
    }

    /// <summary>The maximum: the load at which the line reaches the velocity of a single that can just be lifted.</summary>
    /// <param name="threshold">m/s, above 0.</param>
    /// <returns>The estimate, or why there is none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No threshold.</exception>
    public (VelocityOneRepMax? Estimate, VelocityTrouble? Trouble) OneRepMax(double threshold)
    {
        if (!(threshold > 0)) throw new ArgumentOutOfRangeException(nameof(threshold), threshold, "A threshold is above 0.");
        var heaviest = Points.Max(point => point.Load);
        if (threshold >= VelocityOnLoad.Intercept) return (null, VelocityTrouble.BelowThreshold);
        var load = VelocityOnLoad.XAt(threshold);
        if (load > MostTimesLifted * heaviest) return (null, VelocityTrouble.FarFromLifted);
        var interval = VelocityOnLoad.XIntervalAt(threshold) is var (low, high) ? (Math.Max(0, low), high) : ((double, double)?)null;
        return (new(load, interval, LoadOnVelocity.YAt(threshold), heaviest / load), null);
    }
}
