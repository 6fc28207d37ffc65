namespace Seasonwright.Core.Strength;

/// <summary>A load and the velocity of its fastest repetition, every one meant as fast as can be.</summary>
public sealed record VelocityPoint
{
    /// <summary>Metres a second; no bar that is lifted moves faster.</summary>
    public const double MostVelocity = 5;

    /// <summary>In either unit.</summary>
    public const double MostLoad = 2_204;

    /// <param name="load">Above 0, in any one unit.</param>
    /// <param name="velocity">Mean or mean propulsive velocity, m/s, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, or beyond the most.</exception>
    public VelocityPoint(double load, double velocity)
    {
        if (!(load is > 0 and <= MostLoad)) throw new ArgumentOutOfRangeException(nameof(load), load, $"A load is above 0 and at most {MostLoad}.");
        if (!(velocity is > 0 and <= MostVelocity)) throw new ArgumentOutOfRangeException(nameof(velocity), velocity, $"A velocity is above 0 and at most {MostVelocity} m/s.");
        (Load, Velocity) = (load, velocity);
    }

    public double Load { get; }

    public double Velocity { get; }
}
