namespace Seasonwright.Core.Tests.Rules.OfDay;

public class TimeZoneArrivalTests : RuleTable
{
    [Theory]
    [InlineData("C60/7 *Travel,1.1-1.7,1.1+6", "Checked")]
    [InlineData("C60/6 *Travel,1.1-1.7,1.1+6", "east caution 1 forced")]
    [InlineData("C60/3! *Travel,1.1-1.7,1.1+6", "east warning 1 forced")]
    [InlineData("C60/3 *Travel,1.1-1.7,1.1+6", "east caution 1 forced")]
    [InlineData("C60/4! *Travel,1.1-1.7,1.1+6", "east caution 1 forced")]
    [InlineData("C60/4 *Travel,1.1-1.7,1.1-6", "Checked")]
    [InlineData("C60/3 *Travel,1.1-1.7,1.1-6", "west caution 1 forced")]
    [InlineData("C60/2 *Travel,1.1-1.7,1.1+2", "Checked")]
    [InlineData("C60/2 *Travel,1.1-1.7,1.1+3", "east caution 1 forced")]
    // Home again: what was left behind is made up for.
    [InlineData("C60/7 *Travel,1.1-1.7,1.1+6,1.5-6", "Checked")]
    // A bus after the flight moves no clock, and every match counts: the second here is the key one.
    [InlineData("C60/4 *Travel,1.1-1.7,1.1+6,1.1", "east caution 1 forced")]
    [InlineData("C60/4 *Travel,1.1-1.7,1.1+6,1.3", "east caution 1 forced")]
    [InlineData("C60/2/3! *Travel,1.1-1.7,1.1+6", "east warning 1 forced, east caution 1 forced")]
    // On the day of the second leg the first one counts still.
    [InlineData("C60/3 *Travel,1.1-1.7,1.1+4,1.3+3", "east caution 1 forced")]
    // Home after three weeks is a journey as well, and goes on after it.
    [InlineData("C60x3 C60/3 *Travel,1.1-4.1,1.1+6,4.1-6", "west caution 4 forced")]
    [InlineData("C60x3 C60/4 *Travel,1.1-4.1,1.1+6,4.1-6", "NothingToCheck")]
    [InlineData("C60/4 *Travel,1.1-1.7,1.1", "TooLittle")]
    [InlineData("C60/6", "NothingToCheck")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
