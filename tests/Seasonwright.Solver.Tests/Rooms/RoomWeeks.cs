using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver.Tests;

/// <summary>Made-up weeks of a room. Every team in them is invented.</summary>
internal static class RoomWeeks
{
    public static readonly DateOnly Monday = new(2027, 9, 6);

    private static readonly string[] Names =
    [
        "Harbour Vale women", "Harbour Vale juniors", "Harbour Vale reserves", "Turnes volleyball", "Turnes volleyball juniors", "Kalnes rowing", "Kalnes rowing juniors", "Morby basketball",
        "Morby basketball under 18", "Linnholt athletics", "Linnholt sprint group", "Orsa ice hockey", "Orsa ice hockey under 18", "Skeldby handball", "Skeldby handball juniors",
        "Turnes futsal", "Kalnes canoe", "Morby water polo", "Linnholt judo", "Orsa floorball", "Skeldby badminton", "Turnes tennis", "Kalnes skiing", "Morby swimming",
    ];

    public static Room Room(int places, int coaches, params (DayOfWeek Day, int From, int To)[] open) =>
        new(new("gym"), "Strength room", places, coaches, open.Select(hours => new RoomHours(hours.Day, new(hours.From, 0), new(hours.To, 0))).ToValueList());

    /// <summary>Weekdays in the morning and from the afternoon to the evening, Saturday morning.</summary>
    public static Room Usual(int places, int coaches) => Room(places, coaches,
        [.. Enumerable.Range(1, 5).SelectMany(day => new[] { ((DayOfWeek)day, 7, 12), ((DayOfWeek)day, 14, 21) }), (DayOfWeek.Saturday, 9, 13)]);

    /// <summary>A week such as a club has it: practices in the evening, a match at the weekend, sessions wished for in the afternoon.</summary>
    /// <param name="isTight">Everybody works or is at school until the afternoon.</param>
    public static RoomWeek Club(int seed, int teams, int sessions, Room room, bool isTight = false)
    {
        var random = new Random(seed);
        return new(Monday, room, Enumerable.Range(0, teams).Select(at => Team(at)).ToValueList());

        RoomTeam Team(int at)
        {
            var practiceDays = Pick(5, 3);
            var practices = practiceDays.Select(day => new RoomPractice(Monday.AddDays(day), new(random.Next(17, 20), random.Next(2) * 30), new Minutes(90))).ToValueList();
            var athletes = random.Next(10, 23);
            var days = Pick(5, sessions);
            return new(new($"team-{at + 1}"), Names[at % Names.Length], Enumerable.Range(0, sessions).Select(session => new RoomAsk(
                new($"team-{at + 1}-{session + 1}"), session switch { 0 => "Legs", 1 => "Upper body", 2 => "Power", _ => $"Session {session + 1}" }, athletes, new Minutes(random.Next(3) switch { 0 => 45, 1 => 60, _ => 75 }),
                IsHeavy: session == 0 || session == 2 && random.Next(2) == 0, Day: Monday.AddDays(days[session]), Start: new(random.Next(15, 20), random.Next(2) * 30),
                Windows: isTight || random.Next(2) == 0 ? Enumerable.Range(0, 6).Select(day => new RoomWindow(Monday.AddDays(day), day < 5 ? new TimeOnly(isTight ? 17 : 15, 0) : null)).ToValueList() : null)).ToValueList(),
                practices, [Monday.AddDays(random.Next(5, 7))]);
        }

        List<int> Pick(int of, int count) => [.. Enumerable.Range(0, of).OrderBy(_ => random.Next()).Take(count).Order()];
    }

    /// <summary>A room so small that every layout can be tried: up to five sessions of four teams on four days at most.</summary>
    public static RoomWeek Small(int seed)
    {
        var random = new Random(seed);
        var room = Room(random.Next(8, 26), random.Next(1, 3), [.. Enumerable.Range(1, random.Next(1, 5)).Select(day => ((DayOfWeek)day, 16, random.Next(17, 20)))]);
        if (random.Next(4) == 0) room = room with { Closed = [DaySpan.Of(Monday)] };
        var (left, number) = (5, 0);
        return new(Monday, room, Enumerable.Range(0, random.Next(1, 5)).Select(at => new RoomTeam(new($"t{at}"), Names[at],
            Enumerable.Range(0, Math.Min(left, random.Next(1, 3))).Select(_ => Ask()).ToValueList(),
            Enumerable.Range(0, random.Next(2)).Select(_ => new RoomPractice(Day(3), new(random.Next(16, 19), random.Next(4) * 15), new Minutes(random.Next(2, 5) * 15))).ToValueList(),
            Enumerable.Range(0, random.Next(2)).Select(_ => Day(7)).ToValueList())).Where(team => team.Sessions.Count > 0).ToValueList());

        DateOnly Day(int most) => Monday.AddDays(random.Next(most));

        TimeOnly Start() => new(random.Next(16, 19), random.Next(2) * 30);

        RoomAsk Ask()
        {
            left--;
            return new(new($"s{number++}"), $"Session {number}", random.Next(4, 14), new Minutes(random.Next(2, 6) * 15), random.Next(2) == 0,
                random.Next(3) == 0 ? null : Day(3), random.Next(3) == 0 ? null : Start(),
                random.Next(3) > 0 ? null : Enumerable.Range(0, random.Next(1, 3)).Select(_ => new RoomWindow(Day(3), random.Next(2) == 0 ? null : Start(), null)).ToValueList(),
                random.Next(4) > 0 ? null : new RoomPlace(Day(3), Start(), random.Next(2) == 0));
        }
    }
}
