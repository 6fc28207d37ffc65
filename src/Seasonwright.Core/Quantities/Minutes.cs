using System.Globalization;

namespace Seasonwright.Core.Quantities;

/// <summary>A length of time in whole minutes, 0 to 1,440.</summary>
public readonly record struct Minutes
{
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or above a day.</exception>
    public Minutes(int value)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(value);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, 1440);
        Value = value;
    }

    public int Value { get; }

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Value} min");
}
