namespace Seasonwright.Core.Tests.Rules.OfWeek;

/// <summary>More hours than years of age, or than 16: NATA 2019, DiFiori 2014 and AAP 2024, as in the rulebook. Hours are counted by hand.</summary>
public class YouthWeeklyHoursTests : SquadTable
{
    [Theory]
    // Five practices of 150 minutes are 12.5 hours, with the match of 20 minutes 12.8.
    [InlineData("C60/6(p12345x150,D6x5)", "a13", 1, "Checked")]
    [InlineData("C60/6(p12345x156,D6x5)", "a13", 1, "age warning 13.4")]
    [InlineData("C60/6(p12345x156,D6x5)", "a14", 1, "Checked")]
    [InlineData("C60/6(p12345x156,D6x5)", "a13 out1.5", 1, "Checked")]
    // 16.5 hours at seventeen.
    [InlineData("B60(p123456x160,D6x30)", "a17", 1, "cap caution 16.5")]
    [InlineData("B60(p123456x160,D6x30)", "a17", 1, "Checked", "soft_cap_h=17")]
    [InlineData("B60(p123456x160,D6x30)", "a18", 1, "NothingToCheck")]
    // A cap of minutes leaves an hour a day.
    [InlineData("B60(p123456x160,D6x30)", "a15 mod1.1:60", 1, "Checked")]
    // Told from elsewhere it counts, school does not, and what nobody told comes on top.
    [InlineData("B60(p12345x120,D1x30)", "a13 away1.6-1.7:SecondClub:90x6", 1, "age warning 13.5")]
    [InlineData("B60(p12345x120,D1x30)", "a13 away1.6-1.7:School:90x6", 1, "Checked")]
    [InlineData("B60(p12345x120,D1x30)", "a13 away1.6-1.7:SecondClub:300", 1, "TooLittle")]
    [InlineData("B60(p12345x160,D1x30)", "a13 away1.6-1.7:SecondClub", 1, "age warning 13.8")]
    [InlineData("B60(p12345x120,D1x30)", "a13 mod1.1", 1, "TooLittle")]
    [InlineData("B60(p12345x120,D1x30)", "a13 led7", 1, "TooLittle")]
    [InlineData("B60(p12345x120)", "a13", 1, "TooLittle")]
    [InlineData("B60(D1x30)", "a13", 1, "TooLittle")]
    [InlineData("B60(p12345x120,D1x30)", "", 1, "TooLittle")]
    public void Says(string plan, string players, int week, string says, string figures = "") => Check(plan, players, week, says, figures);
}
