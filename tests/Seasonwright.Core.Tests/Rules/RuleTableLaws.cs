using System.Text.RegularExpressions;
using System.Xml.Linq;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Tests.Drawn;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Tests.Rules;

/// <summary>What holds for the tables of all rules together.</summary>
public partial class RuleTableLaws
{
    /// <summary>Rules that only sessions on days feed.</summary>
    private static readonly string[] OfSessions =
    [
        "day-after-match-hard", "day-before-match-heavy", "full-rest-day-missing", "hamstring-eccentric-gap", "hard-days-in-a-row", "heavy-exposure-range", "heavy-lower-before-match", "heavy-session-spacing", "monotony-and-strain", "plyo-contacts", "priming-window",
        "same-day-strength-endurance", "single-exposure-spike", "weekly-sets-range",
    ];

    private static readonly string[] AboutTests = ["test-timing", "return-after-break-strength"];

    /// <summary>"rule.says.code" of every sentence about a finding.</summary>
    private static readonly IReadOnlyList<string> Sentences = [.. XDocument.Load(Path.Combine(House.Ground.Source, "Seasonwright.Core", "Rules", "RuleWords.resx")).Root!.Elements("data")
        .Select(data => data.Attribute("name")!.Value).Where(name => name.Contains(".says.", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    /// <summary>What rules say to plans and to squads.</summary>
    private static IEnumerable<(string Rule, string Says)> Told => RuleTable.Lines.Select(line => (line.Rule, line.Says)).Concat(SquadTable.Lines.Select(line => (line.Rule, line.Says)));

    [Fact]
    public void Every_live_rule_has_a_plan_that_fires_one_within_and_one_it_cannot_judge()
    {
        var tables = Told.ToLookup(line => line.Rule, line => line.Says, StringComparer.Ordinal);
        Assert.Equal(Rulebook.All.Where(rule => rule.IsLive || rule.IsOfPlayers).Select(rule => rule.Id).Order(StringComparer.Ordinal), tables.Select(table => table.Key).Order(StringComparer.Ordinal), StringComparer.Ordinal);
        Assert.All(tables, table =>
        {
            Assert.Contains(table, says => says.Contains(' ', StringComparison.Ordinal));
            Assert.Contains(nameof(RuleState.Checked), table, StringComparer.Ordinal);
            Assert.True(table.Contains(nameof(RuleState.TooLittle), StringComparer.Ordinal) || table.Contains(nameof(RuleState.NothingToCheck), StringComparer.Ordinal), table.Key);
        });
    }

    [Fact]
    public void Every_sentence_is_said_by_some_line_and_no_other()
    {
        var said = Told.SelectMany(line => line.Says.Split(", ").Where(says => says.Contains(' ', StringComparison.Ordinal)).Select(says => $"{line.Rule}.says.{says[..says.IndexOf(' ', StringComparison.Ordinal)]}"));
        Assert.Equal(Sentences, said.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    /// <summary>Missing is never zero, and never fine: where no session is laid out on any day nothing is found, and nothing judged.</summary>
    [Fact]
    public void Without_sessions_the_rules_about_them_say_nothing() => Assert.All(RuleTable.Lines, line =>
    {
        var checkup = Rulebook.Check(Plans.Of(Sessions().Replace(line.Plan, "")), Plans.Team(line.Rule, line.Figures));
        Assert.DoesNotContain(checkup.Findings, finding => OfSessions.Contains(finding.Rule.Id, StringComparer.Ordinal));
        Assert.All(checkup.Answers.Where(answer => OfSessions.Contains(answer.Rule.Id, StringComparer.Ordinal)), answer => Assert.NotEqual(RuleState.Checked, answer.State));
    });

    /// <summary>A severity that no plan reaches would be a promise in the papers alone.</summary>
    [Fact]
    public void Every_live_rule_reaches_the_severity_it_names_and_none_goes_beyond() => Assert.All(Rulebook.All.Where(rule => rule.IsLive || rule.IsOfPlayers), rule =>
    {
        var reached = Told.Where(line => line.Rule == rule.Id).SelectMany(line => SeverityWord().Matches(line.Says)).Select(word => Enum.Parse<Severity>(word.Value, ignoreCase: true)).Max();
        // After heat illness the ceilings stop; nobody can say so of a squad's plan.
        Assert.Equal(rule.Id == "return-after-break-volume" ? Severity.Warning : rule.Highest, reached);
    });

    /// <summary>Whatever a team sets a figure to, its pages open: each figure at the ends of what it holds, over every plan of its rule.</summary>
    [Fact]
    public void No_figure_makes_a_rule_fail()
    {
        var checks = 0;
        foreach (var ofRule in RuleTable.Lines.GroupBy(line => line.Rule, StringComparer.Ordinal))
            foreach (var figure in Rulebook.Of(ofRule.Key).Settings)
                foreach (var value in AnyEdit.Values(figure))
                    foreach (var (rule, plan, _, figures) in ofRule)
                    {
                        Rulebook.Check(Plans.Of(plan), Plans.Team([.. Plans.Figures(rule, figures), (rule, figure.Name, value)]));
                        checks++;
                    }
        Assert.True(checks > 3000, $"{checks}");
    }

    /// <summary>
    /// The remedy of a finding is an edit that is accepted, after which the finding is gone or smaller and the rule as a whole finds
    /// no more than before: what moves on to the next week is not mended.
    /// </summary>
    [Fact]
    public void Every_remedy_mends()
    {
        var mended = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (rule, plan, _, figures) in RuleTable.Lines)
        {
            var (season, setup) = (Plans.Of(plan), Plans.Team(rule, figures));
            foreach (var finding in Rulebook.Check(season, setup).Findings.Where(finding => finding.Rule.Id == rule && finding.Remedy.Count > 0))
            {
                var before = Rulebook.Check(season, setup).Findings;
                var after = Rulebook.Check(Plans.After(season, finding.Remedy), setup).Findings;
                Assert.True(after.FirstOrDefault(other => other.Key == finding.Key) is not { } same || same.Size < finding.Size, $"{rule}: {plan}: {finding.Sentence}");
                Assert.True(Total(after, rule).CompareTo(Total(before, rule)) < 0, $"{rule}: {plan}: {finding.Sentence} moves on: {string.Join(" ", after.Select(other => other.Sentence))}");
                mended.Add($"{rule}.{finding.Code}");
            }
        }
        // So that a remedy that is lost is missed.
        Assert.Equal(
            [
                "aerobic-upkeep.few", "building-run-too-long.preparation", "building-run-too-long.season", "day-after-match-hard.content", "day-after-match-hard.effort", "day-after-match-hard.second",
                "day-before-match-heavy.content", "day-before-match-heavy.effort", "day-before-match-heavy.lightest", "day-before-match-heavy.long", "day-before-match-heavy.share",
                "full-rest-day-missing.none", "hard-days-in-a-row.match", "hard-days-in-a-row.run", "heavy-exposure-range.many", "heavy-lower-before-match.close", "heavy-lower-before-match.large",
                "heavy-session-spacing.heavy", "heavy-session-spacing.heavy-sprint", "heavy-session-spacing.sprint", "heavy-week-in-congestion.content", "heavy-week-in-congestion.heavy", "heavy-week-in-congestion.kind",
                "hypertrophy-late.close", "hypertrophy-late.competition", "plyo-contacts.close", "plyo-contacts.many", "priming-window.early", "priming-window.hard", "priming-window.late", "priming-window.long", "priming-window.sets",
                "quality-left-idle.aerobic_endurance", "quality-left-idle.anaerobic_glycolytic", "quality-left-idle.max_speed",
                "quality-left-idle.max_strength", "realisation-window-missing.missing", "return-after-break-strength.test", "return-after-break-volume.high",
                "same-day-strength-endurance.endurance-first", "same-day-strength-endurance.gap", "same-day-strength-endurance.strength-first", "single-exposure-spike.contacts", "single-exposure-spike.metres", "sprint-exposure-gap.gap",
                "strength-frequency-in-season.gap", "strength-frequency-in-season.many-one", "strength-frequency-in-season.many-two", "taper-length.missing", "taper-volume.full", "taper-volume.rise", "taper-volume.short",
                "test-timing.after", "test-timing.before", "test-timing.decisive", "test-timing.heavy", "test-timing.late", "trailing-four-spike.spike", "transition-length.missing", "transition-without-upkeep.idle",
                "travel-day-load.after", "travel-day-load.effort", "travel-day-load.long",
                "unloading-size.large", "unloading-size.rise", "unloading-size.small", "weekly-hours-preset.after-match", "weekly-ramp.rise", "weekly-sets-range.few-keep", "weekly-sets-range.few-muscle", "weekly-sets-range.few-strength",
            ], mended.Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    /// <summary>What a rule finds in all, and what the two rules about test days find together: one must not pass it to the other.</summary>
    private static (decimal Size, int Count) Total(IEnumerable<Finding> findings, string rule)
    {
        var ofRule = findings.Where(finding => finding.Rule.Id == rule || AboutTests.Contains(finding.Rule.Id) && AboutTests.Contains(rule)).ToList();
        return (ofRule.Sum(finding => finding.Size), ofRule.Count);
    }

    [GeneratedRegex(@"\([^)]*\)", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Sessions();

    [GeneratedRegex(@"(?<= )(?:caution|warning|stop)(?= )", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex SeverityWord();
}
