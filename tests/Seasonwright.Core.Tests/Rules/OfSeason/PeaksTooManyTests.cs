namespace Seasonwright.Core.Tests.Rules.OfSeason;

public class PeaksTooManyTests : RuleTable
{
    [Theory]
    [InlineData("T60 B80x5 T60", "Checked")]
    [InlineData("T60 B80x4 T60", "close caution 1-6")]
    [InlineData("T60 B80x5 T60 B80x5 T60", "Checked")]
    [InlineData("T60 B80x5 T60 B80x5 T60 B80x5 T60", "many caution 1-19")]
    [InlineData("T60 B80x5 T60", "many caution 1-7", "max_peaks=1")]
    // Within one cluster of matches two tapers are one.
    [InlineData("T60/6! B80 T60/6!", "Checked")]
    [InlineData("T60/6! B80x2 T60/6!", "close caution 1-4")]
    [InlineData("B80x3", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
