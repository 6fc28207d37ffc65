using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rooms;

/// <summary>A session of a season as a room's week knows it.</summary>
/// <param name="Id">In the room's week; the session's own unless another season has the same.</param>
/// <param name="Athletes">Null where nobody knows how many; they are counted as one then.</param>
/// <param name="IsFixed">Past, locked, or in a locked week: it stays.</param>
/// <param name="IsHere">In this room; else in none yet.</param>
public sealed record RoomBooking(SessionId Id, SeasonId Season, TeamId Team, string TeamName, Session Session, int? Athletes, bool IsFixed, bool IsHere)
{
    /// <summary>When the first of it begins: a session in waves with its first wave. Null where no time is known.</summary>
    public TimeOnly? Start => (Session.Waves ?? []).Select(wave => (TimeOnly?)wave.Start).Append(Session.Start).Min();

    /// <summary>From the first that begins to the last that ends.</summary>
    public Minutes Minutes => Start is { } first && Session.Waves is { Count: > 0 } waves
        ? new(Math.Min(Clock.Day, Clock.Minute(waves.Max(wave => wave.Start)) - Clock.Minute(first) + Session.Minutes.Value)) : Session.Minutes;

    /// <summary>The session in a room, at a time. Its waves keep their distances.</summary>
    public Session PutIn(Room room, RoomPlace place)
    {
        var by = Clock.Minute(place.Start) - Clock.Minute(Start ?? place.Start);
        return Session with
        {
            Day = place.Day,
            Start = Session.Start is { } start && Session.Waves is { Count: > 0 } ? Moved(start) : place.Start,
            Slot = place.Day == Session.Day && place.Start == Start ? Session.Slot : Clock.SlotOf(place.Start),
            Waves = Session.Waves?.Select(wave => wave with { Start = Moved(wave.Start) }).ToValueList(),
            Place = room.Name,
            Room = room.Id,
        };

        TimeOnly Moved(TimeOnly time) => Clock.Time(Math.Clamp(Clock.Minute(time) + by, 0, Clock.Day - 1));
    }

    /// <summary>The session in no room; when it is stays.</summary>
    public Session TakenFrom(Room room) => Session with { Room = null, Place = Session.Place == room.Name ? null : Session.Place };
}
