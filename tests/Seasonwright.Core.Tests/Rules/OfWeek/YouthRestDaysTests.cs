namespace Seasonwright.Core.Tests.Rules.OfWeek;

/// <summary>Two free days are the goal and one the floor: NATA 2019 and AAP 2000, as in the rulebook.</summary>
public class YouthRestDaysTests : SquadTable
{
    [Theory]
    [InlineData("B60(p135,D24)", "a15", 1, "Checked")]
    [InlineData("B60(p135,D246)", "a15", 1, "few caution 1")]
    [InlineData("B60(p135,D2467)", "a15", 1, "none warning 0")]
    [InlineData("B60(p135,D2467)", "a17", 1, "none warning 0")]
    [InlineData("B60(p135,D2467)", "a18", 1, "NothingToCheck")]
    [InlineData("B60(p135,D2467)", "a19", 1, "none warning 0", "youth_age=20")]
    [InlineData("B60(p135,D246)", "a15", 1, "Checked", "target=1")]
    // A match and a test take their day; whoever is out is free.
    [InlineData("C60/6(p135,D24)", "a15", 1, "few caution 1")]
    [InlineData("B60t6(p135,D24)", "a15", 1, "few caution 1")]
    [InlineData("C60/6(p135,D24)", "a15 out1.5", 1, "Checked")]
    [InlineData("B60(p135,D246)", "a15 mod1.1", 1, "few caution 1")]
    // With another group's sessions left out there are three.
    [InlineData("B60(p135,D24,U6#B)", "a15 #A", 1, "Checked")]
    [InlineData("B60(p135,D24,U6#B)", "a15 #B", 1, "few caution 1")]
    // Sport told from elsewhere takes its day, school takes none, and what nobody told may be either.
    [InlineData("B60(p135,D24)", "a15 away1.6-1.7:SecondClub:60x6", 1, "none warning 0")]
    [InlineData("B60(p135,D24)", "a15 away1.6-1.6:SecondClub:0", 1, "Checked")]
    [InlineData("B60(p135,D246)", "a15 away1.5-1.6:School", 1, "Checked")]
    [InlineData("B60(p135,D246)", "a15 away1.5-1.6:Holiday", 1, "Checked")]
    [InlineData("B60(p135,D24)", "a15 away1.6-1.6:NationalTeam", 1, "TooLittle")]
    [InlineData("B60(p135,D246)", "a15 away1.6-1.6:NationalTeam", 1, "TooLittle")]
    [InlineData("B60(p12345,D6)", "a15 away1.6-1.6:NationalTeam:300", 1, "few caution 1")]
    [InlineData("B60(p135,D24)", "a15 led67", 1, "TooLittle")]
    // A week that is not laid out may still be told to have too few.
    [InlineData("B60(D2)", "a15", 1, "TooLittle")]
    [InlineData("B60(D1234567)", "a15", 1, "none warning 0")]
    [InlineData("B60", "a15", 1, "TooLittle")]
    [InlineData("B60(p135,D2467)", "", 1, "TooLittle")]
    public void Says(string plan, string players, int week, string says, string figures = "") => Check(plan, players, week, says, figures);
}
