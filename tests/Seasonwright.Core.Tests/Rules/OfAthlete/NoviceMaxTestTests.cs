namespace Seasonwright.Core.Tests.Rules.OfAthlete;

/// <summary>Half a year of training and sixteen years of age before a test of the most lifted once: Faigenbaum 2003 and 2009 and NSCA 2017, as in the rulebook; the half year is its working default.</summary>
public class NoviceMaxTestTests : SquadTable
{
    [Theory]
    [InlineData("B60t2m", "a20 t3", 1, "Checked")]
    [InlineData("B60t2m", "a15 t3", 1, "young warning 15")]
    [InlineData("B60t2m", "a16 t3", 1, "Checked")]
    [InlineData("B60t2m", "a16 t3", 1, "young warning 16", "youth_age=17")]
    [InlineData("B60t2m", "a20 t0", 1, "novice warning 0")]
    [InlineData("B60t2m", "a20 t0-182", 1, "Checked")]
    [InlineData("B60t2m", "a20 t0-181", 1, "novice warning 0.5")]
    // One cause is enough, one unknown is not fine.
    [InlineData("B60t2m", "a15 t0", 1, "young warning 15")]
    [InlineData("B60t2m", "t0", 1, "novice warning 0")]
    [InlineData("B60t2m", "a20", 1, "TooLittle")]
    [InlineData("B60t2m", "t3", 1, "TooLittle")]
    // An estimate and tests of other things are none; a strength test that says no repetitions may be one.
    [InlineData("B60t2e", "a15 t0", 1, "NothingToCheck")]
    [InlineData("B60t2j", "a15 t0", 1, "NothingToCheck")]
    [InlineData("B60t2", "a15 t0", 1, "TooLittle")]
    // A test as a session says it by its dose.
    [InlineData("B60(p1,T2:s2.100)", "a15 t3", 1, "young warning 15")]
    [InlineData("B60(p1,T2:s2.90)", "a15 t3", 1, "TooLittle")]
    [InlineData("B60(p1,T2)", "a15 t3", 1, "NothingToCheck")]
    [InlineData("B60(p1,T2:s2.100#B)", "a15 #A", 1, "NothingToCheck")]
    // Who is out or away is not tested, nor is whose test something else stands for.
    [InlineData("B60t2m", "a15 out1.1", 1, "NothingToCheck")]
    [InlineData("B60t2m", "a15 away1.1-1.3:School", 1, "NothingToCheck")]
    [InlineData("B60(p1,T2:s2.100)", "a15 mod1.1:NoJump", 1, "NothingToCheck")]
    public void Says(string plan, string players, int week, string says, string figures = "") => Check(plan, players, week, says, figures);
}
