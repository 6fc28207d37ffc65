using Seasonwright.Core.Edits;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Tests.Rules;

/// <summary>The history names rules and figures as people do, and tells what it no longer knows as it stands in the log.</summary>
public class RuledHistoryTests
{
    private static readonly Setup Team = Plans.Team();

    [Theory]
    [InlineData("weekly-ramp", "caution_up", "0.12", "Weekly rise in load: \"Rise that gives a caution, as a share\" set to 12 %")]
    [InlineData("weekly-ramp", "caution_up", null, "Weekly rise in load: \"Rise that gives a caution, as a share\" back to its default, 15 %")]
    [InlineData("weekly-ramp", "on", "no", "Weekly rise in load: \"Switched on\" set to no")]
    [InlineData("weekly-ramp", "caution_up", "a lot", "Set weekly-ramp:caution_up to a lot")]
    [InlineData("weekly-ramp", "gone", "1", "Set weekly-ramp:gone to 1")]
    [InlineData("gone", "caution_up", "1", "Set gone:caution_up to 1")]
    public void A_figure_is_told_with_its_rule_and_its_label(string rule, string figure, string? value, string told) =>
        Assert.Equal(told, RuledHistory.Describe(Team, new SetRuleParameter(new(rule, figure), value)));

    [Fact]
    public void A_finding_is_told_with_the_name_of_its_rule()
    {
        var season = Plans.Of("GP: B60 B80");
        var reopen = new ReopenFinding(new("weekly-ramp", "rise", "week/w2"));
        Assert.Equal("Reopened a finding of Weekly rise in load", RuledHistory.Describe(season, Team, reopen));
        Assert.Equal("Accepted a finding of Weekly rise in load: agreed", RuledHistory.Describe(season, Team, new AcceptFinding(reopen.Finding, new Acceptance("agreed", 0.2m, ""))));
        Assert.Equal("Reopened a finding of gone", RuledHistory.Describe(season, Team, new ReopenFinding(new("gone", "rise", "week/w2"))));
    }
}
