namespace Seasonwright.Core.Tests.Rules.OfAthlete;

public class ReturnAfterBreakStrengthTests : RuleTable
{
    [Theory]
    [InlineData("B50t5", "Checked")]
    [InlineData("B50t4", "test warning 1")]
    [InlineData("B50t4j", "NothingToCheck")]
    [InlineData("B50 B60t1", "NothingToCheck")]
    [InlineData("B50t1", "NothingToCheck", "return-after-break-volume.season_start=kept")]
    [InlineData("B50 Xx2 E40t2", "test warning 4")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
