namespace Seasonwright.Core.Strength;

/// <summary>Plates of one mass, of which one goes on each side.</summary>
/// <remarks>A mass is above 0 and given to thousandths, so that sums are exact.</remarks>
public readonly record struct PlatePair
{
    /// <param name="mass">Of one plate, in the unit of its set.</param>
    /// <param name="pairs">On hand, 1 and more; null for as many as needed.</param>
    /// <exception cref="ArgumentOutOfRangeException">No mass, one finer than thousandths, or no pair.</exception>
    public PlatePair(decimal mass, int? pairs = null)
    {
        if (!IsPossible(mass)) throw new ArgumentOutOfRangeException(nameof(mass), mass, $"A plate is above 0 and at most {MostMass}, to thousandths.");
        if (pairs < 1) throw new ArgumentOutOfRangeException(nameof(pairs), pairs, "Plates on hand are a pair at least.");
        (Mass, Pairs) = (mass / 1.000000000000000000m, pairs);
    }

    /// <summary>No plate is as heavy, in either unit.</summary>
    public const decimal MostMass = 250;

    public decimal Mass { get; }

    public int? Pairs { get; }

    public static bool IsPossible(decimal mass) => mass is > 0 and <= MostMass && decimal.IsInteger(mass * 1_000);
}
