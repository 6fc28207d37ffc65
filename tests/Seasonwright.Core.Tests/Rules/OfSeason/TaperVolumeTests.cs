namespace Seasonwright.Core.Tests.Rules.OfSeason;

public class TaperVolumeTests : RuleTable
{
    [Theory]
    // One week is the short version of a league.
    [InlineData("B100x2 T90/6", "Checked")]
    [InlineData("B100x2 T91/6", "short caution 3")]
    [InlineData("B100x2 T75/6", "Checked")]
    [InlineData("B100x2 T74/6", "short caution 3")]
    [InlineData("B80x2 T90", "rise caution 3")]
    [InlineData("B100x2 T59x2", "Checked")]
    [InlineData("B100x2 T60x2", "full caution 3-4")]
    [InlineData("B100x2 T40x2", "Checked")]
    [InlineData("B100x2 T39x2", "full caution 3-4")]
    // Beside two matches the training is lighter still.
    [InlineData("B100x2 T50/2/6", "Checked")]
    [InlineData("B100x2 T105/2/6", "short caution 3")]
    [InlineData("T50", "TooLittle")]
    [InlineData("B100x2 T", "TooLittle")]
    [InlineData("B100x2", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
