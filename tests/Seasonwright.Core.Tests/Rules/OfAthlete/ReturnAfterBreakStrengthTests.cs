using Seasonwright.Core.Edits;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Tests.Rules.OfAthlete;

public class ReturnAfterBreakStrengthTests : RuleTable
{
    [Theory]
    [InlineData("B50t5", "Checked")]
    [InlineData("B50t4", "test warning 1")]
    [InlineData("B50t4j", "NothingToCheck")]
    [InlineData("B50 B60t1", "NothingToCheck")]
    [InlineData("B50t1", "NothingToCheck", "return-after-break-volume.season_start=kept")]
    [InlineData("B50 Xx2 E40t2", "test warning 4")]
    [InlineData("B50 Xx2 E40t6", "Checked")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);

    /// <summary>A season that begins on a Saturday has a first week of two days: its Tuesday is day 4, its Wednesday day 5.</summary>
    [Theory]
    [InlineData(2, 4)]
    [InlineData(3, null)]
    public void Days_are_counted_beyond_a_short_first_week(int day, int? dayBack)
    {
        var season = Plans.After(Season.Empty(new("s")), [
            new StartSeason(Plans.Monday.AddDays(-2), DayOfWeek.Monday, [Plans.Week(1), Plans.Week(2)], new("Harbour Vale")),
            new SetTestDay(new TestDay(new("t1"), Plans.Day(1, day), "Strength")),
        ]);
        var finding = Rulebook.Check(season, Plans.Team()).Findings.SingleOrDefault(finding => finding.Rule.Id == Rule);
        Assert.Equal(dayBack, finding?.Value);
        // It is moved to the first day that the rule has nothing against.
        if (finding is not null) Assert.Equal(Plans.Day(1, 3), Assert.IsType<SetTestDay>(Assert.Single(finding.Remedy)).TestDay.Day);
    }
}
