namespace Seasonwright.Core.Tests.Rules.OfWeek;

public class TrailingFourSpikeTests : RuleTable
{
    [Theory]
    [InlineData("B50x4 B65", "Checked")]
    [InlineData("B50x4 B66", "spike caution 5", "weekly-ramp.on=no")]
    [InlineData("B50x4 B76", "spike caution 5", "weekly-ramp.on=no")]
    [InlineData("B50x4 B75", "spike caution 5", "highest_severity=warning; weekly-ramp.on=no")]
    [InlineData("B50x4 B76", "spike warning 5", "highest_severity=warning; weekly-ramp.on=no")]
    [InlineData("?10x4 G60/1/3/6", "spike caution 5 forced", "weekly-ramp.on=no")]
    [InlineData("B50x4 B0", "Checked")]
    [InlineData("B50x3 - B65", "TooLittle")]
    // A week off is no measure of what the squad is used to; nor is there one without four weeks of training.
    [InlineData("B50x4 X B65", "Checked", "return-after-break-volume.on=no")]
    [InlineData("B50x4 X B66", "spike caution 6", "return-after-break-volume.on=no; weekly-ramp.on=no")]
    [InlineData("B50x3 X B60", "TooLittle")]
    // After an absence the comparison begins anew.
    [InlineData("B50x4 Xx2 B80x4", "TooLittle")]
    [InlineData("B50x4", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
