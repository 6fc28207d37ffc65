namespace Seasonwright.Core.Tests.Rules.OfWeek;

public class MonotonyAndStrainTests : RuleTable
{
    private const string Firm = "highest_severity=warning";

    [Theory]
    // Practices of one load on five days: 1.46; on six: 2.27.
    [InlineData("B60(p12345,D1!)", "Checked")]
    [InlineData("B60(p123456,D1!)", "alike caution 1")]
    [InlineData("B60(p123456,D1!)", "alike warning 1", Firm)]
    [InlineData("B60(p1234567,D1!)", "same caution 1")]
    [InlineData("B60(p1234567,D1!)", "same warning 1", Firm)]
    // 800, 400, 800, 800, 400, 800, 0: 1.82.
    [InlineData("B60(p1346r5x160,p25r4x100,D1!)", "alike caution 1", Firm)]
    [InlineData("B60(p1346r5x160,p25r4x100,D1!)", "Checked", "caution_m=1.82")]
    // A match is a load like any other, 100 AU here.
    [InlineData("C60/6(p12345r5x20,D1!)", "alike caution 1")]
    // Six weeks of 0.80 and a heavier one.
    [InlineData("B60(p135,D1!)x6 B60(p1234r9,D1!)", "strain caution 7")]
    [InlineData("B60(p135,D1!)x6 B60(p1234r9,D1!)", "Checked", "strain_factor=3")]
    [InlineData("B60(p135,D1!)x5 B60(p1234r9,D1!)", "Checked")]
    [InlineData("B60(p135,D1!)x3 B60 B60(p135,D1!)x3 B60(p1234r9,D1!)", "Checked")]
    [InlineData("B60(p12345,U6r5.5x90#A,D1!)", "alike caution 1")]
    [InlineData("B60(p123456)", "TooLittle")]
    [InlineData("B60(D123456)", "TooLittle")]
    [InlineData("B60", "TooLittle")]
    [InlineData("X", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
