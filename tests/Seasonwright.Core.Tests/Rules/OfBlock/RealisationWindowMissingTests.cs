namespace Seasonwright.Core.Tests.Rules.OfBlock;

public class RealisationWindowMissingTests : RuleTable
{
    [Theory]
    [InlineData("GP: B60+s2 CO: C70/6!+s2", "missing caution 2")]
    [InlineData("GP: B60+s2 CO: C70/6!+s1", "Checked")]
    // Power or speed in focus is the window.
    [InlineData("GP: B60+s2 CO: C70/6!+s2v3", "Checked")]
    [InlineData("GP: B60+s2 CO: C70/6!+s2p3", "Checked")]
    [InlineData("GP: B60+s2 CO: C70/2!+s1", "missing caution 1-2")]
    [InlineData("GP: B60 CO: C70/6!", "TooLittle")]
    [InlineData("GP: B60+s2 CO: C70/6+s2", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
