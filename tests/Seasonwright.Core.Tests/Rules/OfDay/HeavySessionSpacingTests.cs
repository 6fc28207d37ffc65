namespace Seasonwright.Core.Tests.Rules.OfDay;

public class HeavySessionSpacingTests : RuleTable
{
    [Theory]
    // Two days at the same hour are 48, and enough; from an evening to the second morning they are 39.
    [InlineData("B60(0,L1,L3)", "Checked")]
    [InlineData("B60(0,L1e,L3)", "heavy caution 1")]
    [InlineData("B60(0,L1,L2)", "heavy caution 1")]
    [InlineData("B60(0,L1e,L2)", "heavy warning 1")]
    [InlineData("B60(0,L1,L2)", "Checked", "min_h=24")]
    [InlineData("B60(0,L1,Y2)", "heavy caution 1")]
    [InlineData("B60(L7) B60(L1)", "heavy caution 2")]
    [InlineData("B60(0,S1,S3)", "Checked")]
    [InlineData("B60(0,S1,S2)", "sprint caution 1")]
    [InlineData("B60(0,S1,S1e)", "sprint warning 1")]
    // Sprints after heavy legs; the other way round is an accepted way.
    [InlineData("B60(0,L1,S2)", "heavy-sprint caution 1")]
    [InlineData("B60(0,S1,L1a)", "Checked")]
    [InlineData("B60(0,L1,S1a)", "heavy-sprint caution 1")]
    // Speed that is only touched is no sprint; metres are.
    [InlineData("B60(0,L1,p2:v)", "Checked")]
    [InlineData("B60(0,L1,p2:v200m)", "heavy-sprint caution 1")]
    [InlineData("B60(0,L1,D2,U2a)", "Checked")]
    [InlineData("B60(0,L1,L2!)", "Checked")]
    // Of two groups each has one.
    [InlineData("B60(0,L1#A,L2#B)", "Checked")]
    [InlineData("B60(0,L1#A,L2#A#B)", "heavy caution 1")]
    [InlineData("B60(0,U1,U2)", "NothingToCheck")]
    [InlineData("C60/6", "TooLittle")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
