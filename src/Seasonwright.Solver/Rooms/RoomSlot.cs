using Seasonwright.Core.Rooms;

namespace Seasonwright.Solver;

/// <summary>A start on the grid of a room's week: the half hour, counted from the midnight that begins the week.</summary>
internal readonly record struct RoomSlot(int Half) : IComparable<RoomSlot>
{
    public const int ADay = Clock.Day / Clock.HalfHour;

    public static RoomSlot Of(RoomWeek week, DateOnly day, TimeOnly start) => new((day.DayNumber - week.First.DayNumber) * ADay + Clock.Minute(start) / Clock.HalfHour);

    public int Day => Half / ADay;

    /// <summary>Minute of its day.</summary>
    public int Minute => Half % ADay * Clock.HalfHour;

    public DateOnly DayOf(RoomWeek week) => week.First.AddDays(Day);

    public RoomPlace PlaceIn(RoomWeek week) => new(DayOf(week), Clock.Time(Minute));

    /// <summary>The half hours that a session touches which begins here.</summary>
    public IEnumerable<int> Touched(RoomAsk ask) => Enumerable.Range(Half, (ask.Minutes.Value + Clock.HalfHour - 1) / Clock.HalfHour);

    public int CompareTo(RoomSlot other) => Half.CompareTo(other.Half);
}
