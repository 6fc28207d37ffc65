namespace Seasonwright.Core.Strength;

/// <summary>How far the estimates of all equations lie apart, in the unit of the load, not rounded.</summary>
/// <param name="Median">Half-way between the two in the middle.</param>
public sealed record RepMaxSpread(double Least, double Median, double Greatest)
{
    /// <inheritdoc cref="RepMaxEquation.OneRepMax"/>
    public static RepMaxSpread Of(double load, int repetitions)
    {
        var estimates = RepMaxEquation.All.Select(equation => equation.OneRepMax(load, repetitions)).Order().ToList();
        return new(estimates[0], (estimates[(estimates.Count - 1) / 2] + estimates[estimates.Count / 2]) / 2, estimates[^1]);
    }
}
