namespace Seasonwright.Core.Tests.Rules.OfSeason;

public class MidseasonBreakMissingTests : RuleTable
{
    [Theory]
    [InlineData("CO: C70/6x26", "Checked")]
    [InlineData("CO: C70/6x28", "missing caution 1-28 forced")]
    [InlineData("CO: C70/6x27", "missing caution 1-27")]
    // Forced where the matches themselves last that long and leave no week for a break.
    [InlineData("CO: C70/6x13 C70 C70/6x13", "missing caution 1-27")]
    [InlineData("CO: C70/6x13 X C70/6x13", "Checked")]
    [InlineData("CO: C70/6x13 C70 C70/6x13 *Holiday,14.1-14.7,0%", "Checked")]
    [InlineData("CO: C70/6x13 C70 C70/6x13 *Holiday,14.1-14.6,0%", "missing caution 1-27")]
    // Without phases from the first official match to the last.
    [InlineData("?70/6x27", "Checked")]
    [InlineData("?70/6x28", "missing caution 1-28 forced")]
    [InlineData("CO: C70x30", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
