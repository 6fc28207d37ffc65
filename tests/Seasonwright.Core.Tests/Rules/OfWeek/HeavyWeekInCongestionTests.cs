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
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
