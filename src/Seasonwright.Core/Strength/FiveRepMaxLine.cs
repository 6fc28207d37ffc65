namespace Seasonwright.Core.Strength;

/// <summary>A published straight line of one lift from the load lifted five times to failure (5RM) to the maximum, both in kilograms.</summary>
/// <param name="Error">Standard error of the estimate, kg.</param>
/// <remarks>Reynolds JM et al. 2006, J Strength Cond Res 20(3):584-592.</remarks>
public sealed record FiveRepMaxLine(string Lift, double Slope, double Intercept, double Error)
{
    public const string Citation = "Reynolds JM et al. 2006, J Strength Cond Res 20(3):584-592";

    public static FiveRepMaxLine BenchPress { get; } = new("bench press", 1.1307, 0.6999, 2.98);

    public static FiveRepMaxLine LegPress { get; } = new("leg press", 1.0970, 14.2546, 16.16);

    /// <summary>Kilograms, not rounded.</summary>
    /// <param name="fiveRepMax">Kilograms, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">No load.</exception>
    public double OneRepMax(double fiveRepMax) => fiveRepMax > 0 ? Slope * fiveRepMax + Intercept : throw new ArgumentOutOfRangeException(nameof(fiveRepMax), fiveRepMax, "A load is above 0.");
}
