using System.Globalization;

namespace Seasonwright.Core.Quantities;

/// <summary>Training load in whole arbitrary units (AU): minutes x RPE, summed over sessions. 0 to 30,000.</summary>
/// <remarks>Session RPE method: Foster C et al. 2001, A new approach to monitoring exercise training, J Strength Cond Res 15(1):109-115.</remarks>
public readonly record struct Load : IComparable<Load>
{
    public const int Most = 30_000;

    /// <exception cref="ArgumentOutOfRangeException">Below 0 or above <see cref="Most"/>.</exception>
    public Load(int au)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(au);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(au, Most);
        Au = au;
    }

    public int Au { get; }

    public static Load Zero => default;

    /// <summary>Minutes times RPE, rounded half away from zero.</summary>
    public static Load Of(Minutes minutes, Rpe rpe) => new((int)Math.Round(minutes.Value * rpe.Value, MidpointRounding.AwayFromZero));

    public static Load operator +(Load a, Load b) => new(Math.Min(Most, a.Au + b.Au));

    /// <summary>Kept within 0 and <see cref="Most"/>, whatever the number of times.</summary>
    public static Load operator *(int times, Load load) => new((int)Math.Clamp((long)times * load.Au, 0, Most));

    /// <summary>Share of the squad's normal hard week in whole per cent, rounded half away from zero.</summary>
    public Percent PercentOf(Load reference) =>
        new((int)Math.Min(Percent.Most, Math.Round(100m * Au / Math.Max(1, reference.Au), MidpointRounding.AwayFromZero)));

    /// <summary>The load that is <paramref name="percent"/> of a normal hard week, rounded to whole AU.</summary>
    public static Load FromPercent(Percent percent, Load reference) =>
        new(Math.Min(Most, (int)Math.Round(percent.Value * (decimal)reference.Au / 100m, MidpointRounding.AwayFromZero)));

    public int CompareTo(Load other) => Au.CompareTo(other.Au);

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Au} AU");
}
