namespace Seasonwright.Core.Tests.Rules.OfDay;

public class SameDayStrengthEnduranceTests : RuleTable
{
    [Theory]
    // From the end at 9:55 to six in the evening are eight hours, to two in the afternoon four.
    [InlineData("B60(0,L1,E1e)", "Checked")]
    [InlineData("B60(0,L1,E1a)", "gap caution 1")]
    [InlineData("B60(0,L1,E1a)", "Checked", "best_h=4")]
    [InlineData("B60(0,U1,I1a)", "gap caution 1")]
    [InlineData("B60(0,L1@09:00,E1@10:30)", "gap caution 1")]
    [InlineData("B60+p2(0,L1@09:00,E1@10:30)", "gap warning 1")]
    [InlineData("B60+p1(0,L1@09:00,E1@10:30)", "gap caution 1")]
    [InlineData("B60+p2(0,L1,E1a)", "gap caution 1")]
    // The one that matters less comes first.
    [InlineData("B60+s2(0,E1,L1a)", "endurance-first caution 1")]
    [InlineData("B60+s2a2(0,E1,L1a)", "gap caution 1")]
    [InlineData("B60+a2(0,L1,E1a)", "strength-first caution 1")]
    [InlineData("B60+a2(0,U1,E1a)", "gap caution 1")]
    [InlineData("B60+s2(0,E1,L1e)", "Checked")]
    [InlineData("B60(0,L1,E2)", "NothingToCheck")]
    [InlineData("B60(0,L1,p1)", "NothingToCheck")]
    [InlineData("B60(0,L1#A,E1a#B)", "NothingToCheck")]
    [InlineData("C60/6", "TooLittle")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
