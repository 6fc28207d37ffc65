using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rooms;

/// <summary>A session that a team asks the room for.</summary>
/// <param name="IsHeavy">Heavy work for the legs: it keeps its distance from matches and from others of its kind.</param>
/// <param name="Day">The day it would best be on; null for any.</param>
/// <param name="Start">When it would best begin, on the half hour; null for any time.</param>
/// <param name="Windows">When it can be at all; null for the whole week.</param>
/// <param name="Place">Where it stands; null while it has no place.</param>
/// <param name="Groups">Of the team, whom it is for; null for everyone.</param>
public sealed record RoomAsk(
    SessionId Id,
    string Name,
    int Athletes,
    Minutes Minutes,
    bool IsHeavy = false,
    DateOnly? Day = null,
    TimeOnly? Start = null,
    ValueList<RoomWindow>? Windows = null,
    RoomPlace? Place = null,
    ValueList<GroupId>? Groups = null)
{
    public const int LeastMinutes = 15, MostMinutes = 240;

    /// <summary>Whether somebody of the team is in this and in what is for these groups; null stands for everyone.</summary>
    public bool Shares(ValueList<GroupId>? others) => Groups is null || others is null || Groups.Any(others.Contains);

    /// <summary>The minute of the day at which it would end.</summary>
    public int End(TimeOnly start) => Clock.Minute(start) + Minutes.Value;
}
