namespace Seasonwright.Core.Tests.Rules.OfWeek;

public class WeeklyHoursPresetTests : RuleTable
{
    private const string On = "preset=us_college; preset_date=2026-08-01";

    [Theory]
    [InlineData("C60/6(p1234,D12)", "Checked", On)]
    [InlineData("C60/6(p1234,D12)", "Off")]
    [InlineData("C60/6(p1234,D12)", "NothingToCheck", "preset=us_college; preset_date=2030-08-01")]
    // 5 x 235 and 100 minutes are 21.2 hours.
    [InlineData("C60(p12345x235,D6x100)", "week stop 1", On)]
    [InlineData("C60(p12345x235,D6x25)", "Checked", On)]
    [InlineData("C60(p1x243,D2)", "day stop 1", On)]
    [InlineData("C60(p1x242,D2)", "Checked", On)]
    // A match counts three hours.
    [InlineData("C60/3@18:00(p1,D3x70)", "day stop 1", On)]
    [InlineData("C60(p1357,D246)", "days-off stop 1", On)]
    [InlineData("C60/3@10:00(p1,R3e)", "after-match stop 1", On)]
    [InlineData("C60/3@10:00(p1,R3e)", "Checked", On + "; us_college.after_match_allowed=yes")]
    [InlineData("C60/3@18:00(p1,R3)", "Checked", On)]
    // Out of season two hours a day and eight a week, and two free days; preparation and breaks are left out.
    [InlineData("TR: N40(p1x130,D2)", "day stop 1", On)]
    [InlineData("TR: N40(p12345x105,D1!)", "week stop 1", On)]
    [InlineData("TR: N40(p123456x70,D1!)", "days-off stop 1", On)]
    [InlineData("GP: B60(p1x300,D2)", "NothingToCheck", On)]
    [InlineData("C60(p1x243#A,p1x240#B,D2)", "day stop 1", On)]
    // What is laid out may pass a limit alone.
    [InlineData("C60(D1x250)", "day stop 1", On)]
    [InlineData("C60(D1)", "TooLittle", On)]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
