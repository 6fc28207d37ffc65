using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Seasons;

/// <summary>What there is to train with at home.</summary>
/// <param name="Equipment">Each once. Dumbbells or a kettlebell named here are there, and nobody knows how heavy they are.</param>
/// <param name="Dumbbells">A pair of each weight; null where none are there, or their weights are not known.</param>
/// <param name="Kettlebells">Of one the lightest is the heaviest; null where none is there, or its weight is not known.</param>
public sealed record HomeKit(ValueList<Equipment> Equipment, WeightSteps? Dumbbells = null, WeightSteps? Kettlebells = null)
{
    /// <summary>Nothing but the body and a floor.</summary>
    public static HomeKit Nothing { get; } = new([]);

    /// <summary>Everything exercises can be done with.</summary>
    public IEnumerable<Equipment> AtHand => Equipment
        .Concat(Dumbbells is null ? [] : [Seasons.Equipment.Dumbbells])
        .Concat(Kettlebells is null ? [] : [Seasons.Equipment.Kettlebell]).Distinct();
}
