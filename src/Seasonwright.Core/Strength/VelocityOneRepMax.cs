namespace Seasonwright.Core.Strength;

/// <summary>A maximum read off a load-velocity profile, in the unit of its loads, not rounded.</summary>
/// <param name="Interval">95 % calibration interval (see <see cref="FittedLine.XIntervalAt"/>), from 0 up; it does not hold that the threshold itself differs between people. Null where there is none.</param>
/// <param name="OtherDirection">What the line of load on velocity gives.</param>
/// <param name="ShareLifted">The heaviest load lifted, as a share of the maximum.</param>
public sealed record VelocityOneRepMax(double Load, (double Low, double High)? Interval, double OtherDirection, double ShareLifted)
{
    /// <summary>Below this share of the maximum the line is drawn far beyond what was measured. Common practice, no source.</summary>
    public const double NearShare = 0.8;

    public bool IsFar => ShareLifted < NearShare;

    /// <summary>More was lifted than the maximum: the athlete's own threshold is lower.</summary>
    public bool IsBelowLifted => ShareLifted > 1;
}
