namespace Seasonwright.Core.Tests.Rules.OfWeek;

public class HamstringEccentricGapTests : RuleTable
{
    [Theory]
    [InlineData("B60(0,V14)x3", "Checked")]
    [InlineData("B60(0,V1) B60(0,L1)", "gap caution 1-2")]
    [InlineData("B60(0,V1) B60(0,L1)", "Checked", "target_days=14")]
    [InlineData("B60(0,V1) B60(0,L1)x3", "gap warning 1-4")]
    [InlineData("B60(0,L1)x2 B60(0,V1)", "gap caution 1-3")]
    [InlineData("B60(p1:m,L2)x2", "Checked")]
    [InlineData("B60(0,V1:m2) B60(0,L1)", "gap caution 1-2")]
    [InlineData("B60(0,V1:m2) B60(0,L1)", "TooLittle", "sets_min=3")]
    // Weeks that are not laid out may hold any; in days off nobody looks.
    [InlineData("B60(0,V1) B60 B60(0,V7)", "Checked")]
    [InlineData("N40(V1) N40(L1)x3", "NothingToCheck")]
    [InlineData("B60(V1,L2#A) B60(V1#A,L2#B)", "gap caution 1-2")]
    // Where no session is said to hold prevention nobody says that there is none.
    [InlineData("B60(0,L1)x3", "TooLittle")]
    [InlineData("C60/6", "TooLittle")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
