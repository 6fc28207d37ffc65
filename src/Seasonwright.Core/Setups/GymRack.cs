using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Setups;

/// <summary>A rack or platform with its bar and its plates.</summary>
/// <param name="Name">As it is called in the room: "1", "Window".</param>
/// <param name="Bar">0 excluded.</param>
/// <param name="Plates">In the unit of the bar, at most 24 masses; none for a bar alone.</param>
/// <param name="Collar">Mass of one collar; 0 where it is not counted.</param>
/// <param name="HasPlatform">A bar may be dropped there.</param>
/// <param name="IsBroken">Nobody can be sent there for now.</param>
public sealed record GymRack(string Name, Weight Bar, ValueList<RackPlate> Plates, decimal Collar = 0, bool HasPlatform = false, bool IsBroken = false)
{
    public const int MostPlates = 24;

    public decimal Collar { get; init => field = Plain.Of(value); } = Plain.Of(Collar);

    /// <summary>Plates as common gyms have them. From memory.</summary>
    public static GymRack Usual(MassUnit unit) => unit == MassUnit.Pound
        ? new("1", new Weight(45, unit), [new(45, 4), new(35), new(25), new(10, 2), new(5), new(2.5m)])
        : new("1", new Weight(20), [new(25, 2), new(20, 2), new(15), new(10, 2), new(5), new(2.5m), new(1.25m)]);
}

/// <summary>Plates of one mass.</summary>
/// <param name="Mass">Of one, to thousandths, up to 250 in the rack's unit.</param>
/// <param name="Pairs">On hand, 1 to 20.</param>
public sealed record RackPlate(decimal Mass, int Pairs = 1)
{
    public const decimal MostMass = 250;

    public decimal Mass { get; init => field = Plain.Of(value); } = Plain.Of(Mass);

    public const int MostPairs = 20;
}
