namespace Seasonwright.Core.Tests.Rules.OfBlock;

public class HypertrophyLateTests : RuleTable
{
    [Theory]
    [InlineData("CO: C70+y2", "competition caution 1")]
    [InlineData("CO: C70+y2x3", "competition caution 1-3")]
    [InlineData("GP: B60+y2 B60x3 CO: C70/1!", "Checked")]
    [InlineData("GP: B60+y2 B60x2 CO: C70/6!", "close caution 1")]
    [InlineData("GP: B60+y2 B60x2 CO: C70/7!", "Checked")]
    [InlineData("CO: C70+y1", "NothingToCheck")]
    [InlineData("GP: B60x3", "TooLittle")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
