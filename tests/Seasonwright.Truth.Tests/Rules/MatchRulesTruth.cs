using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Truth.Tests.Fixtures;
using Outside = Seasonwright.Truth.Tests.HandOut.Outside;

namespace Seasonwright.Truth.Tests.Rules;

/// <summary>
/// Source: openfootball/football.json (CC0 1.0), counted by a script in another language, tests/Oracles/match-rules.py. Real seasons
/// with nothing painted have exactly the findings that it counts: same club, rule, severity and weeks, no more and no fewer.
/// </summary>
public class MatchRulesTruth
{
    private static readonly string[] OfMatches = ["match-gap-short", "matches-per-week"];

    [Theory]
    [InlineData("2023-24_de.1", "Europe/Berlin", null, "", 18)]
    [InlineData("2024-25_en.1", "Europe/London", null, "", 20)]
    // With the midweek cup; its kick-offs are taken to be in the league's zone by both.
    [InlineData("2024-25_en.1", "Europe/London", "2024-25_uefa.cl", "ENG", 4)]
    public async Task A_bare_season_has_the_findings_that_a_script_counts(string league, string zone, string? cup, string country, int clubs)
    {
        string[] given = cup is null ? [zone, FileOf(league)] : [zone, FileOf(league), FileOf(cup), country];
        var counted = (await Outside.RunAsync("/usr/bin/python3", [Path.Combine(AppContext.BaseDirectory, "Oracles", "match-rules.py"), .. given])).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var list = FixtureList.Read(league, zone);
        var abroad = cup is null ? null : FixtureList.Read(cup, zone);
        var teams = list.Teams.Where(team => abroad is null || abroad.Teams.Contains($"{team} ({country})", StringComparer.Ordinal)).ToList();
        Assert.Equal(clubs, teams.Count);
        var found = teams.SelectMany(team => Found(team, list.Matches.Where(match => match.Has(team)).Concat(abroad?.Matches.Where(match => match.Has($"{team} ({country})")) ?? []), zone));
        Assert.Equal(counted.Order(StringComparer.Ordinal), found.Order(StringComparer.Ordinal), StringComparer.Ordinal);
        // Neither kind may be missing for want of cases.
        Assert.All(OfMatches, rule => Assert.Contains(counted, line => line.Contains($"\t{rule}\t", StringComparison.Ordinal)));
    }

    private static IEnumerable<string> Found(string team, IEnumerable<Fixture> fixtures, string zone)
    {
        var matches = fixtures.Select((fixture, index) => new Match(new MatchId($"m{index}"), fixture.Day, KickOff: fixture.KickOff, Zone: zone)).ToList();
        var start = new StartSeason(new DateOnly(matches.Min(match => match.Day!.Value.Year), 7, 1), DayOfWeek.Monday, Enumerable.Range(1, 53).Select(number => new WeekId($"w{number}")).ToValueList(), new TeamCard("Harbour Vale"));
        var season = matches.Select(match => (SeasonEdit)new SetMatch(match)).Prepend(start).Aggregate(Season.Empty(new("s")), (now, edit) => now.With(Assert.IsType<Accepted>(Decider.Decide(now, edit)).Step));
        var findings = Rulebook.Check(season, Setup.Empty(new("team"))).Findings.Where(finding => OfMatches.Contains(finding.Rule.Id, StringComparer.Ordinal)).ToList();
        Assert.All(findings, finding => Assert.True(finding.IsForced, finding.Sentence));
        return findings.Select(finding => $"{team}\t{finding.Rule.Id}\t{finding.Severity.ToString().ToLowerInvariant()}\t{finding.Place.First}-{finding.Place.Last}");
    }

    private static string FileOf(string list) => Cases.PathOf($"fixtures/{list}.json");
}
