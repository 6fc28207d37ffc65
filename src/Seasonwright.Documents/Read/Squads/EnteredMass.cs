using System.Globalization;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>A mass as somebody entered it, in the unit entered; nothing is converted or rounded.</summary>
/// <param name="Amount">Above 0, at most three decimals.</param>
/// <param name="Pounds">Beside stones: the pounds over, below 14. Otherwise 0.</param>
public sealed record EnteredMass(decimal Amount, MassUnit Unit, decimal Pounds = 0)
{
    // The international yard and pound of 1959: 1 lb is 0.45359237 kg exactly; a stone is 14 lb.
    private const decimal KilogramsInPound = 0.45359237m;

    /// <summary>In kilograms, not rounded: for checking what is possible and for comparing.</summary>
    public decimal Kilograms => Unit switch
    {
        MassUnit.Pound => Amount * KilogramsInPound,
        MassUnit.Stone => (Amount * 14 + Pounds) * KilogramsInPound,
        _ => Amount,
    };

    /// <summary>"71.5 kg", "141 lb", "15 st 2 lb".</summary>
    public override string ToString() => Unit switch
    {
        MassUnit.Stone when Pounds > 0 => string.Create(CultureInfo.InvariantCulture, $"{Amount:0.###} st {Pounds:0.###} lb"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{Amount:0.###} {Unit.Word()}"),
    };
}

/// <summary>Units in which people write masses.</summary>
public enum MassUnit
{
    Kilogram,
    Pound,
    Stone,
}

/// <summary>Units in words.</summary>
public static class MassUnits
{
    /// <summary>"kg", "lb" or "st".</summary>
    public static string Word(this MassUnit unit) => unit switch { MassUnit.Pound => "lb", MassUnit.Stone => "st", _ => "kg" };
}
