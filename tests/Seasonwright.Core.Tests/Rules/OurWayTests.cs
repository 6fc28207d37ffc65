using Seasonwright.Core.Edits;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Tests.Rules;

/// <summary>The offer after three acceptances. The rounding is the rulebook's own choice: common practice, no source.</summary>
public class OurWayTests
{
    // Rises of 22, 18 and 20 %, each after weeks side by side; common practice, no source.
    private const string Rises = "CO: B50 B50 B50 B50 B61 B61 B50 B50 B59 B59 B50 B50 B60 B60";

    [Theory]
    [InlineData("max_share", 0.601, true, 0.61)]
    [InlineData("max_share", 0.61, true, 0.61)]
    [InlineData("max_share", 0.379, false, 0.37)]
    [InlineData("ratio", 1.31, true, 1.35)]
    [InlineData("ratio", 1.29, false, 1.25)]
    [InlineData("days", 18.2, true, 19)]
    [InlineData("days", 9.5, false, 9)]
    public void A_value_moves_outward_to_the_step_of_its_figure(string name, double value, bool isUp, double moved) => Assert.Equal((decimal)moved, OurWay.Outward(name switch
    {
        "max_share" => Figure.Number(name, 0.6m, FigureUnit.Share),
        "ratio" => Figure.Number(name, 1.3m, FigureUnit.Count),
        _ => Figure.Number(name, 14, FigureUnit.Days),
    }, (decimal)value, isUp));

    [Fact]
    public void Two_acceptances_are_an_exception_three_are_a_way()
    {
        var season = Plans.Of(Rises);
        Assert.Empty(Offers(Accepting(season, "weekly-ramp", 2)));
        var offer = Assert.Single(Offers(Accepting(season, "weekly-ramp", 3)));
        Assert.Equal(("weekly-ramp", 3, 3), (offer.Rule.Id, offer.Accepted, offer.Silent));
        Assert.Empty(offer.Left);
    }

    /// <summary>22 % passes the level of a warning, then that of a caution, then the points of load: all three move, and no further.</summary>
    [Fact]
    public void Every_figure_that_stands_in_the_way_moves_to_the_largest_accepted_value()
    {
        var season = Accepting(Plans.Of(Rises), "weekly-ramp", 3);
        var offer = Assert.Single(Offers(season));
        Assert.Equal(["caution_points=11", "caution_up=0.22", "warning_up=0.22"], Texts(offer), StringComparer.Ordinal);
        var setup = offer.Edits.Aggregate(Plans.Team(), (sum, edit) => sum.With(Assert.IsType<Accepted>(Decider.Decide(sum, edit)).Step));
        Assert.DoesNotContain(Rulebook.Check(season, setup).Findings, finding => finding.Rule.Id == "weekly-ramp");
    }

    [Fact]
    public void A_larger_breach_that_was_not_accepted_is_left()
    {
        var season = Plans.Of(Rises + " B50 B50 B70");
        var accepted = Accepting(season, "weekly-ramp", 3, finding => finding.Value < 0.3m);
        var offer = Assert.Single(Offers(accepted));
        Assert.Contains("warning_up=0.22", Texts(offer), StringComparer.Ordinal);
        Assert.Equal(0.4m, Assert.Single(offer.Left).Value);
    }

    [Fact]
    public void Where_no_figure_was_passed_the_rule_is_offered_off()
    {
        var season = Plans.Of("CO: C60 C60 C60 C60 C60 C60 C60 C60");
        // Three acceptances of one rule without a figure, made by hand: no plan of the demo has three.
        var rule = Rulebook.Of("taper-length");
        var place = new Place($"week/{Plans.Week(3)}", 3, 3);
        var lived = Enumerable.Range(3, 3).Select(week => new AcceptedFinding(
            new Finding(rule, "missing", place with { About = $"match/m{week}", First = week, Last = week }, Severity.Caution, "", 0, 4, "", 4, 4, false, ValueList<SeasonEdit>.Empty, 1, ""), new Acceptance("Fixture list", 4, "")));
        var offer = Assert.Single(OurWay.Of(season, Plans.Team(), new Checkup([], lived.ToValueList(), [])));
        Assert.Equal(["on=no"], Texts(offer), StringComparer.Ordinal);
    }

    [Fact]
    public void Nothing_is_offered_for_stops_and_for_rules_nobody_may_switch_off()
    {
        var season = Plans.Of("CO: C60 C60 C60 C60");
        foreach (var (id, severity) in new[] { ("illness-return", Severity.Warning), ("match-gap-short", Severity.Stop) })
        {
            var lived = Enumerable.Range(1, 4).Select(week => new AcceptedFinding(
                new Finding(Rulebook.Of(id), "short", new Place($"match/m{week}", week, week), severity, "", 40, 72, "", 32, 32, true, ValueList<SeasonEdit>.Empty, 1, ""), new Acceptance("Released", 32, "")));
            Assert.Empty(OurWay.Of(season, Plans.Team(), new Checkup([], lived.ToValueList(), [])));
        }
    }

    private static ValueList<OurWay> Offers(Season season) => OurWay.Of(season, Plans.Team(), Rulebook.Check(season, Plans.Team()));

    private static Season Accepting(Season season, string rule, int times, Func<Finding, bool>? which = null) => Rulebook.Check(season, Plans.Team()).Findings
        .Where(finding => finding.Rule.Id == rule && (which?.Invoke(finding) ?? true)).Take(times)
        .Aggregate(season, (sum, finding) => sum.With(Assert.IsType<Accepted>(Decider.Decide(sum, finding.Accept("Our players know it"))).Step));

    private static IEnumerable<string> Texts(OurWay offer) => offer.Edits.Select(edit => $"{edit.Parameter.Name}={edit.Value}").Order(StringComparer.Ordinal);
}
