using Seasonwright.Core.Rooms;

namespace Seasonwright.Solver;

/// <summary>What a place costs beside what was wished for, in half hours. Common practice, no source.</summary>
internal static class RoomPrices
{
    /// <summary>Each day from the day that would be best.</summary>
    public const int ADay = 3;

    /// <summary>Less time than it takes to change over from practice, or to it.</summary>
    public const int InAHurry = 2;

    /// <summary>Minutes between a practice and the room.</summary>
    public const int ChangeOver = 15;

    /// <summary>A session that stands, is not locked, and does not stay: it is elsewhere, or has no place any more.</summary>
    public const int Moved = 2;

    public static int Of(RoomWeek week, RoomTeam team, RoomAsk ask, RoomSlot slot) =>
        (ask.Start is { } start ? Math.Abs(Clock.Minute(start) - slot.Minute) / Clock.HalfHour : 0)
        + (ask.Day is { } day ? ADay * Math.Abs(day.DayNumber - slot.DayOf(week).DayNumber) : 0)
        + (RoomConditions.IsBesidePractice(week, team, ask, slot, ChangeOver) ? InAHurry : 0)
        + (ask.Place is { } place && RoomSlot.Of(week, place.Day, place.Start) != slot ? Moved : 0);

    /// <summary>How hard it is on a team to miss so many of its sessions: the square of their share, in thousandths. A third of three hurts less than all of one.</summary>
    public static int Missing(int missed, int asked) => (1000 * missed * missed + asked * asked / 2) / (asked * asked);
}
