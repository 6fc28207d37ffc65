namespace Seasonwright.Core.Tests.Rules.OfDay;

public class TravelDayLoadTests : RuleTable
{
    [Theory]
    [InlineData("C60/6@18:00 *Travel,1.5-1.6,1.5@20:00-06:00n", "haul warning 1 forced")]
    [InlineData("C60/6@18:00 *Travel,1.5-1.6,1.5@06:00-18:00", "Checked")]
    [InlineData("C60/6@17:00 *Travel,1.5-1.6,1.5@06:00-18:00", "haul warning 1 forced")]
    // Eight hours are no long haul, and what the clock moved was not travelled.
    [InlineData("C60/6@18:00 *Travel,1.5-1.6,1.5@22:00-06:00n", "TooLittle")]
    [InlineData("C60/6@18:00 *Travel,1.5-1.6,1.5@20:00-06:00n+3", "TooLittle")]
    [InlineData("C60/6@18:00 *Travel,1.5-1.6,1.5@20:00-00:00n", "NothingToCheck")]
    [InlineData("C60/6@18:00 *Travel,1.5-1.6,1.5", "TooLittle")]
    [InlineData("C60/6@18:00 *Travel,1.1-1.6,1.1", "NothingToCheck")]
    // Without its kick-off a match may be at any hour of its day.
    [InlineData("C60/6 *Travel,1.5-1.6,1.5@06:00-18:00", "TooLittle")]
    [InlineData("C60/7 *Travel,1.5-1.6,1.5@06:00-18:00", "Checked")]
    // Sessions on a day of long travel: at most RPE 4 and 45 minutes.
    [InlineData("B60(R5) *Travel,1.5-1.5,1.5@14:00-19:00", "Checked")]
    [InlineData("B60(U5) *Travel,1.5-1.5,1.5@14:00-19:00", "effort caution 1")]
    [InlineData("B60(U5r4x50) *Travel,1.5-1.5,1.5@14:00-19:00", "long caution 1")]
    [InlineData("B60(p5,D1) *Travel,1.5-1.5,1.5@14:00-19:00", "effort caution 1")]
    [InlineData("B60(U5) *Travel,1.5-1.5,1.5@14:00-18:00", "NothingToCheck")]
    [InlineData("B60(U4) *Travel,1.5-1.5,1.5@14:00-19:00", "NothingToCheck")]
    // Hard work within a day after a long haul.
    [InlineData("B60(I6) *Travel,1.5-1.5,1.5@08:00-19:00", "after caution 1")]
    [InlineData("B60(I6) *Travel,1.5-1.5,1.5@08:00-19:00", "NothingToCheck", "rest_h=14")]
    [InlineData("B60(I6) *Travel,1.5-1.5,1.5@12:00-19:00", "NothingToCheck")]
    [InlineData("B60(E6) *Travel,1.5-1.5,1.5@08:00-19:00", "Checked")]
    [InlineData("B60(U5) *Travel,1.5-1.5,1.5", "TooLittle")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
