namespace Seasonwright.Core.Tests.Rules.OfBlock;

public class AerobicUpkeepTests : RuleTable
{
    [Theory]
    [InlineData("B60+a1x2", "few caution 1-2")]
    [InlineData("B60+a1 B60+a2", "Checked")]
    [InlineData("B60+a1h1x2", "Checked")]
    // A match is an exposure.
    [InlineData("C70/6+a1x2", "Checked")]
    [InlineData("C70/6+s1x2", "few caution 1-2")]
    [InlineData("B60x2", "TooLittle")]
    [InlineData("N20+a1x2", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
