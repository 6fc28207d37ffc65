namespace Seasonwright.Core.Tests.Rules.OfBlock;

public class QualityLeftIdleTests : RuleTable
{
    [Theory]
    [InlineData("B60+a2 B60+h2x4 B60+a2", "Checked")]
    [InlineData("B60+a2 B60+h2x5 B60+a2", "aerobic_endurance caution 2-6")]
    [InlineData("B60+s2h2 B60+h2x4 B60+s1h2", "Checked")]
    [InlineData("B60+s2h2 B60+h2x5 B60+s1h2", "max_strength caution 2-6")]
    [InlineData("B60+h2 B60+a2x2 B60+h2", "Checked")]
    [InlineData("B60+h2 B60+a2x3 B60+h2", "anaerobic_glycolytic caution 2-4")]
    // Matches are a dose of both kinds of endurance.
    [InlineData("B60+h2 B60+a2 B60/6+a2 B60+a2 B60+h2", "Checked")]
    // Speed has a rule of its own, which speaks first.
    [InlineData("B60+v2h2 B60+h2 B60+v1h2", "Checked")]
    [InlineData("B60+v2h2 B60+h2 B60+v1h2", "max_speed caution 2", "sprint-exposure-gap.on=no")]
    // What was never developed cannot fade; breaks and transitions do not count.
    [InlineData("B60+s1h2 B60+h2x5 B60+s1h2", "Checked")]
    [InlineData("B60+s2h2 B60+h2x2 Nx3 B60+h2x2 B60+s1h2", "Checked")]
    [InlineData("B60x3", "TooLittle")]
    [InlineData("Nx3", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
