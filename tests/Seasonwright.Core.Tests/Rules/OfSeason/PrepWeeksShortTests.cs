namespace Seasonwright.Core.Tests.Rules.OfSeason;

public class PrepWeeksShortTests : RuleTable
{
    [Theory]
    [InlineData("GP: B60x6 CO: C70/1", "Checked")]
    // Forced where the season's own first day comes too late.
    [InlineData("GP: B60x5 CO: C70/7", "short caution 1-6 forced")]
    [InlineData("GP: B60x4 CO: C70/1", "short caution 1-5 forced")]
    [InlineData("GP: B60x3 CO: C70/7", "short warning 1-4 forced")]
    [InlineData("?40x2 GP: B60x5 CO: C70/6", "short caution 3-8")]
    [InlineData("?40 GP: B60x3 CO: C70/6", "short warning 2-5")]
    // Friendlies start no competition.
    [InlineData("GP: B60x2 B60/6~ B60x3 CO: C70/6", "Checked")]
    [InlineData("GP: B60x3 CO: C70", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
