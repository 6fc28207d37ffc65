using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rooms;

/// <summary>A room's week: what the teams ask for, and where it stands.</summary>
/// <param name="First">The first of its seven days.</param>
public sealed record RoomWeek(DateOnly First, Room Room, ValueList<RoomTeam> Teams)
{
    public const int Length = 7, MostTeams = 60, MostSessions = 14;

    public DaySpan Span => new(First, First.AddDays(Length - 1));

    /// <summary>Every session that is asked for, with its team.</summary>
    public IEnumerable<(RoomTeam Team, RoomAsk Ask)> Asks => Teams.SelectMany(team => team.Sessions, (team, ask) => (team, ask));

    /// <summary>Those that have a place.</summary>
    public IEnumerable<(RoomTeam Team, RoomAsk Ask, RoomPlace At)> Placed => Asks.Where(one => one.Ask.Place is not null).Select(one => (one.Team, one.Ask, one.Ask.Place!));

    /// <summary>The same week with a session elsewhere.</summary>
    /// <param name="place">Null takes it from the room.</param>
    public RoomWeek With(SessionId session, RoomPlace? place) => With(ask => ask.Id == session ? place : ask.Place);

    /// <summary>The same week with every session where <paramref name="placeOf"/> says.</summary>
    public RoomWeek With(Func<RoomAsk, RoomPlace?> placeOf) => this with
    {
        Teams = Teams.Select(team => team with { Sessions = team.Sessions.Select(ask => ask with { Place = placeOf(ask) }).ToValueList() }).ToValueList(),
    };
}
