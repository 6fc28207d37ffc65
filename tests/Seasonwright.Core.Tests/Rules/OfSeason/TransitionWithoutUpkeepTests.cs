namespace Seasonwright.Core.Tests.Rules.OfSeason;

public class TransitionWithoutUpkeepTests : RuleTable
{
    [Theory]
    [InlineData("B60+s2 N20x2", "Checked")]
    [InlineData("B60+s2 N20x3", "idle caution 2-4")]
    [InlineData("B60+s2 N20x2 N20+a1 N20", "Checked")]
    [InlineData("B60+s2 N20 N20+s1 N20x3", "idle caution 4-6")]
    [InlineData("GP: B60+s2 TR: Xx3", "idle caution 2-4")]
    [InlineData("B60 N20x3", "TooLittle")]
    [InlineData("B60+s2", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
