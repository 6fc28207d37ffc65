namespace Seasonwright.Core.Tests.Rules.OfDay;

public class DayAfterMatchHardTests : RuleTable
{
    [Theory]
    // From the end at eight in the evening: 13 hours to nine on the next morning, 37 to the one after.
    [InlineData("C60/3@18:00(L4)", "content warning 1")]
    [InlineData("C60/3@18:00(L5)", "second caution 1")]
    [InlineData("C60/3@18:00(L5)", "content warning 1", "first_h=40")]
    [InlineData("C60/3@18:00(L6)", "NothingToCheck")]
    [InlineData("C60/3@18:00(L5e)", "second caution 1")]
    [InlineData("C60/3@18:00(L5@20:00)", "NothingToCheck")]
    [InlineData("C60/3@18:00(S4)", "content warning 1")]
    [InlineData("C60/3@18:00(S5)", "second caution 1")]
    [InlineData("C60/3@18:00(I4)", "content warning 1")]
    [InlineData("C60/3@18:00(I5)", "Checked")]
    [InlineData("C60/3@18:00(W4)", "content warning 1")]
    [InlineData("C60/3@18:00(W4:p4)", "effort warning 1")]
    [InlineData("C60/3@18:00(U4r4,R4a)", "Checked")]
    [InlineData("C60/3@18:00(U4)", "effort warning 1")]
    // A practice is told as well.
    [InlineData("C60/3@18:00(p4)", "effort warning 1")]
    [InlineData("C60/3@18:00(p4r4)", "Checked")]
    // On the day of the match, after it.
    [InlineData("C60/3@10:00(L3e)", "content warning 1")]
    [InlineData("C60/3@18:00(L3)", "NothingToCheck")]
    [InlineData("C60/3(L3)", "TooLittle")]
    // Without a kick-off the next day is 22 hours on, the second 46.
    [InlineData("C60/3(L4)", "content warning 1")]
    [InlineData("C60/3(L5)", "second caution 1")]
    [InlineData("C60/7@18:00 C60(L1)", "content warning 2")]
    [InlineData("C60/3@18:00(L4!)", "NothingToCheck")]
    [InlineData("C60/3", "TooLittle")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
