using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Setups;

/// <summary>How many of a thing there are, of dumbbells and kettlebells of each mass.</summary>
/// <param name="Count">In use at one time, 1 to 100; of dumbbells pairs.</param>
public sealed record EquipmentCount(Equipment Equipment, int Count)
{
    public const int Most = 100;
}
