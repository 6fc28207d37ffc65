using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Desk.Demo;

/// <summary>Four friendlies, a league of fourteen, a cup and a final over three games. Every club is invented.</summary>
internal static class DemoMatches
{
    private const string League = "League", Cup = "Cup", Final = "Championship final";

    private static readonly string[] Opponents =
    [
        "Kaldmere", "Brosund", "Stellhaven", "Fjordlund", "Navesby", "Orsholm", "Turnes",
        "Lindgard", "Moarvik", "Skeldby", "Ulverstad", "Hestmark", "Varnholt",
    ];

    // The week of each of the 26 rounds: none in national-team weeks, over the break and on the cup final's weekend.
    private static readonly int[] RoundWeeks = [9, 10, 11, 12, 13, 14, 15, 16, 18, 19, 20, 21, 22, 23, 24, 29, 30, 31, 32, 34, 35, 36, 37, 38, 40, 41];

    // In weeks with a cup match the league plays on Sunday, so that more than 72 hours lie between any two matches.
    private static readonly int[] CupWeeks = [14, 20, 35, 38];

    private static readonly (string Result, Outcome? Outcome)[] LeagueResults =
        [("27-24", Outcome.Won), ("25-25", null), ("31-26", Outcome.Won), ("22-28", Outcome.Lost), ("29-27", Outcome.Won), ("26-23", Outcome.Won), ("30-21", Outcome.Won)];

    public static IEnumerable<SeasonEdit> Fixtures(DemoCalendar calendar) =>
    [
        .. Friendlies(calendar).Select(match => new SetMatch(match)),
        new ImportFixtures(Enumerable.Range(1, RoundWeeks.Length).Select(round => LeagueMatch(calendar, round)).ToValueList(), "the league's fixture list"),
        .. CupMatches(calendar).Select(match => new SetMatch(match)),
        .. Finals(calendar).Select(match => new SetMatch(match)),
    ];

    /// <summary>What happened before the week of today. The cup match was won, so the second round is on.</summary>
    public static IEnumerable<SeasonEdit> Played(DemoCalendar calendar) =>
    [
        .. Friendlies(calendar).Take(3).Zip(["24-24", "28-22", "26-29"], (match, result) => new SetMatch(match with { Result = result })),
        .. LeagueResults.Select((played, index) => new SetMatch(LeagueMatch(calendar, index + 1) with { Result = played.Result, Outcome = played.Outcome })),
        new SetMatch(CupMatches(calendar)[0] with { Result = "33-20" }),
        new SettleMatch(CupMatches(calendar)[0].Id, Outcome.Won),
    ];

    /// <summary>Round 1 to 26; the return match of a round is thirteen rounds later, at the other's hall.</summary>
    public static Match LeagueMatch(DemoCalendar calendar, int round)
    {
        var week = RoundWeeks[round - 1];
        var home = round % 2 == 1;
        var day = calendar.Day(week, CupWeeks.Contains(week) ? DayOfWeek.Sunday : DayOfWeek.Saturday);
        var number = round.ToString(CultureInfo.InvariantCulture);
        var match = new Match(new(calendar.Id("match", League, number)), day, Opponent: Opponents[(round - 1) % Opponents.Length],
            Venue: home ? Venue.Home : Venue.Away, Competition: League, Round: number)
        {
            // The league has not set the times of the last rounds yet.
            KickOff = round > 21 ? null : home ? new TimeOnly(18, 30) : new TimeOnly(16, 0),
            Status = round > 22 ? MatchStatus.Provisional : MatchStatus.Confirmed,
            Source = new MatchSource($"L{round:00}"),
        };
        return round switch
        {
            19 => match with { Importance = Importance.Key, Note = "The derby: the hall is sold out every year." },
            22 => match with { Day = calendar.Day(week, DayOfWeek.Friday), LastDay = calendar.Day(week, DayOfWeek.Sunday), Status = MatchStatus.Window },
            _ => match,
        };
    }

    private static Match[] Friendlies(DemoCalendar calendar) =>
    [
        Friendly(calendar, 6, DayOfWeek.Saturday, "Estmoor", Venue.Home, new TimeOnly(15, 0)),
        Friendly(calendar, 7, DayOfWeek.Saturday, "Grindholm", Venue.Away, new TimeOnly(14, 0)),
        Friendly(calendar, 8, DayOfWeek.Wednesday, "Askvale", Venue.Home, new TimeOnly(19, 0)),
        Friendly(calendar, 28, DayOfWeek.Saturday, "Estmoor", Venue.Away, null),
    ];

    private static Match Friendly(DemoCalendar calendar, int week, DayOfWeek day, string opponent, Venue venue, TimeOnly? kickOff) =>
        new(new(calendar.Id("match", "Friendly", opponent, venue.ToString())), calendar.Day(week, day), KickOff: kickOff, Opponent: opponent, Venue: venue,
            Competition: "Friendly", Importance: Importance.Friendly);

    private static Match[] CupMatches(DemoCalendar calendar)
    {
        MatchId Id(string round) => new(calendar.Id("match", Cup, round));
        return
        [
            new(Id("R1"), calendar.Day(14, DayOfWeek.Wednesday), KickOff: new(19, 0), Opponent: "Grindholm", Venue: Venue.Away, Competition: Cup, Round: "First round"),
            new(Id("R2"), calendar.Day(20, DayOfWeek.Wednesday), KickOff: new(19, 0), Opponent: "Kaldmere", Venue: Venue.Home, Competition: Cup, Round: "Second round",
                Status: MatchStatus.Conditional, Condition: new Condition(Id("R1"))),
            new(Id("QF"), calendar.Day(35, DayOfWeek.Wednesday), Competition: Cup, Round: "Quarter-final",
                Status: MatchStatus.Conditional, Condition: new Condition(Id("R2"))),
            new(Id("SF"), calendar.Day(38, DayOfWeek.Wednesday), Competition: Cup, Round: "Semi-final",
                Status: MatchStatus.Conditional, Condition: new Condition(Id("QF"))),
            new(Id("F"), calendar.Day(39, DayOfWeek.Saturday), Venue: Venue.Neutral, Competition: Cup, Round: "Final", Place: "National Arena", Importance: Importance.Key,
                Status: MatchStatus.Conditional, Condition: new Condition(Id("SF"))),
        ];
    }

    private static Match[] Finals(DemoCalendar calendar) =>
    [
        FinalGame(calendar, 1, 42, DayOfWeek.Wednesday, Venue.Home, "if we end in the top two"),
        FinalGame(calendar, 2, 42, DayOfWeek.Sunday, Venue.Away, "if we end in the top two"),
        FinalGame(calendar, 3, 43, DayOfWeek.Thursday, Venue.Home, "if needed"),
    ];

    private static Match FinalGame(DemoCalendar calendar, int game, int week, DayOfWeek day, Venue venue, string words) =>
        new(new(calendar.Id("match", Final, game.ToString(CultureInfo.InvariantCulture))), calendar.Day(week, day), Venue: venue, Competition: Final, Round: $"Game {game}",
            Importance: Importance.Key, Status: MatchStatus.Conditional, Condition: new Condition(Words: words), Series: new Series(Final, game, 3));
}
