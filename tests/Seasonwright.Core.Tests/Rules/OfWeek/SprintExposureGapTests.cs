namespace Seasonwright.Core.Tests.Rules.OfWeek;

public class SprintExposureGapTests : RuleTable
{
    [Theory]
    [InlineData("B60+v1x3", "Checked")]
    [InlineData("B60+v2 B60+s1 B60+v1", "gap warning 2")]
    [InlineData("B60+v2 B60+s1 B60+v1", "gap caution 2", "limit_days=14")]
    [InlineData("B60+v2 B60+s1 B60+v1", "Checked", "limit_days=14; target_days=14")]
    // Nothing follows: a week's gap is all that is known.
    [InlineData("B60+v2x2 B60+s1", "Checked")]
    [InlineData("B60+v2 B60+s1x2", "gap warning 2-3")]
    [InlineData("B60+v2 X B60+v1", "Checked")]
    [InlineData("B60x3", "TooLittle")]
    [InlineData("Nx3", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
