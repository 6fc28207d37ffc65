namespace Seasonwright.Core.Tests.Rules.OfBlock;

public class QualityOrderTests : RuleTable
{
    [Theory]
    [InlineData("GP: B60+s2x3 B60+p2", "Checked", "return-after-break-volume.season_start=kept")]
    [InlineData("GP: B60+s2x2 B60+p2", "power caution 3", "return-after-break-volume.season_start=kept")]
    [InlineData("GP: B60+s2x2 B60+p1", "Checked", "return-after-break-volume.season_start=kept")]
    // The summer is an absence as well.
    [InlineData("GP: B60+s2x3 B60+p2", "strength caution 1")]
    [InlineData("GP: B60+y2x2 B60+s2", "Checked")]
    // After three weeks away strength needs a base of its own.
    [InlineData("N20x3 GP: B60+y2x2 B60+s2", "Checked")]
    [InlineData("N20x3 GP: B60+y2 B60+s2", "strength caution 5")]
    [InlineData("N20x2 GP: B60+s2", "Checked", "return-after-break-volume.season_start=kept")]
    [InlineData("N20x2 GP: B60+s2", "strength caution 3")]
    [InlineData("GP: B60x3", "TooLittle")]
    [InlineData("CO: C70+p2", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
