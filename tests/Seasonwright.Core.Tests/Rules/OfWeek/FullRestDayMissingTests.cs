namespace Seasonwright.Core.Tests.Rules.OfWeek;

public class FullRestDayMissingTests : RuleTable
{
    [Theory]
    [InlineData("B60(p135,D24)", "Checked")]
    [InlineData("B60(p135,D246)", "Checked")]
    [InlineData("B60(p135,D246,U7)", "none warning 1")]
    [InlineData("B60(p135,D246,U7!)", "Checked")]
    [InlineData("B60(p135,D246)", "none warning 1", "min_rest_days=2")]
    // Seven days in a row over two weeks, each with a free day.
    [InlineData("B60(p2,D34567) B60(p1,D23456)", "none warning 2")]
    [InlineData("B60(p2,D34567) B60(p2,D34567)", "Checked")]
    // A match takes its day, and so does travel of more than four hours; a test does.
    [InlineData("C60/7(p135,D246)", "none warning 1")]
    [InlineData("B60(p135,D246) *Travel,1.7-1.7,1.7@10:00-15:00", "none warning 1")]
    [InlineData("B60(p135,D246) *Travel,1.7-1.7,1.7@10:00-14:00", "Checked")]
    [InlineData("B60t7(p135,D246)", "none warning 1")]
    [InlineData("C60/1/2/3/4/5/6/7(p1,D2)", "none warning 1 forced")]
    // Of two groups each has its free day; of one that has none it is said.
    [InlineData("B60(p135,D24,U6#A,U7#B)", "Checked")]
    [InlineData("B60(p135,D24,U67#A,U7#B)", "none warning 1")]
    // Days that are not known make no window.
    [InlineData("B60(D1234567)", "TooLittle")]
    [InlineData("B60(p1234567)", "TooLittle")]
    [InlineData("B60(p2,D34567) B60 B60(p1,D23456)", "Checked")]
    [InlineData("B60", "TooLittle")]
    [InlineData("X", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
