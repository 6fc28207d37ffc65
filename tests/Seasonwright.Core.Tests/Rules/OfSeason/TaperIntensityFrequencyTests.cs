namespace Seasonwright.Core.Tests.Rules.OfSeason;

public class TaperIntensityFrequencyTests : RuleTable
{
    [Theory]
    // Exposures and one team session more: five of six are kept, four are not.
    [InlineData("B100+s3v2x2 T60+s2v2", "Checked")]
    [InlineData("B100+s3v2x2 T60+s2v1", "rarer caution 3")]
    [InlineData("B100+s3v2 B100+s3v2 T60/1/7+s2v1", "Checked")]
    [InlineData("B100x2 T60+s1", "TooLittle")]
    [InlineData("B100+s3v2x2 T60", "TooLittle")]
    [InlineData("B100+s3x2", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
