using Seasonwright.Core.Rules;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Truth.Tests.Rules;

/// <summary>
/// Source: the worked checks of the reference the rulebook was written from, those that a plan feeds; loads are theirs in AU, with
/// one point at 10 AU. Where our defaults depart (see tests/Cases/rules/departures.csv) its own figures are set.
/// </summary>
public class WorkedCaseTruth
{
    private const string LiteralRamp = "caution_up=0.1; caution_points=300";

    [Theory]
    // This week 2,400; before 1,800, 1,900, 2,000, 1,500: 1.33, caution.
    [InlineData("trailing-four-spike", "B180 B190 B200 B150 B240", "spike caution 5", 1.33, "weekly-ramp.on=no")]
    // One of the four weeks missing: gated, no value shown.
    [InlineData("trailing-four-spike", "B180 - B200 B150 B240", "TooLittle", null)]
    // 2,000, 2,100, unloading 1,300, next 2,200: held against 2,100, + 4.8 %, no flag.
    [InlineData("weekly-ramp", "B200 B210 U130 B220", "Checked", null, LiteralRamp)]
    // 2,000 then 2,300: + 15 %, caution.
    [InlineData("weekly-ramp", "B200x2 B230", "rise caution 3", 0.15, LiteralRamp)]
    // Taper: reference 500 min a week, 260: 48 % less, no flag; 340: 32 %, caution.
    [InlineData("taper-volume", "B50x2 T26x2", "Checked", null)]
    [InlineData("taper-volume", "B50x2 T34x2", "full caution 3-4", 0.32)]
    // Ends Thursday 23:00, next starts Sunday 18:00: 67 h, warning; Monday 12:00: 85 h, caution.
    [InlineData("match-gap-short", "C60/4@21:00/7@18:00", "short warning 1 forced", 67d)]
    [InlineData("match-gap-short", "C60/4@21:00 C60/1@12:00", "short caution 2 forced", 85d)]
    // Two zones east: no flag. Six, four days: need 6, caution; two days before a decisive match: warning.
    [InlineData("time-zone-arrival", "C60/1! *Travel,1.1-1.7,1.1+2", "Checked", null)]
    [InlineData("time-zone-arrival", "C60/5 *Travel,1.1-1.7,1.1+6", "east caution 1 forced", 4d)]
    [InlineData("time-zone-arrival", "C60/3! *Travel,1.1-1.7,1.1+6", "east warning 1 forced", 2d)]
    public void A_plan_says_what_was_worked_out(string rule, string plan, string says, double? value, string figures = "")
    {
        Assert.Equal(says, Plans.Say(rule, plan, figures));
        Assert.Equal((decimal?)value, Rulebook.Check(Plans.Of(plan), Plans.Team(rule, figures)).Findings.SingleOrDefault(finding => finding.Rule.Id == rule)?.Value);
    }

    /// <summary>The days a trip needs are said: six for six zones east.</summary>
    [Fact]
    public void The_limit_of_a_trip_is_what_it_needs() =>
        Assert.Equal(6, Rulebook.Check(Plans.Of("C60/5 *Travel,1.1-1.7,1.1+6"), Plans.Team()).Findings.Single(finding => finding.Rule.Id == "time-zone-arrival").Limit);
}
