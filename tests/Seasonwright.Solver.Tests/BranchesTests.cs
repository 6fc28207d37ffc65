using Seasonwright.Core.Edits;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Tests.Rules;
using Waits = Seasonwright.Core.Seasons.Condition;

namespace Seasonwright.Solver.Tests;

/// <summary>Both ways on from a semi-final in week 14 that decides whether a final is played in week 17.</summary>
public class BranchesTests
{
    private static readonly MatchId Semi = new("semi"), Final = new("final");

    private static readonly Wishes Wishes = new();

    private static Season Cup(Waits? condition) => Plans.Of("-x6 -/6x16 -x2",
        new SetMatch(new Match(Semi, Plans.Day(14, 3))),
        new SetMatch(new Match(Final, Plans.Day(17, 3), Importance: Importance.Key, Status: MatchStatus.Conditional, Condition: condition)));

    private static string Id(string kind, string key) => $"{kind}-{key}";

    private static int Findings(Season season) => Core.Rules.Rulebook.Check(season, Plans.Team()).Findings.Count(finding => !finding.IsForced);

    private static Branches Of(Season season) => Branches.Of(season, Plans.Team(), Wishes, Final, 50, Findings, Id)!;

    [Fact]
    public void Both_ways_are_one_plan_until_it_is_known_and_keep_the_rules()
    {
        var both = Of(Cup(new Waits(Semi)));
        Assert.Equal(Plans.Day(15, 1), both.From);
        Assert.Equal((MatchStatus.Confirmed, MatchStatus.Cancelled), (both.Happens.Season.Match(Final)!.Status, both.DoesNot.Season.Match(Final)!.Status));
        var (won, lost) = (Planned(both.Happens.Season), Planned(both.DoesNot.Season));
        Assert.Equal(won.Take(14), lost.Take(14), StringComparer.Ordinal);
        Assert.All(won.Take(14), week => Assert.DoesNotContain("none", week, StringComparison.Ordinal));
        Assert.NotEqual(won.Skip(14).Take(Branches.Weeks), lost.Skip(14).Take(Branches.Weeks), StringComparer.Ordinal);
        foreach (var way in new[] { both.Happens, both.DoesNot })
        {
            Assert.Null(way.Proposal.Clash);
            var findings = Rulebook.Check(way.Season, Plans.Team()).Findings.Where(finding => !finding.IsForced).ToList();
            Assert.Equal(findings.Count, way.Findings);
            Assert.DoesNotContain(findings, finding => finding.Severity > Severity.Caution);
            Assert.InRange(findings.Count, 0, 3);
        }
        Assert.Contains(both.Happens.Season.Weeks, week => both.Happens.Season.KindOf(week.Id) == WeekKind.Taper);
    }

    /// <summary>Once it is known, planning on from there is the branch.</summary>
    [Theory]
    [InlineData(Outcome.Won)]
    [InlineData(Outcome.Lost)]
    public void Planned_again_once_it_is_known_it_is_the_branch(Outcome outcome)
    {
        var season = Cup(new Waits(Semi));
        var both = Of(season);
        var known = Plans.After(season, [.. both.Before, new SettleMatch(Semi, outcome)]);
        var proposal = Proposals.Of(known, Plans.Team(), Wishes with { From = both.From }, 1, Id)[0];
        Assert.Equal(Planned((outcome == Outcome.Won ? both.Happens : both.DoesNot).Season), Planned(Plans.After(known, proposal.Edits)), StringComparer.Ordinal);
    }

    [Fact]
    public void A_condition_in_words_forks_in_the_weeks_of_the_match()
    {
        var both = Of(Cup(new Waits(Words: "if needed")));
        Assert.Equal(Plans.Day(17, 1), both.From);
        Assert.Equal(Planned(both.Happens.Season).Take(16), Planned(both.DoesNot.Season).Take(16), StringComparer.Ordinal);
        Assert.Null(Branches.Of(Cup(null), Plans.Team(), Wishes, Semi, 50, Findings, Id));
    }

    /// <summary>Whoever does not qualify plays no game of the series, and nothing that hangs on it.</summary>
    [Theory]
    [InlineData("game1")]
    [InlineData("game2")]
    public void What_is_under_the_same_condition_is_not_played_either(string asked)
    {
        var both = Branches.Of(Series(), Plans.Team(), Wishes, new(asked), 50, Findings, Id)!;
        Assert.Equal(Plans.Day(17, 1), both.From);
        Assert.Equal(["other"], both.DoesNot.Season.AllMatches.Where(match => match is { Importance: Importance.Key, IsOff: false }).Select(match => match.Id.Text), StringComparer.Ordinal);
        Assert.Equal(["game1", "game2", "game3", "gala", "other"], both.Happens.Season.AllMatches.Where(match => match is { Importance: Importance.Key, IsOff: false }).Select(match => match.Id.Text), StringComparer.Ordinal);
    }

    /// <summary>The last game alone may be missing: those before it are not under its condition.</summary>
    [Fact]
    public void A_game_that_is_not_needed_takes_no_other_out() => Assert.Equal(["game3"], Branches.NotPlayedWithout(Series(), new("game3")).Select(match => match.Id.Text), StringComparer.Ordinal);

    private static Season Series() => Plans.Of("-x6 -/6x16 -x2",
        Game(1, 17, 3, "if we end in the top two"),
        Game(2, 17, 6, "If we end in the top two"),
        Game(3, 18, 3, "if needed"),
        new SetMatch(new Match(new("gala"), Plans.Day(19, 3), Importance: Importance.Key, Status: MatchStatus.Conditional, Condition: new(new MatchId("game2")))),
        new SetMatch(new Match(new("other"), Plans.Day(19, 5), Competition: "Cup", Importance: Importance.Key, Status: MatchStatus.Conditional, Condition: new(Words: "if needed"))));

    private static SetMatch Game(int game, int week, int day, string words) => new(new Match(new($"game{game}"), Plans.Day(week, day), Competition: "League", Importance: Importance.Key,
        Status: MatchStatus.Conditional, Condition: new(Words: words), Series: new("Final", game, 3)));

    /// <summary>Phase, kind, load, levels and tests of every week.</summary>
    private static List<string> Planned(Season season) => [.. season.Weeks.Select(week =>
        $"{season.PhaseOf(week)?.Phase.Kind.ToString() ?? "none"} {season.KindOf(week.Id)?.ToString() ?? "none"} {season.TargetOf(week.Id)?.Au} {string.Join(' ', Plans.Team().Qualities.Select(quality => (int)season.EmphasisOf(week.Id, quality.Id)))} {string.Join(' ', season.TestDays.Where(test => week.Days.Contains(test.Day)).Select(test => test.Day))}")];
}
