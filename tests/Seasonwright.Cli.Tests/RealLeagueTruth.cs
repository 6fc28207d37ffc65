using System.Text.Json;
using Seasonwright.Truth.Tests.Fixtures;

namespace Seasonwright.Cli.Tests;

/// <summary>
/// Source: openfootball/football.json (CC0 1.0), three whole competitions. Every team of each starts a season with the list, and
/// what <c>show --matches</c> gives is compared with the open data as a plain JSON reader finds it.
/// </summary>
public class RealLeagueTruth
{
    [Theory]
    [InlineData("2024-25_en.1", 19)]
    [InlineData("2023-24_de.1", 17)]
    [InlineData("2024-25_uefa.cl", null)]
    public void Every_match_of_every_team_is_shown_once(string file, int? homeAndAwayEach)
    {
        using var session = new Session();
        var list = FixtureList.Read(file, "Etc/UTC");
        var taken = new Dictionary<Fixture, int>();
        var from = list.Matches.Min(match => match.Day).AddDays(-7);
        foreach (var team in list.Teams)
        {
            var started = session.Run($"start --from {from:yyyy-MM-dd} --weeks 60 --team \"{team}\" --fixtures fixtures/{file}.json --out ./season.json");
            Assert.True(started.Exit == 0, started.Shown);
            using var shown = JsonDocument.Parse(session.Run("show ./season.json --matches --format json").Output);
            var matches = shown.RootElement.EnumerateArray().ToList();
            Assert.Equal(matches.Count, matches.Select(match => Text(match, "id")).Distinct(StringComparer.Ordinal).Count());
            var theirs = list.Matches.Where(match => match.Has(team)).ToList();
            Assert.Equal(theirs.Select(match => Line(match, team)).Order(StringComparer.Ordinal), matches.Select(Line).Order(StringComparer.Ordinal));
            foreach (var fixture in theirs) taken[fixture] = taken.GetValueOrDefault(fixture) + 1;
            if (homeAndAwayEach is not { } each) continue;
            Assert.Equal((each, each), (matches.Count(match => Text(match, "venue") == "home"), matches.Count(match => Text(match, "venue") == "away")));
        }
        // Seen from both sides, none is missing and none is doubled.
        Assert.Equal(list.Matches.Count, taken.Count);
        Assert.All(taken.Values, times => Assert.Equal(2, times));
    }

    private static string Line(Fixture match, string team) => FormattableString.Invariant(
        $"{match.Day:yyyy-MM-dd} {match.KickOff:HH:mm} {(match.Home == team ? $"home {match.Away}" : $"away {match.Home}")} {match.Round} confirmed");

    private static string Line(JsonElement match) => $"{Text(match, "date")} {Text(match, "kickoff")} {Text(match, "venue")} {Text(match, "opponent")} {Text(match, "round")} {Text(match, "status")}";

    private static string? Text(JsonElement match, string field) => match.GetProperty(field).GetString();
}
