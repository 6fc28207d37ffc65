namespace Seasonwright.Core.Tests.Rules.OfSeason;

public class UnloadingSizeTests : RuleTable
{
    [Theory]
    [InlineData("GP: B100x3 U70", "Checked")]
    [InlineData("GP: B100x3 U71", "small caution 4")]
    [InlineData("GP: B100x3 U50", "Checked")]
    [InlineData("GP: B100x3 U49", "large caution 4")]
    [InlineData("GP: B80x3 U90", "rise caution 4")]
    // In the competition less, and the match is no training.
    [InlineData("CO: C90/6x3 U78/6", "Checked")]
    [InlineData("CO: C90/6x3 U79/6", "small caution 4")]
    [InlineData("CO: C90/6x3 U66/6", "Checked")]
    [InlineData("CO: C90/6x3 U65/6", "large caution 4")]
    // One easier week, not two.
    [InlineData("GP: B100x3 U60x2", "days caution 4-5")]
    [InlineData("GP: B100x3 U60x2", "Checked", "max_days=14")]
    [InlineData("GP: B100x3 U60", "days caution 4", "min_days=8")]
    [InlineData("GP: B60x3 U", "Checked")]
    [InlineData("GP: B60x3", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
