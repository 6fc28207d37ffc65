using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rooms;

/// <summary>A room of the club, and what there is in it.</summary>
/// <param name="Gym">What there is to lift with in it; null where each team says it for itself.</param>
public sealed record Facility(Room Room, Gym? Gym = null)
{
    public const int MostHours = 42, MostClosed = 100;
}
