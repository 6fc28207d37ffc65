namespace Seasonwright.Core.Tests.Rules.OfWeek;

public class TestTimingTests : RuleTable
{
    [Theory]
    [InlineData("CO: C70/6t3", "Checked")]
    [InlineData("CO: C70/6t4", "before warning 1")]
    [InlineData("CO: C70/6t7", "after warning 1")]
    [InlineData("CO: C70/6 C70t1", "Checked")]
    [InlineData("CO: C70t3 C70/6!", "decisive warning 1")]
    [InlineData("CO: C70t2 C70/6!", "Checked")]
    // Later in the season, where another day may be free of the first days back too.
    [InlineData("C60 C70/6t4", "before warning 2")]
    [InlineData("C60 C70/6t7", "after warning 2")]
    [InlineData("C60 C70t3 C70/6!", "decisive warning 2")]
    [InlineData("GP: B60 B60t3", "Checked")]
    [InlineData("GP: B60x2 B60t3", "late caution 3")]
    [InlineData("GP: B50x3 U40 B60t2", "heavy caution 5")]
    [InlineData("GP: B50x3 U40 B52t2", "Checked")]
    // Jumps tire nobody.
    [InlineData("GP: B60x2 B60t3j", "NothingToCheck")]
    [InlineData("GP: B60x2 B60t3j", "late caution 3", "non_fatiguing_exempt=no")]
    [InlineData("GP: B60x3", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
