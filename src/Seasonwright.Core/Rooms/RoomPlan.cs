using System.Collections.Immutable;
using System.Globalization;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rooms;

/// <summary>
/// A room's week as the seasons have it. It is stored nowhere: when a session is, and in which room, is a fact of its own
/// season, and this is worked out from all of them.
/// </summary>
/// <param name="Bookings">Every session that is in the room that week, and those that need a gym and are in none yet. By day, time and team.</param>
/// <param name="Untimed">Practices whose time nobody said: what clashes with them cannot be seen.</param>
public sealed record RoomPlan(RoomWeek Week, ValueList<RoomBooking> Bookings, ValueList<(string TeamName, DateOnly Day)> Untimed)
{
    /// <summary>Matches so many days beside the week matter for what lies in it.</summary>
    private const int Beside = 7;

    /// <param name="first">The first of the week's seven days.</param>
    /// <param name="today">What lies before it stays.</param>
    public static RoomPlan Of(Club club, Room room, DateOnly first, IEnumerable<RoomUser> users, DateOnly today)
    {
        var week = new RoomWeek(first, room, []);
        var taken = new HashSet<SessionId>();
        var teams = users.Where(user => user.Season.Days is { } days && days.Overlaps(week.Span)).GroupBy(user => user.Setup.Id)
            .OrderBy(team => team.First().TeamName, StringComparer.OrdinalIgnoreCase).ThenBy(team => team.Key.Text, StringComparer.Ordinal)
            .Select(team => OfTeam(club, week, [.. team], today, taken)).ToList();
        return new(
            week with { Teams = teams.Select(team => team.Team).Where(team => team.Sessions.Count > 0).ToValueList() },
            teams.SelectMany(team => team.Bookings).OrderBy(one => one.Session.Day).ThenBy(one => one.Start ?? one.Session.Begins).ToValueList(),
            teams.SelectMany(team => team.Untimed).Distinct().ToValueList());
    }

    public RoomBooking? Booking(SessionId id) => Bookings.FirstOrDefault(one => one.Id == id);

    public RoomAsk? Ask(SessionId id) => Week.Asks.FirstOrDefault(one => one.Ask.Id == id).Ask;

    /// <summary>What a session clashes with where it is, or would be.</summary>
    /// <param name="place">Null for where it stands.</param>
    public ValueList<RoomClash> Clashes(SessionId session, RoomPlace? place = null) =>
        RoomClash.Of(place is null ? Week : Week.With(session, place)).Where(clash => clash.Sessions.Contains(session)).ToValueList();

    /// <summary>
    /// The same week for the engine, whose sessions begin on the half hour: one that begins between takes the half hour before
    /// with it, and keeps its minutes past it wherever it goes.
    /// </summary>
    public RoomWeek OnGrid => Week with
    {
        Teams = Week.Teams.Select(team => team with { Sessions = team.Sessions.Select(Floored).ToValueList() }).ToValueList(),
    };

    private static RoomAsk Floored(RoomAsk ask) => ask.Place is not { } place ? ask : ask with
    {
        Minutes = new(Math.Min(Clock.Day, ask.Minutes.Value + Past(place.Start))),
        Start = Clock.Floor(place.Start),
        Place = place with { Start = Clock.Floor(place.Start) },
    };

    /// <summary>A place that the engine gave in <see cref="OnGrid"/> as it is on the clock.</summary>
    public RoomPlace OffGrid(SessionId session, RoomPlace place) =>
        Ask(session)?.Place is { } stands ? place with { Start = Clock.Time(Math.Min(Clock.Minute(place.Start) + Past(stands.Start), Clock.Day - 1)) } : place;

    private static int Past(TimeOnly start) => Clock.Minute(start) % Clock.HalfHour;

    private static (RoomTeam Team, List<RoomBooking> Bookings, List<(string TeamName, DateOnly Day)> Untimed) OfTeam(Club club, RoomWeek week, ImmutableArray<RoomUser> seasons, DateOnly today, HashSet<SessionId> taken)
    {
        var (id, name) = (seasons[0].Setup.Id, seasons[0].TeamName);
        List<RoomBooking> bookings = [];
        List<RoomAsk> asks = [];
        List<RoomPractice> elsewhere = [];
        List<(string, DateOnly)> untimed = [];
        List<DateOnly> matches = [];
        foreach (var user in seasons)
        {
            var season = user.Season;
            matches.AddRange(season.MatchDays.Where(day => day.DayNumber - week.First.DayNumber is >= -Beside and < RoomWeek.Length + Beside));
            foreach (var session in season.Sessions.Where(session => !session.IsCancelled && week.Span.Contains(session.Day)))
            {
                var isHere = session.Room == week.Room.Id;
                if (!isHere && !(club.FacilityOf(session) is null && session.IsOurs && SessionUse.Of(session.Kind).IsGym))
                {
                    var other = new RoomBooking(session.Id, season.Id, id, name, session, null, true, false);
                    if (other.Start is { } begins) elsewhere.Add(new(session.Day, begins, other.Minutes, session.Groups));
                    else if (!session.IsOurs) untimed.Add((name, session.Day));
                    continue;
                }
                var isFixed = session.Day < today || session.IsLocked || season.WeekOf(session.Day) is { } its && season.IsLocked(its.Id);
                var booking = new RoomBooking(Free(session.Id, taken), season.Id, id, name, session, user.Athletes(session), isFixed, isHere);
                bookings.Add(booking);
                asks.Add(AskOf(booking, season, user.Setup, week, today));
            }
        }
        return (new(id, name, asks.ToValueList(), elsewhere.ToValueList(), matches.Distinct().Order().ToValueList()), bookings, untimed);
    }

    private static RoomAsk AskOf(RoomBooking booking, Season season, Setup setup, RoomWeek week, DateOnly today)
    {
        var session = booking.Session;
        // Where nobody could come, or the year is not asked any more, it cannot go.
        ValueList<RoomWindow>? windows = booking.IsFixed ? null
            : week.Span.Days().Where(day => day >= today && season.WeekOf(day) is { } its && its.Days.Contains(session.Day) && !season.IsClosed(day)).Select(day => new RoomWindow(day)).ToValueList();
        return new RoomAsk(booking.Id, session.Title, Math.Max(1, booking.Athletes ?? 1), booking.Minutes, SessionUse.IsHeavy(session, setup), session.Day, Clock.Floor(booking.Start ?? session.Begins), windows,
            booking is { IsHere: true, Start: { } start } ? new RoomPlace(session.Day, start, booking.IsFixed) : null, session.Groups);
    }

    private static SessionId Free(SessionId id, HashSet<SessionId> taken)
    {
        // Two seasons brought from one file have the same ids.
        for (var (free, number) = (id, 2); ; free = new(string.Create(CultureInfo.InvariantCulture, $"{id.Text[..Math.Min(id.Text.Length, IdText.Longest - 5)]}.{number}")), number++)
            if (taken.Add(free)) return free;
    }
}
