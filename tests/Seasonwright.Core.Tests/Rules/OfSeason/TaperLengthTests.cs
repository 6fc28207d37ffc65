namespace Seasonwright.Core.Tests.Rules.OfSeason;

public class TaperLengthTests : RuleTable
{
    [Theory]
    [InlineData("GP: B100x3 CO: T70/5!", "Checked")]
    [InlineData("GP: B100x3 CO: T70/4!", "missing caution 4")]
    [InlineData("GP: B100x3 CO: C110/6!", "missing caution 4")]
    // A key match early in its week is tapered for in the week before.
    [InlineData("GP: B100x2 T70 CO: C110/2!", "Checked")]
    // Before a match late in its week a full week of training would lie between.
    [InlineData("GP: B100x3 T60 CO: C110/6!", "missing caution 5")]
    [InlineData("GP: B100x3 T60 CO: C110/4!", "Checked")]
    [InlineData("GP: B100x2 T60 CO: T70/6!", "Checked")]
    [InlineData("GP: B100x2 T60 CO: T70/6!", "long-short warning 3-4", "taper_style=short")]
    [InlineData("GP: B100x3 CO: T70/6!", "short caution 4", "taper_style=full")]
    [InlineData("GP: B100x2 T60x2 CO: T70/6!", "Checked")]
    [InlineData("GP: B100x2 T60x3 CO: T70/6!", "long warning 3-6")]
    // Back from days off there is nothing to taper from.
    [InlineData("GP: B100x3 X CO: C70/6!", "NothingToCheck")]
    [InlineData("GP: B100x3 Xx2 CO: E50 C70/6!", "NothingToCheck")]
    [InlineData("GP: B100x3 Xx2 CO: E50x2 C80/6!", "NothingToCheck")]
    [InlineData("GP: B100x3 Xx2 CO: E50x2 C70 C80/6!", "NothingToCheck")]
    [InlineData("GP: B100x3 Xx2 CO: E50x2 C60 R60 C80/6!", "NothingToCheck")]
    [InlineData("GP: B100x3 Xx2 CO: E50x2 C70 C80 C90/6!", "missing caution 10")]
    // Named or not, a week at 85 % of the two before is reduced.
    [InlineData("B100x3 ?95/6!", "Checked")]
    [InlineData("B100x3 ?96/6!", "missing caution 4")]
    [InlineData("-x3 -/6!", "TooLittle")]
    [InlineData("GP: B100x3 CO: C70/6", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
