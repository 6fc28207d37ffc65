namespace Seasonwright.Core.Tests.Rules.OfSeason;

public class GeneralBeforeSpecificTests : RuleTable
{
    [Theory]
    [InlineData("GP: B60x2 SP: B70x2", "Checked")]
    [InlineData("GP: B60 SP: B70x2", "early caution 1-2")]
    [InlineData("SP: B70x2", "early caution 1")]
    [InlineData("GP: B60", "Checked")]
    [InlineData("SP: B70x2", "NothingToCheck", "return-after-break-volume.season_start=kept")]
    [InlineData("CO: C70 TR: N20x2 SP: B70", "early caution 4")]
    [InlineData("CO: C70 TR: N20 SP: B70", "NothingToCheck")]
    [InlineData("N20 SP: B70", "early caution 2")]
    [InlineData("N20 SP: B70", "NothingToCheck", "return-after-break-volume.season_start=kept")]
    [InlineData("?60x3", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
