using Seasonwright.Core.Edits;
using Seasonwright.Core.Rules;

namespace Seasonwright.Core.Tests.Rules.OfWeek;

public class WeeklyRampTests : RuleTable
{
    [Theory]
    // Ten points and 15 %, whichever is less; the first two weeks back follow the ceilings.
    [InlineData("B60x2 B69", "Checked")]
    [InlineData("B60x2 B70", "rise caution 3")]
    [InlineData("B80x2 B90", "Checked")]
    [InlineData("B80x2 B91", "rise caution 3")]
    // Contested: called a warning only by a team that wants it.
    [InlineData("B60x2 B73", "rise caution 3")]
    [InlineData("B60x2 B73", "rise warning 3", "highest_severity=warning")]
    [InlineData("B60x2 B72", "rise caution 3", "highest_severity=warning")]
    // An easy week is no measure for the next.
    [InlineData("B60x3 U40 B65", "Checked")]
    [InlineData("B60x3 U40 B75", "rise caution 5")]
    [InlineData("B60x2 B70 B81", "rise caution 3-4")]
    [InlineData("?10x2 G40/1/3/6", "rise caution 3 forced")]
    [InlineData("B60x2 B", "TooLittle")]
    [InlineData("-x2 B60", "TooLittle")]
    [InlineData("B60x2", "NothingToCheck")]
    [InlineData("B60 B73", "rise caution 2", "return-after-break-volume.season_start=kept")]
    // Against a very light week every week is a rise.
    [InlineData("B60x3 B20 B60x2", "Checked")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);

    /// <summary>Each week is held against what is left of the one before, up to the first that may stay.</summary>
    [Theory]
    [InlineData("B60x2 B70 B81 U40 B85 B95", "3:69 4:79")]
    [InlineData("B60x2 B90 B110 B112", "3:69 4:79 5:89")]
    [InlineData("B80x2 B91 U50 B91", "3:90")]
    public void What_is_lowered_does_not_make_the_next_week_rise(string plan, string loads)
    {
        var remedy = Rulebook.Check(Plans.Of(plan), Plans.Team()).Findings.First(finding => finding.Rule.Id == Rule).Remedy.Cast<SetWeekLoad>();
        Assert.Equal(loads, string.Join(' ', remedy.Select(edit => $"{edit.First.Text[1..]}:{edit.Load!.Value.Au / 10}")));
    }
}
