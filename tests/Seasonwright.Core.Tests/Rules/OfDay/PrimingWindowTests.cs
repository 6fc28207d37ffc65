namespace Seasonwright.Core.Tests.Rules.OfDay;

public class PrimingWindowTests : RuleTable
{
    [Theory]
    // Worked: over at ten for a match at eight in the evening, or at three.
    [InlineData("C60/6@20:00(A6@09:40)", "Checked")]
    [InlineData("C60/6@15:00(A6@09:40)", "late caution 1")]
    [InlineData("C60/6@18:30(A5)", "Checked")]
    [InlineData("C60/6@20:00(A5)", "early caution 1")]
    [InlineData("C60/6@20:00(A5e)", "Checked")]
    [InlineData("C60/6@18:30(A4)", "early caution 1")]
    // Whole days where the kick-off is not known; on the day itself nobody can tell.
    [InlineData("C60/6(A5)", "Checked")]
    [InlineData("C60/6(A4)", "early caution 1")]
    [InlineData("C60/6(A6)", "TooLittle")]
    [InlineData("C60/6@18:30(A5:s7.85)", "sets caution 1")]
    [InlineData("C60/6@18:30(A5:s6.85)", "Checked")]
    [InlineData("C60/6@18:30(A5:s7.75)", "Checked")]
    [InlineData("C60/6@18:30(A5x31)", "long caution 1")]
    [InlineData("C60/6@18:30(A5r5.5)", "hard caution 1")]
    [InlineData("C60/6@18:30(A5r5.5)", "Checked", "max_rpe=6")]
    // Four days before, it is meant for no match.
    [InlineData("C60/6@18:30(A2)", "NothingToCheck")]
    [InlineData("C60/6@18:30(A5!)", "NothingToCheck")]
    [InlineData("C60/6", "TooLittle")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
