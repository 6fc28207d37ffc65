using System.Text.Json.Serialization;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Strength;

namespace Seasonwright.Cli;

/// <summary>A load-velocity profile as <c>velocity</c> gives it to scripts: nothing rounded; docs/commands.md describes the fields.</summary>
internal sealed record VelocityReport(
    string Direction, double Slope, double Intercept, double R2, double? See, double L0, double Threshold, string Unit,
    [property: JsonPropertyName("oneRepMax")] double OneRepMax, IReadOnlyList<double>? Interval, int Points, [property: JsonPropertyName("otherDirection")] VelocityOtherWay OtherDirection)
{
    public static VelocityReport Of(VelocityProfile profile, double threshold, VelocityOneRepMax estimate, MassUnit unit)
    {
        var (line, other) = (profile.VelocityOnLoad, profile.LoadOnVelocity);
        return new("velocity on load", line.Slope, line.Intercept, line.R2, line.Error, profile.LoadAtRest, threshold, unit == MassUnit.Pound ? "lb" : "kg",
            estimate.Load, estimate.Interval is var (low, high) ? [low, high] : null, line.Count, new("load on velocity", other.Slope, other.Intercept, estimate.OtherDirection));
    }
}

/// <summary>The same points with load as what is measured.</summary>
internal sealed record VelocityOtherWay(string Direction, double Slope, double Intercept, [property: JsonPropertyName("oneRepMax")] double OneRepMax);
