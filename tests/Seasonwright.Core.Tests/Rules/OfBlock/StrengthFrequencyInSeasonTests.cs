namespace Seasonwright.Core.Tests.Rules.OfBlock;

public class StrengthFrequencyInSeasonTests : RuleTable
{
    [Theory]
    [InlineData("CO: C70/6+s1x3", "Checked")]
    [InlineData("CO: C70/6+s1 C70/6+v1 C70/6+s1", "gap warning 2")]
    [InlineData("CO: C70/6+s1 C70/6+v1 C70/6+s1", "Checked", "max_gap_days=14")]
    // Nothing follows: a week's gap is all that is known.
    [InlineData("CO: C70/6+s1x2 C70/6+v1", "Checked")]
    [InlineData("CO: C70/6+s1x2 C70/6+v1x2", "gap warning 3-4")]
    [InlineData("CO: C70/6+s2", "Checked")]
    [InlineData("CO: C70/6+s3", "many-one caution 1")]
    [InlineData("CO: G60/3/6+s1", "Checked")]
    [InlineData("CO: G60/3/6+s2", "many-two caution 1")]
    [InlineData("CO: C70+s3", "Checked")]
    [InlineData("CO: C70/6", "TooLittle")]
    [InlineData("GP: B60+s1", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
