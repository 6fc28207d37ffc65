using System.Globalization;
using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Squad;

/// <summary>A body mass as it was entered, in the unit entered; nothing is rounded.</summary>
/// <remarks>The international yard and pound of 1959: 1 lb is 0.45359237 kg exactly; a stone is 14 lb.</remarks>
public sealed record BodyMass
{
    /// <summary>Kilograms that a player's body may have: from a small child to the heaviest athletes. Common practice, no source.</summary>
    public const decimal Least = 20, Most = 250;

    /// <param name="poundsOver">Beside stones: the pounds over, 0 and below 14. Otherwise 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside <see cref="Least"/> to <see cref="Most"/> kg, or pounds over where they cannot be.</exception>
    public BodyMass(decimal amount, BodyMassUnit unit, decimal poundsOver = 0)
    {
        if (poundsOver is < 0 or >= 14 || (poundsOver > 0 && unit != BodyMassUnit.Stone)) throw new ArgumentOutOfRangeException(nameof(poundsOver), poundsOver, "Pounds over stand beside stones only, below 14.");
        (Amount, Unit, PoundsOver) = (Plain.Of(amount), unit, Plain.Of(poundsOver));
        if (amount is < 0 or > 10_000 || !IsPossible(Kilograms)) throw new ArgumentOutOfRangeException(nameof(amount), amount, $"A body mass lies between {Least} and {Most} kg.");
    }

    public decimal Amount { get; }

    public BodyMassUnit Unit { get; }

    public decimal PoundsOver { get; }

    /// <summary>Exact.</summary>
    public decimal Kilograms => Unit switch
    {
        BodyMassUnit.Pound => Amount * Weight.KilogramsInPound,
        BodyMassUnit.Stone => (Amount * 14 + PoundsOver) * Weight.KilogramsInPound,
        _ => Amount,
    };

    public static bool IsPossible(decimal kilograms) => kilograms is >= Least and <= Most;

    /// <summary>"71.5 kg", "141 lb", "15 st 2 lb".</summary>
    public override string ToString() => Unit switch
    {
        BodyMassUnit.Stone when PoundsOver > 0 => string.Create(CultureInfo.InvariantCulture, $"{Amount:0.###} st {PoundsOver:0.###} lb"),
        BodyMassUnit.Stone => string.Create(CultureInfo.InvariantCulture, $"{Amount:0.###} st"),
        BodyMassUnit.Pound => string.Create(CultureInfo.InvariantCulture, $"{Amount:0.###} lb"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{Amount:0.###} kg"),
    };
}
