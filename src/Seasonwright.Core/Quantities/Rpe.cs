using System.Globalization;

namespace Seasonwright.Core.Quantities;

/// <summary>Rating of perceived exertion on the 0 to 10 scale, in halves.</summary>
/// <remarks>Category-ratio scale: Borg G 1982, Med Sci Sports Exerc 14(5):377-381 (from memory); session form: Foster et al. 2001.</remarks>
public readonly record struct Rpe
{
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 10 or not a multiple of one half.</exception>
    public Rpe(decimal value)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(value);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, 10m);
        if (value * 2 != decimal.Truncate(value * 2)) throw new ArgumentOutOfRangeException(nameof(value), value, "RPE is given in halves.");
        Value = Plain.Of(value);
    }

    public decimal Value { get; }

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"RPE {Value:0.#}");
}
