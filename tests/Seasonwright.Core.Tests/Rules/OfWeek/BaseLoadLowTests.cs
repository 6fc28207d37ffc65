namespace Seasonwright.Core.Tests.Rules.OfWeek;

public class BaseLoadLowTests : RuleTable
{
    [Theory]
    [InlineData("B51x4 C70/6", "Checked")]
    [InlineData("B51x2 B50x2 C70/6", "Checked")]
    [InlineData("B50x4 C70/6", "low caution 5")]
    [InlineData("B50x5 C70/1", "low caution 5-6")]
    [InlineData("B50x4 B50x2 C70/1", "low caution 6-7")]
    // A week off is left out.
    [InlineData("B51x4 X C60/6", "Checked")]
    [InlineData("B50x4 X C60/6", "low caution 6")]
    [InlineData("B51x3 X C60/6", "TooLittle")]
    [InlineData("B50x3 - C70/6", "TooLittle")]
    [InlineData("B50x3 C70/6", "NothingToCheck")]
    [InlineData("B50x6", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
