namespace Seasonwright.Core.Tests.Rules.OfSeason;

public class BuildingRunTooLongTests : RuleTable
{
    [Theory]
    [InlineData("GP: B60x3", "Checked")]
    [InlineData("GP: B60x4", "preparation caution 1-4")]
    [InlineData("GP: B60x6", "preparation caution 1-6")]
    [InlineData("GP: B60x7", "preparation warning 1-7")]
    [InlineData("GP: B60x7", "preparation warning 1-7", "max_building_weeks=9")]
    [InlineData("CO: C70x8", "Checked")]
    [InlineData("CO: C70x9", "season caution 1-9")]
    [InlineData("GP: B60x3 U40 B60x3", "Checked")]
    // A week that holds neither adds to the run nor ends it.
    [InlineData("GP: B60x2 E50 B60", "Checked")]
    [InlineData("GP: B60x2 E50 B60x2", "preparation caution 1-5")]
    // At four fifths of the weeks before, a week unloads whatever it is called.
    [InlineData("GP: B60x3 B48 B60x3", "Checked")]
    [InlineData("GP: B60x3 B49 B60x3", "preparation warning 1-7")]
    [InlineData("GP: -x5", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
