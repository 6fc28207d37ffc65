namespace Seasonwright.Core.Tests.Rules.OfDay;

public class MatchGapShortTests : RuleTable
{
    [Theory]
    [InlineData("C60/4@16:00/7@17:00", "short warning 1 forced")]
    [InlineData("C60/4@16:00/7@18:00", "short caution 1 forced")]
    [InlineData("C60/4@18:00 C60/1@19:59", "short caution 2 forced")]
    [InlineData("C60/4@18:00 C60/1@20:00", "Checked")]
    // A kick-off unknown: both are taken to start at one time of day.
    [InlineData("C60/3/6", "estimated warning 1 forced")]
    [InlineData("C60/3@18:00/6", "estimated warning 1 forced")]
    [InlineData("C60/2/6", "estimated caution 1 forced")]
    [InlineData("C60/2 C60/1", "Checked")]
    [InlineData("C60/4@16:00/7@17:00", "short stop 1 forced", "preset=stop_72; preset_date=2025-07-01")]
    [InlineData("C60/4@16:00/7@17:00", "short warning 1 forced", "preset=stop_72")]
    [InlineData("C60/4@16:00/7@18:00", "short caution 1 forced", "preset=stop_72; preset_date=2025-07-01")]
    // Not before the day from which they hold, and whatever the limit of a caution is.
    [InlineData("C60/4@16:00/7@17:00", "short warning 1 forced", "preset=stop_72; preset_date=2028-01-01")]
    [InlineData("C60/4@16:00/7@17:00", "short stop 1 forced", "preset=stop_72; preset_date=2025-07-01; congested_h=24")]
    [InlineData("C60/6", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
