namespace Seasonwright.Core.Tests.Rules.OfWeek;

public class MatchesPerWeekTests : RuleTable
{
    [Theory]
    [InlineData("C60/1 C60/1", "Checked")]
    [InlineData("C60/2 C60/1", "many caution 2 forced")]
    [InlineData("C60/1/6", "many caution 1 forced")]
    [InlineData("C60/1/6", "Checked", "target=2")]
    // Matches close together are told by their gap.
    [InlineData("C60/1/3/5", "Checked")]
    [InlineData("C60/1/3/5", "many warning 1 forced", "match-gap-short.on=no")]
    [InlineData("C60/1/3/5 *Tournament,1.1-1.5", "many caution 1 forced", "match-gap-short.on=no")]
    [InlineData("C60", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
