using System.Globalization;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Truth.Tests.Rules;

/// <summary>Source: the reference the rulebook was written from, see tests/Cases/rules/README.md. Every departure is written down with its reason.</summary>
public class FigureTruth
{
    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Reference = Cases.Rows("rules/reference.csv");

    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Departures = Cases.Rows("rules/departures.csv");

    [Fact]
    public void Every_figure_is_the_references_or_a_departure_with_a_reason()
    {
        var expected = Reference.Where(row => row["figure"].Length > 0).ToDictionary(Key, row => Written(row["default"]), StringComparer.Ordinal);
        var ours = Rulebook.All.SelectMany(rule => rule.Figures.Select(figure => (Key: $"{rule.Id}.{figure.Name}", figure.Default))).ToDictionary(figure => figure.Key, figure => figure.Default, StringComparer.Ordinal);
        foreach (var departure in Departures)
        {
            Assert.Equal(Written(departure["reference"]), expected.GetValueOrDefault(Key(departure), ""));
            Assert.NotEmpty(departure["reason"]);
            if (ours.TryGetValue(Key(departure), out var own))
            {
                // What says it departs does.
                Assert.True(own != expected.GetValueOrDefault(Key(departure)), Key(departure));
                expected[Key(departure)] = Written(departure["ours"]);
            }
            else
            {
                Assert.Equal("", departure["ours"]);
                expected.Remove(Key(departure));
            }
        }
        Assert.Equal(Lines(expected), Lines(ours), StringComparer.Ordinal);
    }

    [Fact]
    public void Severity_and_evidence_are_the_references()
    {
        var rules = Reference.GroupBy(row => row["rule"], StringComparer.Ordinal).ToDictionary(rule => rule.Key, rule => rule.First(), StringComparer.Ordinal);
        Assert.Equal(70, rules.Count);
        Assert.All(Rulebook.All, rule =>
        {
            // The reference lets a team's own limit make a gap of under 72 hours a stop, without naming it among the levels.
            if (rule.Id != "match-gap-short") Assert.Equal(rules[rule.Id]["severity"].Split('/').Select(level => Enum.Parse<Severity>(level, ignoreCase: true)).Max(), rule.Highest);
            Assert.Equal(rules[rule.Id]["evidence"], RuleText.Of(rule.Evidence));
        });
    }

    /// <summary>Source: Bosquet L et al. 2007, Med Sci Sports Exerc 39(8):1358-1365: the largest effects with two weeks and 41 to 60 % less volume.</summary>
    [Fact]
    public void A_full_taper_is_the_meta_analysis()
    {
        var best = Cases.Rows("rules/taper-bosquet-2007.csv").ToDictionary(row => row["component"], row => row["best_level"], StringComparer.Ordinal);
        Assert.Equal($"decrease {100 * Number("taper-volume", "min_drop"):0}-{100 * Number("taper-volume", "max_drop"):0} % (exponential)", best["volume"]);
        Assert.Equal($"{Number("taper-length", "best_max") / 7:0} weeks", best["duration"]);
    }

    /// <summary>Source: American College of Sports Medicine 2007, Med Sci Sports Exerc 39(3):556-572, table as reprinted in J Athl Train 2016 51(8):593-600.</summary>
    [Fact]
    public void Heat_bands_are_the_position_stands()
    {
        var bands = Cases.Rows("rules/wbgt-acsm-2007.csv");
        Assert.Equal(Decimal(bands[1]["wbgt_c_from"]), Number("wbgt-limit", "b1"));
        Assert.Equal(Decimal(bands[2]["wbgt_c_from"]), Number("wbgt-limit", "b2"));
        Assert.Equal(Decimal(bands[2]["wbgt_c_to"]), Number("wbgt-limit", "b3"));
    }

    private static decimal Number(string rule, string figure) => Decimal(Rulebook.Of(rule).Figures.Single(one => one.Name == figure).Default);

    private static decimal Decimal(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);

    private static string Key(IReadOnlyDictionary<string, string> row) => $"{row["rule"]}.{row["figure"]}";

    private static string Written(string cell) => cell.Replace("|", ", ", StringComparison.Ordinal);

    private static IEnumerable<string> Lines(Dictionary<string, string> figures) => figures.Select(figure => $"{figure.Key}={figure.Value}").Order(StringComparer.Ordinal);
}
