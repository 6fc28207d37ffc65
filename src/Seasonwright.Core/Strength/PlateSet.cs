using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Strength;

/// <summary>The plates of a rack, in one unit, and the collars that hold them.</summary>
public sealed record PlateSet
{
    /// <summary>Different masses of a set.</summary>
    public const int MostMasses = 24;

    /// <param name="plates">In any order; a mass that stands twice has the pairs of both.</param>
    /// <param name="collar">Mass of one collar, 0 for none that is counted.</param>
    /// <exception cref="ArgumentOutOfRangeException">More than <see cref="MostMasses"/>, or a collar below 0.</exception>
    public PlateSet(MassUnit unit, IEnumerable<PlatePair> plates, decimal collar = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(collar);
        Unit = unit;
        Plates = plates.GroupBy(pair => pair.Mass).OrderByDescending(pairs => pairs.Key)
            .Select(pairs => new PlatePair(pairs.Key, pairs.Any(pair => pair.Pairs is null) ? null : pairs.Sum(pair => pair.Pairs))).ToValueList();
        ArgumentOutOfRangeException.ThrowIfGreaterThan(Plates.Count, MostMasses, nameof(plates));
        Collar = collar / 1.000000000000000000m;
    }

    /// <summary>Discs of weightlifting with collars of 2.5 kg. IWF Technical and Competition Rules, as two public equipment pages quote them.</summary>
    public static PlateSet Competition { get; } = Of(MassUnit.Kilogram, 2.5m, 25, 20, 15, 10, 5, 2.5m, 2, 1.5m, 1, 0.5m);

    /// <summary>Common practice, from memory.</summary>
    public static PlateSet GymKilograms { get; } = Of(MassUnit.Kilogram, 0, 25, 20, 15, 10, 5, 2.5m, 1.25m);

    /// <summary>Common practice, from memory.</summary>
    public static PlateSet GymPounds { get; } = Of(MassUnit.Pound, 0, 45, 35, 25, 10, 5, 2.5m);

    public MassUnit Unit { get; }

    /// <summary>Heaviest first, each mass once.</summary>
    public ValueList<PlatePair> Plates { get; }

    public decimal Collar { get; }

    /// <summary>The same plates without collars, or with others.</summary>
    public PlateSet WithCollar(decimal collar) => new(Unit, Plates, collar);

    private static PlateSet Of(MassUnit unit, decimal collar, params ReadOnlySpan<decimal> masses) => new(unit, [.. masses.ToArray().Select(mass => new PlatePair(mass))], collar);
}
