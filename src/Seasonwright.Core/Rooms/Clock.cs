using System.Globalization;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rooms;

/// <summary>Times of a day as minutes, and as half hours, in which a room is planned.</summary>
public static class Clock
{
    public const int HalfHour = 30, Day = 24 * 60;

    public static int Minute(TimeOnly time) => 60 * time.Hour + time.Minute;

    /// <summary>The time of a minute of the day.</summary>
    public static TimeOnly Time(int minute) => new(minute / 60, minute % 60);

    /// <summary>Whether a time lies on the half hour.</summary>
    public static bool IsOnGrid(TimeOnly time) => time.Ticks % (HalfHour * TimeSpan.TicksPerMinute) == 0;

    /// <summary>The half hour that a time lies in begins then.</summary>
    public static TimeOnly Floor(TimeOnly time) => Time(Minute(time) / HalfHour * HalfHour);

    /// <summary>The part of the day that a time lies in: mornings end at noon, afternoons at six.</summary>
    public static DaySlot SlotOf(TimeOnly time) => time.Hour < 12 ? DaySlot.Morning : time.Hour < 18 ? DaySlot.Afternoon : DaySlot.Evening;

    /// <summary>"Tue 18:00-19:30"; the end of a day is 24:00.</summary>
    public static string Words(DateOnly day, int from, int to) =>
        string.Create(CultureInfo.InvariantCulture, $"{day:ddd} {from / 60:00}:{from % 60:00}-{to / 60:00}:{to % 60:00}");
}
