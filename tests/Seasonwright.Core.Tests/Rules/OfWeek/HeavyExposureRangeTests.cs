namespace Seasonwright.Core.Tests.Rules.OfWeek;

public class HeavyExposureRangeTests : RuleTable
{
    [Theory]
    [InlineData("B60+s2(0,L1:s4.85)x2", "Checked")]
    [InlineData("B60+s2(0,L1:s4.75)x2", "none caution 1-2")]
    [InlineData("B60+s2(0,L1:s4.75)x2", "Checked", "max_gap_days=14")]
    [InlineData("B60+s2(0,L1:s4.75)x2", "Checked", "heavy_pct=0.75")]
    [InlineData("B60+s2(0,L1:s4.80) B60+s2(0,L1:s4.75)", "none caution 1-2")]
    [InlineData("B60+s2(0,L5:s4.80) B60+s2(0,L1:s4.75)", "Checked")]
    [InlineData("B60+s2(0,E1)x2", "none caution 1-2")]
    // Heavy leg work and small doses are heavy by their kind; what nobody said of other strength is not known.
    [InlineData("B60+s2(0,L1)x2", "Checked")]
    [InlineData("B60+s2(0,D1)x2", "Checked")]
    [InlineData("B60+s2(0,U1)x2", "TooLittle")]
    [InlineData("B60+s2(0,L1:s3.92,L3:s3.92,L5:s3.89)", "Checked")]
    [InlineData("B60+s2(0,L135:s3.92)", "many caution 1")]
    [InlineData("B60+s2(0,L135:s3.92)", "Checked", "max_very_heavy=3")]
    [InlineData("B60+s2(0,L1:s3.92#A,L35:s3.92#B)", "Checked")]
    [InlineData("B60+s2", "TooLittle")]
    [InlineData("B60+s1(0,E1)x2", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
