namespace Seasonwright.Core.Loads;

/// <summary>How alike the days of a week are: the mean daily load divided by its standard deviation, rest days as 0.</summary>
/// <remarks>Foster C 1998, Monitoring training in athletes with reference to overtraining syndrome, Med Sci Sports Exerc 30(7):1164-1168.</remarks>
public static class Monotony
{
    /// <param name="daily">AU of each day, rest days as 0; two days and more. A day that is not known must not be in it as 0.</param>
    /// <returns>Without a unit, above 0; null where every day is the same, so that it is not defined.</returns>
    /// <exception cref="ArgumentException">Fewer than two days.</exception>
    public static double? Of(ReadOnlySpan<double> daily, Spread spread = Spread.Sample)
    {
        if (daily.Length < 2) throw new ArgumentException("Monotony needs two days and more.", nameof(daily));
        // Asked of the days themselves: binary fractions leave their deviation a little above 0.
        if (daily.IndexOfAnyExcept(daily[0]) < 0) return null;
        var mean = Mean(daily);
        var squares = 0d;
        foreach (var load in daily) squares += (load - mean) * (load - mean);
        var deviation = Math.Sqrt(squares / (spread == Spread.Sample ? daily.Length - 1 : daily.Length));
        return deviation > 0 ? mean / deviation : null;
    }

    /// <summary>Strain: the load of the days times their monotony, in AU; null where monotony is not defined, of a single day too.</summary>
    public static double? Strain(ReadOnlySpan<double> daily, Spread spread = Spread.Sample) =>
        daily.Length >= 2 && Of(daily, spread) is { } monotony ? Mean(daily) * daily.Length * monotony : null;

    private static double Mean(ReadOnlySpan<double> daily)
    {
        var sum = 0d;
        foreach (var load in daily) sum += load;
        return sum / daily.Length;
    }
}
