namespace Seasonwright.Core.Tests.Rules.OfDay;

public class PlyoContactsTests : RuleTable
{
    [Theory]
    [InlineData("B60(0,W1:p100c)", "Checked")]
    [InlineData("B60(0,W1:p141c)", "many caution 1")]
    [InlineData("B60(0,W1:p175c)", "many caution 1")]
    [InlineData("B60(0,W1:p176c)", "many warning 1")]
    [InlineData("B60(0,W1:p141c)", "Checked", "limit.beginner=150; limit.advanced=150")]
    // What lies between a beginner's and an advanced athlete's limit hangs on the athletes.
    [InlineData("B60(0,W1:p120c)", "TooLittle")]
    [InlineData("B60(0,W1)", "TooLittle")]
    // Within 48 hours two sessions count as one.
    [InlineData("B60(0,W1:p80c,W2:p80c)", "close warning 1")]
    [InlineData("B60(0,W1:p80c,W3:p80c)", "Checked")]
    [InlineData("B60(0,W1:p40c,W2:p40c)", "Checked")]
    [InlineData("B60(0,W1:p80c#A,W2:p80c#B)", "Checked")]
    // From the second day before a match on six tenths are left, and in a week of two matches.
    [InlineData("C60/6(0,W4:p85c)", "many caution 1")]
    [InlineData("C60/6(0,W3:p85c)", "Checked")]
    [InlineData("C60/2/6(0,W4:p60c)", "Checked")]
    [InlineData("C60/1/7(0,W4:p110c)", "many warning 1")]
    // Practices may say theirs.
    [InlineData("B60(p1:p200c)", "many warning 1")]
    [InlineData("B60(0,L1)", "NothingToCheck")]
    [InlineData("C60/6", "TooLittle")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
