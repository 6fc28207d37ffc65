namespace Seasonwright.Core.Strength;

/// <summary>A published relation of one lift, over many people, from velocity to the share of the maximum: a square polynomial of velocity.</summary>
/// <remarks>The coefficients are from memory; at the velocities printed for the maximum they give 100.8 and 100.2 %.</remarks>
public sealed record VelocityRelation(string Lift, double Square, double Linear, double Constant, string Citation)
{
    /// <summary>m/s; beyond it nobody was measured.</summary>
    public const double MostVelocity = 1.5;

    public static VelocityRelation BenchPress { get; } = new(VelocityThreshold.BenchPress.Lift, 8.4326, -73.501, 112.33, VelocityThreshold.BenchPress.Citation);

    public static VelocityRelation FullSquat { get; } = new(VelocityThreshold.FullSquat.Lift, -5.961, -50.71, 117.0, VelocityThreshold.FullSquat.Citation);

    /// <summary>Per cent of 1RM, not rounded; below the velocity of the maximum itself above 100.</summary>
    /// <param name="velocity">Mean propulsive velocity, m/s, above 0 to <see cref="MostVelocity"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside.</exception>
    public double Percent(double velocity) => velocity is > 0 and <= MostVelocity
        ? (Square * velocity + Linear) * velocity + Constant : throw new ArgumentOutOfRangeException(nameof(velocity), velocity, $"A velocity is above 0 and at most {MostVelocity} m/s here.");
}
