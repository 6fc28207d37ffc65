namespace Seasonwright.Core.Tests.Rules.OfWeek;

public class SprintExposureGapTests : RuleTable
{
    [Theory]
    [InlineData("B60+v1x3", "Checked")]
    [InlineData("B60+v2 B60+s1 B60+v1", "gap warning 2")]
    [InlineData("B60+v2 B60+s1 B60+v1", "gap caution 2", "limit_days=14")]
    [InlineData("B60+v2 B60+s1 B60+v1", "Checked", "limit_days=14; target_days=14")]
    // Nothing follows: a week's gap is all that is known.
    [InlineData("B60+v2x2 B60+s1", "Checked")]
    [InlineData("B60+v2 B60+s1x2", "gap warning 2-3")]
    [InlineData("B60+v2 X B60+v1", "Checked")]
    // By days where sessions are laid out: from day 1 to day 3 of the next week are nine.
    [InlineData("B60(0,S14)x2", "Checked")]
    [InlineData("B60(0,S1) B60(0,S3)", "days caution 1-2")]
    [InlineData("B60(0,S1) B60(0,S6)", "days warning 1-2")]
    [InlineData("B60(0,S1) B60(0,S6!,p3:v100m)", "days caution 1-2")]
    [InlineData("B60+v1(0,L1)x2", "days warning 1-2")]
    [InlineData("B60(0,L1)", "Checked")]
    [InlineData("B60(0,S4#A,S14#B) B60(0,S7#A,S14#B)", "days caution 1-2", "limit_days=14")]
    // A week between two that nobody laid out is told by weeks.
    [InlineData("B60+v1 B60(0,L1) B60+v1", "gap warning 2")]
    [InlineData("B60+v1 B60(0,S1) B60+v1", "Checked")]
    [InlineData("B60+v1 B60(0,L1)x2 B60+v1", "days warning 2-3")]
    [InlineData("B60+v1 B60(0,L1) B60(0,S5) B60+v1", "days warning 2-3")]
    [InlineData("B60+v1 B60+s1 B60(0,L1)x2 B60+v1", "gap warning 2-4")]
    // A test of sprints is as fast as any.
    [InlineData("B60+v1t5v(0,L1) B60(0,S5)", "Checked")]
    [InlineData("B60+v1t5(0,L1) B60(0,S5)", "days warning 1-2")]
    [InlineData("B60x3", "TooLittle")]
    [InlineData("Nx3", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
