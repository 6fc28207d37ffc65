namespace Seasonwright.Core.Rooms;

/// <summary>A time within which a session can be.</summary>
/// <param name="From">Null for the start of the day.</param>
/// <param name="To">Null for its end.</param>
public sealed record RoomWindow(DateOnly Day, TimeOnly? From = null, TimeOnly? To = null)
{
    /// <summary>Whether a session from one minute of a day to another lies within it.</summary>
    public bool Holds(DateOnly day, int from, int to) =>
        day == Day && (From is not { } first || Clock.Minute(first) <= from) && (To is not { } last || to <= Clock.Minute(last));
}
