namespace Seasonwright.Core.Tests.Rules.OfDay;

public class HeavyLowerBeforeMatchTests : RuleTable
{
    [Theory]
    // Two days before at nine, the kick-off being known: 57 hours to six in the evening, 47 to eight in the morning.
    [InlineData("C60/6@18:00(L4:s6)", "Checked")]
    [InlineData("C60/6@08:00(L4:s6)", "close warning 1")]
    [InlineData("C60/6@09:00(L4:s6)", "Checked")]
    // More than six sets keep three days.
    [InlineData("C60/6@18:00(L4:s7)", "large caution 1")]
    [InlineData("C60/6@18:00(L3:s7)", "Checked")]
    [InlineData("C60/6@18:00(L4:s7)", "Checked", "small_dose_sets=7")]
    [InlineData("C60/6@18:00(L4)", "TooLittle")]
    [InlineData("C60/6@18:00(L5)", "close warning 1")]
    [InlineData("C60/6@18:00(Y5,L1:s8)", "close warning 1")]
    // On the day itself, before the match; what comes after it is another match's.
    [InlineData("C60/6@18:00(L6)", "close warning 1")]
    [InlineData("C60/6@08:00(L6)", "Checked")]
    // Whole days stand for hours where the kick-off is not known.
    [InlineData("C60/6(L4:s6)", "Checked")]
    [InlineData("C60/6(L5:s6)", "close warning 1")]
    [InlineData("C60/6(L6)", "close warning 1")]
    // Small doses, upper body and what primes are not meant; a strength dose of the legs is, whatever it is called.
    [InlineData("C60/6(D5,U5a,A5e)", "NothingToCheck")]
    [InlineData("C60/6(W5:s4.85)", "close warning 1")]
    // Called off.
    [InlineData("C60/6(L5!)", "NothingToCheck")]
    [InlineData("C60/6", "TooLittle")]
    [InlineData("C60(L3) C60/1", "close warning 1", "min_h=168")]
    public void Says(string plan, string says, string figures = "") => Check(plan, says, figures);
}
