namespace Seasonwright.Core.Tests.Rules.OfDay;

public class DayBeforeMatchHeavyTests : RuleTable
{
    private const string Alone = "heavy-lower-before-match.on=no";

    [Theory]
    [InlineData("C60/6(p1234,D2,p5r3x45,A5)", "Checked")]
    [InlineData("C60/6(p1234,D2)", "Checked")]
    [InlineData("C60/6(p1234,D2,p5r4.5x45)", "effort warning 1")]
    [InlineData("C60/6(p1234,U5)", "effort warning 1")]
    [InlineData("C60/6(p1234,D2,p5r3x61)", "long caution 1")]
    [InlineData("C60/6(p1234,D2,p5r3x61)", "Checked", "max_minutes=90")]
    [InlineData("C60/6(p1234,I5)", "content warning 1")]
    [InlineData("C60/6(p1234,T5r3)", "content warning 1")]
    [InlineData("C60/6(p1234,L5)", "content warning 1", Alone)]
    // The same session is told once, by the hours to the match.
    [InlineData("C60/6(p1234,L5)", "Checked")]
    [InlineData("C60/6(p1234,L5,I5a)", "content warning 1")]
    // 60 x 4 AU are more than six tenths of 90 x 4; 45 x 4 are half, and still not the least of the week.
    [InlineData("C60/6(p12r4x90,D2!,p5r4x60)", "share warning 1")]
    [InlineData("C60/6(p12r4x90,D2!,p3r2x60,p5r4x45)", "lightest caution 1")]
    [InlineData("C60/6(p12r4x90,D2!,p5r4x45)", "Checked")]
    [InlineData("C60/6(0,E12r4x90,E5r4x60)", "share warning 1")]
    [InlineData("C60/6(0,E12r4x90,R3x60,R5r4x45)", "lightest caution 1")]
    [InlineData("C60/6(0,E12r4x90,R5x70)", "long caution 1")]
    // What primes has a cap of its own; nothing beside it, nothing to compare with.
    [InlineData("C60/6(0,A5r5)", "Checked")]
    [InlineData("C60/6(p5r4x60,D1!)", "Checked")]
    // The day before is a match day, or lies before the season.
    [InlineData("C60/5/6(p123,D2)", "Checked")]
    [InlineData("C60/1(p3,D2)", "NothingToCheck")]
    // Without the practices' days, or ours, the day is not known; what is in it is.
    [InlineData("C60/6(D2)", "TooLittle")]
    [InlineData("C60/6(p1234)", "TooLittle")]
    [InlineData("C60/6(p12345)", "effort warning 1")]
    [InlineData("C60/6", "TooLittle")]
    // Only one group's day is hard.
    [InlineData("C60/6(p1234,D2,I5#A,A5#B)", "content warning 1")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
