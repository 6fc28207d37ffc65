using System.Globalization;

namespace Seasonwright.Core.Quantities;

/// <summary>Whole per cent, 0 to 300.</summary>
public readonly record struct Percent : IComparable<Percent>
{
    public const int Most = 300;

    /// <exception cref="ArgumentOutOfRangeException">Below 0 or above <see cref="Most"/>.</exception>
    public Percent(int value)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(value);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, Most);
        Value = value;
    }

    public int Value { get; }

    public int CompareTo(Percent other) => Value.CompareTo(other.Value);

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Value} %");
}
