namespace Seasonwright.Core.Tests.Rules.OfAthlete;

/// <summary>Steps of 50, 70, 85 and 100 % of the four weeks before: the rulebook's working default. A week of 60 points are 600 AU; loads of days are counted by hand.</summary>
public class InjuryReturnRampTests : SquadTable
{
    [Theory]
    // Seven days are none. After fourteen the weeks back have 300, 420, 510 and 600 AU.
    [InlineData("B60x5 B30", "out5.1 full6.2", 6, "TooLittle")]
    [InlineData("B60x5 B30", "out4.5 full6.1", 6, "TooLittle")]
    [InlineData("B60x5 B30", "out5.1 full6.1", 6, "NothingToCheck")]
    [InlineData("B60x6 B30", "out5.1 full7.1", 7, "Checked")]
    [InlineData("B60x6 B31", "out5.1 full7.1", 7, "over warning 52")]
    [InlineData("B60x6 B30 B42", "out5.1 full7.1", 8, "Checked")]
    [InlineData("B60x6 B30 B43", "out5.1 full7.1", 8, "over warning 72")]
    [InlineData("B60x6 B30 B42 B51 B61", "out5.1 full7.1", 10, "over warning 102")]
    [InlineData("B60x6 B30 B42 B51 B60 B90", "out5.1 full7.1", 11, "NothingToCheck")]
    // Back on a Sunday the first whole week has the first step, back on a Thursday the second.
    [InlineData("B60x6 B30 B31", "out5.1 full7.7", 8, "over warning 52")]
    [InlineData("B60x6 B30 B31", "out5.1 full7.4", 8, "Checked")]
    // Four weeks out have the longer form.
    [InlineData("B60x8 B24", "out5.1 full9.1", 9, "Checked")]
    [InlineData("B60x8 B30", "out5.1 full9.1", 9, "over warning 50")]
    // Back modified counts as back; out again is the same way.
    [InlineData("B60x6 B30(p135x20,D2x5)", "out5.1 mod7.1:30", 7, "over warning 60")]
    [InlineData("B60x7 B30", "out5.1 mod7.1:30 out7.3 full8.1", 8, "Checked")]
    [InlineData("B60x7 B31", "out5.1 mod7.1:30 out7.3 full8.1", 8, "over warning 52")]
    // What is laid out on her days: two practices of 495 AU and 30 AU beside them.
    [InlineData("B60x6 B30(p13,D5x5)", "out5.1 full7.1", 7, "over warning 170")]
    [InlineData("B60x6 B30(p13x20,D5x5)", "out5.1 full7.1", 7, "Checked")]
    [InlineData("B60x6 B30(p13,D5x5)", "out5.1 full7.2", 7, "over warning 88")]
    [InlineData("B60x6 B30(p13x20,D5x5)", "out5.1 mod7.1", 7, "TooLittle")]
    // Sprints come back with the load: 30 minutes at 5 and 110 AU beside them.
    [InlineData("B60x6 B30(p1x20,S4x30)", "out5.1 full7.1", 7, "sprint caution 43")]
    [InlineData("B60x6 B30(p1x20,S4x30)", "out5.1 mod7.1:NoSprint", 7, "Checked")]
    [InlineData("B60x6 B30(p1x20,S4x30)", "out5.1 full7.1", 7, "Checked", "sprint_after_share=0.4")]
    // Load done elsewhere counts, and where it is not told it is not known.
    [InlineData("B60x6 B30(p1x20,D4x5)", "out5.1 full7.1 away7.5-7.6:NationalTeam:60x6", 7, "over warning 143")]
    [InlineData("B60x6 B30(p1x20,D4x5)", "out5.1 full7.1 away7.5-7.6:NationalTeam", 7, "TooLittle")]
    // Nothing before to hold it against.
    [InlineData("B60x3 B30", "out2.1 full3.5", 4, "TooLittle")]
    [InlineData("B60x6 B60", "", 7, "NothingToCheck")]
    public void Says(string plan, string players, int week, string says, string figures = "") => Check(plan, players, week, says, figures);
}
