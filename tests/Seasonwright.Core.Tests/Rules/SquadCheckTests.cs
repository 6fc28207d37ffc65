using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Tests.Drawn;

namespace Seasonwright.Core.Tests.Rules;

/// <summary>What is found about people goes with them: it is in no season, no paper and no check of a plan.</summary>
public class SquadCheckTests
{
    private const string Asked = "B60(p135,L2)";

    private static Finding Ask => Assert.Single(SquadTable.Checkup("restriction-overrides-plan", Asked, "mod1.1", 1).Findings);

    [Fact]
    public void A_finding_names_the_player_and_is_about_them()
    {
        Assert.Equal(("player/player-1", 1, 1, Severity.Stop, 4), (Ask.Place.About, Ask.Place.First, Ask.Place.Last, Ask.Severity, Ask.Times));
        Assert.Contains("Ida1 Norlund", Ask.Sentence, StringComparison.Ordinal);
        Assert.Contains("Ask the clinician", Ask.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void It_is_never_accepted_into_the_log()
    {
        foreach (var key in new[] { Ask.Key, new FindingKey("restriction-overrides-plan", "nobody", "session/s1"), new FindingKey("no-such-rule", "x", "player/ida") })
        {
            var refused = Assert.IsType<Refused>(RuledDecider.Decide(Plans.Of(Asked), Plans.Team(), new AcceptFinding(key, new Acceptance("So be it.", 1, "", "Dr Wexcombe", StaffRole.Doctor))));
            Assert.Equal("finding-of-player", Assert.Single(refused.Reasons).Id);
        }
    }

    /// <summary>Publishing is asked of the plan alone: its own check has no word of people, nor an answer but that they are asked elsewhere.</summary>
    [Fact]
    public void A_check_of_the_plan_sees_nobody()
    {
        var checkup = Rulebook.Check(Plans.Of(Asked), Plans.Team());
        Assert.DoesNotContain(checkup.Findings, finding => finding.Rule.IsOfPlayers);
        Assert.All(checkup.Answers.Where(answer => answer.Rule.IsOfPlayers), answer => Assert.Equal((RuleState.Waits, "Asked of the squad, week by week"), (answer.State, RuleText.Of(answer))));
        Assert.DoesNotContain(Rulebook.All, rule => rule.IsOfPlayers && rule.IsLive);
    }

    [Fact]
    public void Only_rules_about_players_are_asked_of_a_squad_and_one_that_is_off_is_silent()
    {
        var checkup = SquadTable.Checkup("youth-rest-days", "B60(p135,D2467)", "a15", 1, ("youth-rest-days", "on", "no"));
        Assert.DoesNotContain(checkup.Findings, finding => finding.Rule.Id == "youth-rest-days");
        Assert.Equal(Rulebook.All.Where(rule => rule.IsOfPlayers).Select(rule => rule.Id).Order(StringComparer.Ordinal), checkup.Answers.Select(answer => answer.Rule.Id), StringComparer.Ordinal);
        Assert.Equal(RuleState.Off, checkup.Answers.Single(answer => answer.Rule.Id == "youth-rest-days").State);
    }

    /// <summary>Days outside the season, a squad of nobody and a season that is not started are asked about in vain.</summary>
    [Fact]
    public void Where_there_is_nobody_or_nothing_nothing_is_found()
    {
        var (season, setup, days) = (Plans.Of(Asked), Plans.Team(), new DaySpan(Plans.Monday.AddDays(-9), Plans.Monday.AddDays(99)));
        Assert.Empty(Rulebook.CheckSquad(season, setup, [], days).Findings);
        Assert.NotEmpty(Rulebook.CheckSquad(season, setup, SquadTable.Squad("mod1.1"), days).Findings);
        Assert.Empty(Rulebook.CheckSquad(season, setup, SquadTable.Squad("mod1.1"), new(days.First, days.First)).Findings);
        Assert.Empty(Rulebook.CheckSquad(Season.Empty(new("s")), setup, SquadTable.Squad("mod1.1"), days).Answers);
    }

    /// <summary>Whatever a team sets a figure to and whichever week is asked, there is an answer; one finding has one key.</summary>
    [Fact]
    public void No_figure_makes_a_rule_fail()
    {
        var checks = 0;
        foreach (var line in SquadTable.Lines)
            foreach (var figure in Rulebook.Of(line.Rule).Settings)
                foreach (var value in AnyEdit.Values(figure))
                {
                    var findings = SquadTable.Checkup(line.Rule, line.Plan, line.Players, line.Week, [.. Plans.Figures(line.Rule, line.Figures), (line.Rule, figure.Name, value)]).Findings;
                    Assert.Equal(findings.Count, findings.Select(finding => finding.Key).Distinct().Count());
                    checks++;
                }
        Assert.True(checks > 800, $"{checks}");
    }
}
