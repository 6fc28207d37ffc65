using System.Globalization;

namespace Seasonwright.Core.Quantities;

/// <summary>A load as per cent of the one-repetition maximum (%1RM): above 0 to 200, to one decimal. Above 100 for partial lifts and slow lowering.</summary>
public readonly record struct Intensity : IComparable<Intensity>
{
    public const decimal Most = 200;

    /// <exception cref="ArgumentOutOfRangeException">0, below it, above <see cref="Most"/>, or finer than a tenth.</exception>
    public Intensity(decimal percent)
    {
        if (!IsPossible(percent)) throw new ArgumentOutOfRangeException(nameof(percent), percent, $"An intensity is above 0 and at most {Most} % of 1RM, to one decimal.");
        Percent = percent / 1.000000000000000000m;
    }

    public decimal Percent { get; }

    public static bool IsPossible(decimal percent) => percent is > 0 and <= Most && decimal.IsInteger(percent * 10);

    /// <summary>The load in the unit of the maximum, exact.</summary>
    public decimal Of(decimal oneRepMax) => oneRepMax * Percent / 100;

    public int CompareTo(Intensity other) => Percent.CompareTo(other.Percent);

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Percent:0.#} % of 1RM");
}
