namespace Seasonwright.Core.Tests.Rules.OfDay;

/// <summary>Two or three strength sessions on days that do not follow each other: Faigenbaum 2009, as in the rulebook.</summary>
public class YouthStrengthSpacingTests : SquadTable
{
    [Theory]
    [InlineData("B60(p135,L1,U3,D5)", "a15 t3", 1, "Checked")]
    [InlineData("B60(p135,L1,U3,D57)", "a15 t3", 1, "many caution 4")]
    [InlineData("B60(p135,L1,U2)", "a15 t3", 1, "close caution 24")]
    [InlineData("B60(p135,L1,U3m@07:00)", "a15 t3", 1, "close caution 46")]
    [InlineData("B60(p135,L1,U1a)", "a15 t3", 1, "close caution 5")]
    [InlineData("B60(p135,L1,U2)", "a15 t3", 1, "close caution 24", "min_gap_h=24")]
    [InlineData("B60(p135,L12)", "a15 t3", 1, "close caution 24")]
    [InlineData("B60(p135,L7) B60(p135,U1)", "a15 t3", 2, "close caution 24")]
    [InlineData("B60(p135,L7) B60(p135,U1)", "a15 t3", 1, "Checked")]
    // Whoever is sixteen and trained is not asked about, whoever is in the first year is.
    [InlineData("B60(p135,L12)", "a16 t1", 1, "NothingToCheck")]
    [InlineData("B60(p135,L12)", "a25 t0", 1, "close caution 24")]
    [InlineData("B60(p135,L12)", "a25 t0-366", 1, "NothingToCheck")]
    [InlineData("B60(p135,L12)", "a15", 1, "close caution 24")]
    [InlineData("B60(p135,L12)", "t0", 1, "close caution 24")]
    [InlineData("B60(p135,L12)", "a16", 1, "TooLittle")]
    [InlineData("B60(p135,L12)", "", 1, "TooLittle")]
    // Power and prevention are no strength sessions; what is done instead of something may be one.
    [InlineData("B60(p135,L1,W2,V2)", "a15", 1, "Checked")]
    [InlineData("B60(p135,U1,S2)", "a15 mod1.1:NoSprint", 1, "Checked")]
    [InlineData("B60(p135,U1,W2)", "a15 mod1.1:NoJump", 1, "close caution 24")]
    [InlineData("B60(p135,L12)", "a15 out1.2", 1, "Checked")]
    [InlineData("B60(p135,L12#B)", "a15 #A", 1, "Checked")]
    [InlineData("B60(p135)", "a15", 1, "TooLittle")]
    public void Says(string plan, string players, int week, string says, string figures = "") => Check(plan, players, week, says, figures);
}
