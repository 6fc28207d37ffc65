using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Truth.Tests.Fixtures;

/// <summary>Source: openfootball/football.json (CC0 1.0), three whole competitions, seen from each of their teams.</summary>
public class RealLeagueTruth
{
    // The lists say the venue's local time; one zone a list is near enough to try clock changes and New Year.
    public static TheoryData<string, string> Lists => new()
    {
        { "2024-25_en.1", "Europe/London" },
        { "2023-24_de.1", "Europe/Berlin" },
        { "2024-25_uefa.cl", "Europe/Zurich" },
    };

    [Theory]
    [MemberData(nameof(Lists))]
    public void Every_match_of_every_team_enters_once(string file, string zone)
    {
        var list = FixtureList.Read(file, zone);
        var taken = new Dictionary<Fixture, int>();
        foreach (var team in list.Teams)
        {
            var season = Taken(list, team);
            var theirs = list.Matches.Where(match => match.Has(team)).ToList();
            Assert.Equal(theirs.Count, season.AllMatches.Length);
            Assert.Equal(0, season.Outside.Count);
            // Each lies in exactly one week, and the weeks hold nothing else.
            Assert.Equal(season.AllMatches.Select(match => match.Id), season.Weeks.SelectMany(season.MatchesIn).Select(match => match.Id));
            foreach (var fixture in theirs)
            {
                var match = Assert.Single(season.AllMatches, match => match.Day == fixture.Day);
                Assert.Equal(fixture.KickOff, match.KickOff);
                Assert.Equal(fixture.Home == team ? fixture.Away : fixture.Home, match.Opponent);
                Assert.Equal(MatchDay.Of(fixture.Day, season.MatchDays), new MatchDay(0, 0));
                taken[fixture] = taken.GetValueOrDefault(fixture) + 1;
            }
        }
        // Seen from both sides, no match of the list is missing and none is doubled.
        Assert.Equal(list.Matches.Count, taken.Count);
        Assert.All(taken.Values, times => Assert.Equal(2, times));
    }

    [Theory]
    [InlineData("2024-25_en.1", 19)]
    [InlineData("2023-24_de.1", 17)]
    public void A_league_is_half_home_and_half_away(string file, int each)
    {
        var list = FixtureList.Read(file, "Etc/UTC");
        foreach (var team in list.Teams)
        {
            var matches = Taken(list, team).AllMatches;
            Assert.Equal((each, each), (matches.Count(match => match.Venue == Venue.Home), matches.Count(match => match.Venue == Venue.Away)));
            Assert.All(matches.GroupBy(match => match.Opponent, StringComparer.Ordinal), pair => Assert.Equal([Venue.Home, Venue.Away], pair.Select(match => match.Venue!.Value).Order()));
        }
    }

    [Fact]
    public void A_cup_is_balanced_in_its_league_round()
    {
        var list = FixtureList.Read("2024-25_uefa.cl", "Europe/Zurich");
        Assert.Equal(36, list.Teams.Count);
        foreach (var team in list.Teams)
        {
            var matches = Taken(list, team).AllMatches.Where(match => match.Round!.StartsWith("League", StringComparison.Ordinal)).ToList();
            Assert.Equal((4, 4), (matches.Count(match => match.Venue == Venue.Home), matches.Count(match => match.Venue == Venue.Away)));
        }
    }

    /// <summary>Clocks change twice in these seasons and a year ends; every kick-off keeps its day and its wall clock.</summary>
    [Theory]
    [MemberData(nameof(Lists))]
    public void Kick_offs_keep_their_wall_clock(string file, string zone)
    {
        var list = FixtureList.Read(file, zone);
        var offsets = new HashSet<TimeSpan>();
        foreach (var team in list.Teams)
        {
            var instants = new List<DateTimeOffset>();
            foreach (var match in Taken(list, team).AllMatches)
            {
                var instant = new KickOff(match.Day!.Value, match.KickOff!.Value, match.Zone!).ToInstant();
                Assert.Equal(match.Day.Value.ToDateTime(match.KickOff.Value), instant.DateTime);
                offsets.Add(instant.Offset);
                instants.Add(instant);
            }
            Assert.Equal(instants.Order(), instants);
        }
        Assert.Equal(2, offsets.Count);
    }

    /// <summary>The season is started a week before the list's first match and runs 60 weeks, then the list comes in by one edit.</summary>
    private static Season Taken(FixtureList list, string team)
    {
        var first = list.Matches.Min(match => match.Day).AddDays(-7);
        var season = Season.Empty(new("s"));
        season = season.With(Step(season, new StartSeason(first, DayOfWeek.Monday, Enumerable.Range(1, 60).Select(n => new WeekId($"w{n}")).ToValueList(), new TeamCard(team))));
        var matches = list.Matches.Where(match => match.Has(team)).Select((match, index) => new Match(
            new MatchId($"m{index}"),
            match.Day,
            KickOff: match.KickOff,
            Zone: list.Zone,
            Opponent: match.Home == team ? match.Away : match.Home,
            Venue: match.Home == team ? Venue.Home : Venue.Away,
            Competition: list.Name,
            Round: match.Round));
        return season.With(Step(season, new ImportFixtures(matches.ToValueList(), list.Name)));
    }

    private static Step Step(Season season, SeasonEdit edit) => Assert.IsType<Accepted>(Decider.Decide(season, edit)).Step;
}
