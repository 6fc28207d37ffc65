using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rooms;

/// <summary>A season whose sessions may be in a room.</summary>
/// <param name="Athletes">How many a session is for; null where nobody knows.</param>
public sealed record RoomUser(Season Season, Setup Setup, Func<Session, int?> Athletes)
{
    public string TeamName => Setup.TeamName.Length > 0 ? Setup.TeamName : Season.Team.Name;
}
