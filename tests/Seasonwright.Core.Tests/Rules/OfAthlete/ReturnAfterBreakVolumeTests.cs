namespace Seasonwright.Core.Tests.Rules.OfAthlete;

public class ReturnAfterBreakVolumeTests : RuleTable
{
    [Theory]
    // From the summer 50 and 70 points.
    [InlineData("B50 B70", "Checked")]
    [InlineData("B51 B70", "high warning 1")]
    [InlineData("B50 B71", "high warning 2")]
    [InlineData("B51 B71", "high warning 1-2")]
    // Weeks off before anybody trained are the summer still.
    [InlineData("X B90 B70", "high warning 2")]
    [InlineData("Xx2 B50 B70", "Checked")]
    // A match in the week is a fact: it and 14 points are always within.
    [InlineData("B50/1/2/3/4 B70", "Checked")]
    [InlineData("B54/1/2/3/4 B70", "Checked")]
    [InlineData("B55/1/2/3/4 B70", "high warning 1")]
    // From two weeks off in season half and seven tenths of the weeks before, from one four fifths.
    [InlineData("C80x2 Xx2 E40 E56", "Checked", "season_start=kept")]
    [InlineData("C80x2 Xx2 E41 E56", "high warning 5", "season_start=kept")]
    [InlineData("C80x2 Xx2 E40 E57", "high warning 6", "season_start=kept")]
    [InlineData("C80x2 X C64", "Checked", "season_start=kept")]
    [InlineData("C80x2 X C65", "high warning 4", "season_start=kept")]
    // A week in which a match is played and nothing is trained is a week off as well; one of exams is none.
    [InlineData("C80x2 R10/6 E64 *Other,3.1-3.7,0%", "Checked", "season_start=kept")]
    [InlineData("C80x2 R10/6 E65 *Other,3.1-3.7,0%", "high warning 4", "season_start=kept")]
    [InlineData("C80x2 R10/6 R10/6 E40 E57 *Other,3.1-4.7,0%", "high warning 6", "season_start=kept")]
    [InlineData("C80x2 R60/6 C80 *Exams,3.1-3.7,60%", "NothingToCheck", "season_start=kept")]
    [InlineData("B", "TooLittle")]
    [InlineData("B60", "NothingToCheck", "season_start=kept")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
