namespace Seasonwright.Core.Tests.Rules.OfDay;

public class TravelDayLoadTests : RuleTable
{
    [Theory]
    [InlineData("C60/6@18:00 *Travel,1.5-1.6,1.5@20:00-06:00n", "haul warning 1 forced")]
    [InlineData("C60/6@18:00 *Travel,1.5-1.6,1.5@06:00-18:00", "Checked")]
    [InlineData("C60/6@17:00 *Travel,1.5-1.6,1.5@06:00-18:00", "haul warning 1 forced")]
    // Eight hours are no long haul, and what the clock moved was not travelled.
    [InlineData("C60/6@18:00 *Travel,1.5-1.6,1.5@22:00-06:00n", "NothingToCheck")]
    [InlineData("C60/6@18:00 *Travel,1.5-1.6,1.5@20:00-06:00n+3", "NothingToCheck")]
    [InlineData("C60/6@18:00 *Travel,1.5-1.6,1.5", "TooLittle")]
    [InlineData("C60/6@18:00 *Travel,1.1-1.6,1.1", "NothingToCheck")]
    // Without its kick-off a match may be at any hour of its day.
    [InlineData("C60/6 *Travel,1.5-1.6,1.5@06:00-18:00", "TooLittle")]
    [InlineData("C60/7 *Travel,1.5-1.6,1.5@06:00-18:00", "Checked")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
