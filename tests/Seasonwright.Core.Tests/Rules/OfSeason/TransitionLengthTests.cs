namespace Seasonwright.Core.Tests.Rules.OfSeason;

public class TransitionLengthTests : RuleTable
{
    [Theory]
    // Two to four weeks, seven days each.
    [InlineData("CO: C70/6 TR: N20x2", "Checked")]
    [InlineData("CO: C70/6 TR: N20", "short caution 2 forced")]
    [InlineData("CO: C70/6 TR: N20 GP: B60", "short caution 2")]
    [InlineData("CO: C70/6 TR: N20x4", "Checked")]
    [InlineData("CO: C70/6 TR: N20x5", "long caution 2-6 forced")]
    [InlineData("CO: C70/6 TR: N20x5 GP: B50", "long caution 2-6")]
    [InlineData("CO: C70/6 TR: N20x6", "long warning 2-7 forced")]
    [InlineData("CO: C70/6 GP: B60x2", "missing warning 2-3")]
    [InlineData("CO: C70/6 GP: B60x2", "Checked", "min_days=0")]
    // Days off after the season are its transition, whatever the weeks are called.
    [InlineData("CO: C70/6 TR: Xx2", "Checked")]
    [InlineData("CO: C70/6 TR: Xx2 N20x3", "long caution 2-6 forced")]
    // Nothing can be painted after the last week there is.
    [InlineData("CO: C70/6", "missing warning 1 forced")]
    // A federation's longer holiday holds once it is chosen and dated.
    [InlineData("CO: C70/6 TR: N20x2", "short caution 2-3 forced", "preset=fifa_2025; preset_date=2026-01-01")]
    [InlineData("CO: C70/6 TR: N20x2", "Checked", "preset=fifa_2025; preset_date=2028-01-01")]
    [InlineData("CO: C70/6 TR: N20x2", "Checked", "preset=fifa_2025")]
    [InlineData("?70/6 ?20x2", "TooLittle")]
    [InlineData("?70 ?60", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
