using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Setups;

/// <summary>What a team has to lift with.</summary>
/// <param name="Racks">1 to 40, each with its own bar and plates.</param>
/// <param name="Dumbbells">Null where there are none.</param>
/// <param name="Kettlebells">Null where there are none.</param>
/// <param name="StackStep">From one pin of a machine or cable to the next; null where there are no machines.</param>
/// <param name="Equipment">What there is besides racks, bars and dumbbells.</param>
/// <param name="TrapBar">Mass of the trap bar, which takes the plates of a rack; null for the mass of the rack's own bar.</param>
/// <param name="NeverAbove">Weights are rounded down; else to the nearest that can be loaded.</param>
/// <param name="Counts">How many there are of what is not a rack, each once; what is not named was not counted and is never said to be short.</param>
/// <param name="AtOne">Athletes who share a rack at most, 1 to 12; null for <see cref="UsualAtOne"/>.</param>
public sealed record Gym(
    ValueList<GymRack> Racks,
    WeightSteps? Dumbbells,
    WeightSteps? Kettlebells,
    Weight? StackStep,
    ValueList<Equipment> Equipment,
    Weight? TrapBar = null,
    bool NeverAbove = false,
    ValueList<EquipmentCount>? Counts = null,
    int? AtOne = null)
{
    public const int MostRacks = 40, MostAtOne = 12;

    /// <summary>Three rest while one lifts. Common practice, no source.</summary>
    public const int UsualAtOne = 4;

    /// <summary>How many of a thing there are; null where nobody counted.</summary>
    public int? CountOf(Equipment one) => Counts?.FirstOrDefault(count => count.Equipment == one)?.Count;

    /// <summary>What a team that said nothing is taken to have: plates as common gyms have them, in the team's unit. Common practice, no source.</summary>
    public static Gym Usual(MassUnit unit) => unit == MassUnit.Pound
        ? new([GymRack.Usual(unit)], new(5, 100, 5, unit), new(10, 70, 5, unit), new Weight(10, unit), All)
        : new([GymRack.Usual(unit)], new(2, 40, 2, unit), new(8, 32, 4, unit), new Weight(5), All);

    /// <summary>Everything exercises can be done with: what is named, and what racks, dumbbells and kettlebells come to. A trap bar takes the plates of a rack.</summary>
    public IEnumerable<Equipment> AtHand
    {
        get
        {
            var hasBar = Racks.Any(rack => !rack.IsBroken);
            return Equipment.Where(one => one switch { Seasons.Equipment.Barbell or Seasons.Equipment.Rack or Seasons.Equipment.Dumbbells or Seasons.Equipment.Kettlebell => false, Seasons.Equipment.TrapBar => hasBar, _ => true })
                .Concat(hasBar ? [Seasons.Equipment.Barbell, Seasons.Equipment.Rack] : [])
                .Concat(Racks.Any(rack => rack is { IsBroken: false, HasPlatform: true }) ? [Seasons.Equipment.Platform] : [])
                .Concat(Dumbbells is null ? [] : [Seasons.Equipment.Dumbbells])
                .Concat(Kettlebells is null ? [] : [Seasons.Equipment.Kettlebell]);
        }
    }

    private static ValueList<Equipment> All { get; } = Enum.GetValues<Equipment>().ToValueList();
}
