using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rooms;

/// <summary>Who is in a room in one half hour. A session counts in every half hour that it touches.</summary>
/// <param name="From">The minute of the day at which the half hour begins.</param>
/// <param name="Sessions">Each needs a coach of its own.</param>
public sealed record RoomUse(DateOnly Day, int From, int Athletes, ValueList<TeamId> Teams, ValueList<SessionId> Sessions)
{
    public int To => From + Clock.HalfHour;

    /// <summary>Every half hour of a week in which somebody is in the room, in order.</summary>
    public static ValueList<RoomUse> Of(RoomWeek week) =>
    [
        .. week.Placed.SelectMany(one => HalfHours(one.Ask, one.At), (one, half) => (one.Team, one.Ask, one.At.Day, Half: half))
            .GroupBy(one => (one.Day, one.Half)).OrderBy(here => here.Key)
            .Select(here => new RoomUse(here.Key.Day, here.Key.Half * Clock.HalfHour, here.Sum(one => one.Ask.Athletes),
                here.Select(one => one.Team.Id).Distinct().ToValueList(), here.Select(one => one.Ask.Id).ToValueList())),
    ];

    /// <summary>The half hours of the day that a session touches, counted from midnight.</summary>
    private static IEnumerable<int> HalfHours(RoomAsk ask, RoomPlace at)
    {
        var first = Clock.Minute(at.Start) / Clock.HalfHour;
        var end = (Math.Min(ask.End(at.Start), Clock.Day) + Clock.HalfHour - 1) / Clock.HalfHour;
        return Enumerable.Range(first, end - first);
    }
}
