namespace Seasonwright.Core.Tests.Rules.OfWeek;

public class HeavyWeekInCongestionTests : RuleTable
{
    [Theory]
    [InlineData("C80/6 G62/3/6", "Checked")]
    [InlineData("C80/6 G63/3/6", "heavy warning 2")]
    [InlineData("C80/6 B60/3/6", "kind warning 2")]
    [InlineData("C80/2 G80/1/6", "NothingToCheck")]
    [InlineData("G60/3/6", "TooLittle")]
    [InlineData("C80/6 G/3/6", "TooLittle")]
    [InlineData("C80/6x2", "NothingToCheck")]
    // Work that develops beside two matches.
    [InlineData("C60/6 G40/2/6(Y4)", "content warning 2")]
    [InlineData("C60/6 G40/2/6(L4:s7)", "content warning 2")]
    [InlineData("C60/6 G40/2/6(L4:s7)", "Checked", "max_sets_lower=7")]
    [InlineData("C60/6 G40/2/6(L4:s6)", "Checked")]
    [InlineData("C60/6 G40/2/6(Y4!)", "Checked")]
    [InlineData("G40/2/6(Y4)", "content warning 1")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
