namespace Seasonwright.Core.Tests.Rules.OfAthlete;

/// <summary>What a restriction changes is told by the fit of a session; here is what that leaves unsaid. The review every seven days is the rulebook's working default.</summary>
public class RestrictionOverridesPlanTests : SquadTable
{
    [Theory]
    [InlineData("B60(p135,L2)", "", 1, "NothingToCheck")]
    [InlineData("B60(p135,L2)", "full1.1", 1, "NothingToCheck")]
    // Out is out, and what is ruled out is done without or otherwise.
    [InlineData("C60/6(p135,L2)", "out1.1", 1, "Checked")]
    [InlineData("B60(p135,S2)", "mod1.1:NoSprint", 1, "Checked")]
    [InlineData("B60(p135,L2)", "mod1.1:UpperBodyOnly", 1, "Checked")]
    // Modified, and nobody said how: four sessions, one a day.
    [InlineData("B60(p135,L2)", "mod1.1", 1, "ask stop 1")]
    [InlineData("B60(p2,L2)", "mod1.1", 1, "ask stop 2")]
    [InlineData("B60(p2!,L2!)", "mod1.1", 1, "Checked")]
    [InlineData("B60(p135,L2)", "mod1.6", 1, "Checked")]
    [InlineData("B60(p135,L2)", "mod1.1 mod1.1:NoSprint", 1, "Checked")]
    [InlineData("B60(p135,L2)", "mod1.1 away1.1-1.7:School", 1, "NothingToCheck")]
    [InlineData("B60(p2,L2)", "mod1.1 led2", 1, "Checked")]
    // Two people are two findings.
    [InlineData("B60(p135,L2)", "mod1.1|mod1.1|out1.1", 1, "ask stop 1, ask stop 1")]
    // Past the day of review it stays, and is asked about the day after and every seven days.
    [InlineData("B60(p135)", "out1.1>1.4", 1, "review caution 1")]
    [InlineData("B60(p135) B60(p135)", "out1.1>1.4", 2, "review caution 8")]
    [InlineData("B60(p135) B60(p135)", "out1.1>2.7", 2, "Checked")]
    [InlineData("B60(p135) B60(p135)", "mod1.1:NoJump>1.7", 2, "review caution 1")]
    [InlineData("B60(p135) B60(p135)", "out1.1>1.4 full2.1", 2, "NothingToCheck")]
    [InlineData("B60(p135) B60(p135)", "mod1.1>1.4", 2, "ask stop 1, review caution 8")]
    // Nobody of the group may do any of it; one who may is enough, and whoever is away is nobody there.
    [InlineData("B60(p1,L2#A)", "#A out1.1|#A mod1.1:UpperBodyOnly", 1, "Checked")]
    [InlineData("B60(p1,L2#A)", "#A out1.1|#A out1.1|#B", 1, "nobody stop 2")]
    [InlineData("B60(p1,L2#A)", "#A out1.1|#A|#B", 1, "Checked")]
    [InlineData("B60(p1,L2#A)", "#A out1.1|#A away1.1-1.7:Work|#B", 1, "nobody stop 1")]
    [InlineData("B60(p1,L2#A)", "#A away1.1-1.7:Work|#B", 1, "NothingToCheck")]
    // Of whom no group is told may be in it.
    [InlineData("B60(p1,L2#A)", "#A out1.1|", 1, "Checked")]
    [InlineData("B60(p1,L2#A!)", "#A out1.1", 1, "Checked")]
    public void Says(string plan, string players, int week, string says, string figures = "") => Check(plan, players, week, says, figures);
}
