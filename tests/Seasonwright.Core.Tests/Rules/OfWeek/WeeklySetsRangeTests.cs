namespace Seasonwright.Core.Tests.Rules.OfWeek;

public class WeeklySetsRangeTests : RuleTable
{
    [Theory]
    [InlineData("B60+s2(0,L1:s4)", "Checked")]
    [InlineData("B60+s2(0,L1:s3)", "few-strength caution 1")]
    [InlineData("B60+s2(0,L1:s3)", "Checked", "str_min=3")]
    [InlineData("B60+s2(0,L1:s3,U3:s1)", "Checked")]
    [InlineData("B60+s2(0,L1:s3,U3:s1!)", "few-strength caution 1")]
    [InlineData("B60+s2(0,E1)", "few-strength caution 1")]
    [InlineData("B60+y2(0,Y14:y5)", "Checked")]
    [InlineData("B60+y2(0,Y14:y4)", "few-muscle caution 1")]
    [InlineData("B60+s1(0,D1:s2)", "Checked")]
    [InlineData("B60+s1(0,D1:s1)", "few-keep caution 1")]
    [InlineData("B60+s2(0,L1:s4#A,L1:s3#B)", "few-strength caution 1")]
    // Too many sets hang on the patterns they are of.
    [InlineData("B60+s2(0,L135:s20)", "Checked")]
    [InlineData("B60+s2(0,L1)", "TooLittle")]
    [InlineData("B60+s2(p1)", "TooLittle")]
    [InlineData("B60+v2(0,S1)", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
