namespace Seasonwright.Core.Tests.Rules.OfWeek;

public class SingleExposureSpikeTests : RuleTable
{
    private const string Sprints = "enabled_for=sprint_metres", Jumps = "enabled_for=run_distance, jump_contacts";

    [Theory]
    [InlineData("B60(0,S135:v200m)x2 B60(0,S1:v220m)", "Checked", Sprints)]
    [InlineData("B60(0,S135:v200m)x2 B60(0,S1:v221m)", "metres caution 3", Sprints)]
    [InlineData("B60(0,S135:v200m)x2 B60(0,S1:v450m)", "metres warning 3", Sprints)]
    [InlineData("B60(0,S135:v200m)x2 B60(0,S1:v450m)", "metres caution 3", Sprints + "; warning_up=2")]
    [InlineData("B60(0,W135:p80c)x2 B60(0,W1:p100c)", "contacts caution 3", Jumps)]
    // Six sessions within the thirty days before.
    [InlineData("B60(0,S135:v200m) B60(0,S13:v200m) B60(0,S1:v450m)", "TooLittle", Sprints)]
    [InlineData("B60(0,S135:v200m)x2 B60x4 B60(0,S1:v450m)", "TooLittle", Sprints)]
    [InlineData("B60(0,S135:v200m#A)x2 B60(0,S1:v450m#B)", "TooLittle", Sprints)]
    // Distance run is not in sessions.
    [InlineData("B60(0,S135:v200m)x2 B60(0,S1:v450m)", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
