using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rooms;

/// <summary>A team that asks for the room.</summary>
/// <param name="Practices">The head coach's, elsewhere: no athlete can be in both.</param>
/// <param name="Matches">Days of its matches, those shortly before and after the week too.</param>
public sealed record RoomTeam(TeamId Id, string Name, ValueList<RoomAsk> Sessions, ValueList<RoomPractice>? Practices = null, ValueList<DateOnly>? Matches = null)
{
    public bool HasMatch(DateOnly day) => Matches?.Contains(day) == true;
}
