namespace Seasonwright.Core.Rooms;

/// <summary>What can be wrong with a place in a room's week.</summary>
public enum RoomClashKind
{
    /// <summary>More athletes than places.</summary>
    Places,

    /// <summary>More teams than coaches who can supervise.</summary>
    Coaches,

    /// <summary>The day is not one of the week's.</summary>
    OtherWeek,

    /// <summary>The room is not open for the whole of the session.</summary>
    NotOpen,

    /// <summary>Outside the times at which the session can be.</summary>
    Window,

    /// <summary>The team is at practice.</summary>
    Practice,

    /// <summary>The team has a match that day.</summary>
    MatchDay,

    /// <summary>Heavy work for the legs on one of the two days before a match.</summary>
    HeavyBefore,

    /// <summary>Heavy work for the legs on the day after a match.</summary>
    HeavyAfter,

    /// <summary>Two sessions of one team on a day.</summary>
    TwiceADay,

    /// <summary>Two heavy sessions of one team less than 48 hours apart, from start to start.</summary>
    HeavyApart,
}
