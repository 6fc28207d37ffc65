using CsCheck;
using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Tests.Quantities;

public class WeightTests
{
    [Theory]
    [InlineData("71.5", MassUnit.Kilogram, "71.5", "71.5 kg")]
    [InlineData("71.50", MassUnit.Kilogram, "71.5", "71.5 kg")]
    [InlineData("225", MassUnit.Pound, "102.05828325", "225 lb")]
    [InlineData("1000", MassUnit.Kilogram, "1000", "1000 kg")]
    public void A_weight_keeps_its_unit(string amount, MassUnit unit, string kilograms, string text)
    {
        var weight = new Weight(Number(amount), unit);
        Assert.Equal((Number(kilograms), text, Number(amount)), (weight.Kilograms, weight.ToString(), weight.In(unit)));
    }

    [Fact]
    public void One_weight_has_one_form() => Assert.Equal((new Weight(71.5m), "71.5"), (new Weight(71.500m), new Weight(71.50m).Amount.ToString(System.Globalization.CultureInfo.InvariantCulture)));

    [Theory]
    [InlineData("0", MassUnit.Kilogram)]
    [InlineData("-20", MassUnit.Kilogram)]
    [InlineData("1000.001", MassUnit.Kilogram)]
    [InlineData("2204.7", MassUnit.Pound)]
    [InlineData("79228162514264337593543950335", MassUnit.Pound)]
    public void A_weight_that_cannot_be_is_none(string amount, MassUnit unit) => Assert.Throws<ArgumentOutOfRangeException>(() => new Weight(Number(amount), unit));

    [Fact]
    public void To_pounds_and_back_is_the_same() => Gen.Int[1, 1_000_000].Sample(grams =>
    {
        var weight = new Weight(grams / 1_000m);
        if (Weight.IsPossible(weight.In(MassUnit.Pound), MassUnit.Pound)) Assert.Equal(weight.Amount, new Weight(weight.In(MassUnit.Pound), MassUnit.Pound).Kilograms, 20);
    }, iter: 1_000);

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(200.1)]
    [InlineData(82.55)]
    public void An_intensity_is_above_0_to_200_in_tenths(double percent) => Assert.Throws<ArgumentOutOfRangeException>(() => new Intensity((decimal)percent));

    [Fact]
    public void An_intensity_of_a_maximum() => Assert.Equal((101.475m, "82.5 % of 1RM", new Intensity(82.5m)), (new Intensity(82.5m).Of(123), new Intensity(82.50m).ToString(), new Intensity(82.50m)));

    private static decimal Number(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
