using System.Text.RegularExpressions;
using CsCheck;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Tests.Drawn;

namespace Seasonwright.Core.Tests.Rules;

/// <summary>What holds for every rule and every plan.</summary>
public partial class RulebookLaws
{
    private static readonly string[] Fixed = ["concussion-clearance", "health-pointer", "illness-return", "medical-detail-shared", "restriction-overrides-plan"];

    [Fact]
    public void Seventy_rules_stand_in_it_each_in_a_file_of_its_name()
    {
        Assert.Equal(70, Rulebook.All.Count);
        Assert.Equal(70, Rulebook.All.Select(rule => rule.Id).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(70, Rulebook.All.Select(rule => rule.Name).Distinct(StringComparer.OrdinalIgnoreCase).Count());
        foreach (var rule in Rulebook.All)
        {
            var name = string.Concat(rule.Id.Split('-').Select(part => $"{char.ToUpperInvariant(part[0])}{part[1..]}"));
            var file = Path.Combine(House.Ground.Source, "Seasonwright.Core", "Rules", $"Of{rule.Scope}", $"{name}.cs");
            Assert.True(File.Exists(file), file);
            Assert.Contains($"new(\"{rule.Id}\")", File.ReadAllText(file), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Every_rule_has_its_words_its_sources_and_labels_for_its_figures() => Assert.All(Rulebook.All, rule =>
    {
        foreach (var text in new[] { rule.What, rule.UsualRemedy, rule.Caveat }) Assert.EndsWith(".", text, StringComparison.Ordinal);
        Assert.NotEmpty(rule.Sources);
        Assert.All(rule.Settings, figure =>
        {
            Assert.Matches("^[A-Z]", rule.LabelOf(figure));
            Assert.Equal(figure.Default, figure.Default.Length == 0 ? "" : figure.Canonical(figure.Default));
            Assert.NotEmpty(RuleText.Of(rule, figure, figure.Default));
        });
        Assert.True(rule.IsLive || rule.IsOfPlayers || rule.Needs != Needs.None, $"{rule.Id} neither looks at anything nor says what it waits for.");
    });

    [Fact]
    public void Only_the_five_medical_and_privacy_rules_cannot_be_switched_off()
    {
        Assert.Equal(Fixed, Rulebook.All.Where(rule => rule.IsFixed).Select(rule => rule.Id).Order(StringComparer.Ordinal), StringComparer.Ordinal);
        var off = Plans.Team([.. Rulebook.All.Select(rule => (rule.Id, "on", "no"))]);
        Assert.Equal(Fixed, Rulebook.All.Where(rule => rule.IsOn(off)).Select(rule => rule.Id).Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    [Fact]
    public void What_a_governing_body_sets_is_off_until_it_is_chosen_and_dated()
    {
        var rule = Rulebook.Of("weekly-hours-preset");
        Assert.False(rule.IsOn(Setup.Empty(new("team"))));
        Assert.False(rule.IsOn(Plans.Team((rule.Id, "preset", "us_college"))));
        Assert.False(rule.IsOn(Plans.Team((rule.Id, "preset_date", "2026-08-01"))));
        Assert.True(rule.IsOn(Plans.Team((rule.Id, "preset", "us_college"), (rule.Id, "preset_date", "2026-08-01"))));
    }

    /// <summary>The rulebook prompts; the words of a prophet are in none of its sentences.</summary>
    [Fact]
    public void No_sentence_predicts_injury() => Assert.All(
        System.Xml.Linq.XDocument.Load(Path.Combine(House.Ground.Source, "Seasonwright.Core", "Rules", "RuleWords.resx")).Root!.Elements("data").Where(data => data.Attribute("name")!.Value.Contains(".says.", StringComparison.Ordinal) || data.Attribute("name")!.Value.EndsWith(".what", StringComparison.Ordinal)),
        data => Assert.DoesNotMatch(Prophecy(), data.Element("value")!.Value));

    [GeneratedRegex(@"injur(?:y|ed|ies)? (?:risk|will)|risk of injur|get injured|likely to be injured|predict", RegexOptions.IgnoreCase, 1000)]
    private static partial Regex Prophecy();

    /// <summary>Total and free of order: any season whatever has an answer of every rule, the same whichever way they are asked.</summary>
    [Fact]
    public void Any_season_gets_the_same_answer_in_any_order() => Gen.Select(AnySeason.Season, AnySeason.Setup).Sample((season, setup) =>
    {
        var there = Rulebook.Check(season, setup);
        var back = Rulebook.Check(season, setup, Rulebook.All.Reverse());
        Assert.Equal(there.Findings, back.Findings);
        Assert.Equal(there.Answers, back.Answers);
        Assert.Equal(season.IsStarted ? 70 : 0, there.Answers.Count);
        Assert.All(there.Findings, finding => Assert.False(string.IsNullOrWhiteSpace(finding.Sentence)));
        Assert.Equal(there.Findings.Count, there.Findings.Select(finding => finding.Key).Distinct().Count());
    }, iter: 400);
}
