namespace Seasonwright.Core.Tests.Rules.OfDay;

public class HardDaysInARowTests : RuleTable
{
    [Theory]
    [InlineData("B60(p24,I1,I3)", "Checked")]
    [InlineData("B60(p24,I12)", "run caution 1")]
    [InlineData("B60(p24,I123)", "run warning 1")]
    [InlineData("B60(p24,I123)", "run caution 1", "warning_run=4")]
    [InlineData("B60(p24,I123)", "Checked", "warning_run=4; caution_run=4")]
    [InlineData("B60(p24,I12)", "Checked", "hard_rpe=8.5")]
    // Fifteen minutes are never hard; a practice may be.
    [InlineData("B60(p24,I1,I2x15)", "Checked")]
    [InlineData("B60(p24r7,I3)", "run warning 1")]
    [InlineData("B60(p12,I7) B60(p23,I1)", "run caution 1-2")]
    [InlineData("O60(p24,I123)", "Checked")]
    // Beside a match, where the rules of the days around it do not tell it.
    [InlineData("C60/6(p24,I5)", "Checked")]
    [InlineData("C60/6(p24,I5)", "match caution 1", "day-before-match-heavy.on=no")]
    [InlineData("C60/3@18:00(p1,I4)", "Checked")]
    [InlineData("C60/3@18:00(p1,I4)", "match caution 1", "day-after-match-hard.on=no")]
    [InlineData("C60/6(p24,I45)", "run warning 1")]
    // Two matches on two days are told by their gap.
    [InlineData("C60/5/6(p24,D1)", "Checked")]
    [InlineData("B60(p24,I1#A,I2#B)", "Checked")]
    [InlineData("B60(p24,I1,I2#B)", "run caution 1")]
    [InlineData("B60(p24)", "TooLittle")]
    [InlineData("B60(I1)", "TooLittle")]
    [InlineData("B60", "TooLittle")]
    [InlineData("X", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
