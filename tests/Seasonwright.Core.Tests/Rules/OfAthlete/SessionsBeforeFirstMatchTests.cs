namespace Seasonwright.Core.Tests.Rules.OfAthlete;

/// <summary>Six full team sessions after an absence of eight days and more: Bengtsson 2020, as in the rulebook.</summary>
public class SessionsBeforeFirstMatchTests : SquadTable
{
    [Theory]
    // Out for eight days, full on the second Tuesday, three practices to the match.
    [InlineData("B60(p135) C60/6(p235)", "out1.1 full2.2", 2, "few warning 3")]
    [InlineData("B60(p135) C60/6(p235)", "out1.1 full2.2", 2, "Checked", "min_sessions=3")]
    [InlineData("B60(p135) C60/6(p235)", "out1.2 full2.2", 2, "NothingToCheck")]
    [InlineData("B60(p135) C60/6(p235)", "out1.1 full2.2", 1, "NothingToCheck")]
    // Days modified on the way back are days of the absence; days modified alone are none.
    [InlineData("B60(p135) C60/6(p235)", "out1.1 mod1.4:NoContact full2.2", 2, "few warning 3")]
    [InlineData("B60(p135) C60/6(p235)", "mod1.1:NoContact full2.2", 2, "NothingToCheck")]
    [InlineData("B60(p135) C60/6(p235)", "out1.1 mod2.2:NoContact", 2, "NothingToCheck")]
    // Six practices, one of them called off, ours not counted.
    [InlineData("B60(p135) B60(p235) C60/6(p135,L24)", "out1.1 full2.2", 3, "Checked")]
    [InlineData("B60(p135) B60(p235) C60/6(p13,p5!,L24)", "out1.1 full2.2", 3, "few warning 5")]
    // Told from the day of the release on.
    [InlineData("B60(p135) B60(p235) C60/6(p13,L24)", "out1.1 full2.2", 2, "few warning 5")]
    [InlineData("B60(p135) C60/6(p235) C60/6(p135)", "out1.1 full2.2", 3, "NothingToCheck")]
    // A practice on the day of the match counts where the match is known to come after it; a match she is away for is no match of hers.
    [InlineData("B60(p135) C60/6@20:00(p2356)", "out1.1 full2.2", 2, "few warning 4")]
    [InlineData("B60(p135) C60/6(p2356)", "out1.1 full2.2", 2, "few warning 3")]
    [InlineData("B60(p135) C60/6(p235) C60/6(p135)", "out1.1 full2.2 away2.6-2.6:NationalTeam", 3, "Checked")]
    [InlineData("B60(p135) C60/6(p235)", "out1.1 full2.2 away2.3-2.3:School", 2, "few warning 2")]
    // On which days practices are may not be known.
    [InlineData("B60(p135) C60/6", "out1.1 full2.2", 2, "TooLittle")]
    [InlineData("B60 B60 C60", "out1.1 full2.2", 2, "NothingToCheck")]
    public void Says(string plan, string players, int week, string says, string figures = "") => Check(plan, players, week, says, figures);
}
