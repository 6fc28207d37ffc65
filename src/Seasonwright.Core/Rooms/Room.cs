using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rooms;

/// <summary>A room that several teams train in: when it is open, and what it holds at one time.</summary>
/// <param name="Places">Athletes who can train in it at one time.</param>
/// <param name="Coaches">Staff who can supervise at one time: each team in the room needs one of its own.</param>
/// <param name="Open">When it is open in any week; several of one weekday stand for a pause between them.</param>
/// <param name="Closed">Days on which it is not open at all.</param>
public sealed record Room(RoomId Id, string Name, int Places, int Coaches, ValueList<RoomHours> Open, ValueList<DaySpan>? Closed = null)
{
    public const int MostPlaces = 500, MostCoaches = 50;

    /// <summary>Whether somebody can be in it from one minute of a day to another.</summary>
    public bool IsOpen(DateOnly day, int from, int to) => Closed?.Any(days => days.Contains(day)) != true
        && Open.Any(hours => hours.Day == day.DayOfWeek && Clock.Minute(hours.From) <= from && to <= Clock.Minute(hours.To));
}
