using System.Globalization;
using Seasonwright.Core.Loads;

namespace Seasonwright.Truth.Tests.Loads;

/// <summary>
/// Source: Foster C 1998, Med Sci Sports Exerc 30(7):1164-1168: monotony is the mean daily load by its standard deviation, rest days
/// as 0, strain the week's load times its monotony. Which deviation the paper means could not be seen: both are checked.
/// </summary>
public class MonotonyTruth
{
    /// <summary>Half a unit of the last place that is printed, with room for binary fractions.</summary>
    private const double FourPlaces = 0.000051;

    public static TheoryData<string> Weeks => [.. Cases.Rows("load/foster-week-expected.csv").Select(row => row["week"])];

    [Theory]
    [MemberData(nameof(Weeks))]
    public void A_week_of_daily_loads(string week)
    {
        var expected = Cases.Rows("load/foster-week-expected.csv").Single(row => row["week"] == week);
        double[] days = [.. Cases.Rows("load/foster-week.csv").Where(row => row["week"] == week).Select(row => Number(row["daily_load_au"]))];
        Assert.Equal(7, days.Length);
        Assert.Equal(Number(expected["weekly_load"]), days.Sum(), 0.00001);
        Assert.Equal(Number(expected["monotony_sample"]), Monotony.Of(days)!.Value, FourPlaces);
        Assert.Equal(Number(expected["monotony_population"]), Monotony.Of(days, Spread.Population)!.Value, FourPlaces);
        Assert.Equal(Number(expected["strain_sample"]), Monotony.Strain(days)!.Value, 0.0002);
        Assert.Equal(Number(expected["strain_population"]), Monotony.Strain(days, Spread.Population)!.Value, 0.0002);
    }

    /// <summary>Closed form: k equal days and 7 - k of rest give sqrt(6k / (7(7 - k))) with n - 1 and sqrt(k / (7 - k)) with n, whatever the load.</summary>
    [Fact]
    public void Equal_days_and_days_of_rest()
    {
        var rows = Cases.Rows("load/monotony-k-equal-days.csv");
        Assert.Equal(6, rows.Count);
        foreach (var row in rows)
            foreach (var load in new[] { 1d, 300, 1234.5 })
            {
                var k = int.Parse(row["training_days_k"], CultureInfo.InvariantCulture);
                double[] days = [.. Enumerable.Repeat(load, k), .. Enumerable.Repeat(0d, 7 - k)];
                Assert.Equal(Math.Sqrt(6d * k / (7 * (7 - k))), Monotony.Of(days)!.Value, 1e-9);
                Assert.Equal(Number(row["monotony_sample"]), Monotony.Of(days)!.Value, 1e-6);
                Assert.Equal(Number(row["monotony_population"]), Monotony.Of(days, Spread.Population)!.Value, 1e-6);
            }
    }

    /// <summary>By definition: nothing is divided by a deviation of 0.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(300)]
    [InlineData(0.1)]
    public void Days_all_alike_have_no_monotony_and_no_strain(double load)
    {
        double[] days = [.. Enumerable.Repeat(load, 7)];
        foreach (var spread in Enum.GetValues<Spread>())
        {
            Assert.Null(Monotony.Of(days, spread));
            Assert.Null(Monotony.Strain(days, spread));
        }
    }

    /// <summary>By definition: twice the load has the same monotony and twice the strain.</summary>
    [Theory]
    [InlineData(2)]
    [InlineData(0.37)]
    [InlineData(1000)]
    public void Scale_leaves_monotony_and_multiplies_strain(double scale)
    {
        double[] days = [300, 795, 0, 540, 135, 855, 0];
        double[] scaled = [.. days.Select(day => scale * day)];
        Assert.Equal(1, Monotony.Of(scaled)!.Value / Monotony.Of(days)!.Value, 1e-11);
        Assert.Equal(scale, Monotony.Strain(scaled)!.Value / Monotony.Strain(days)!.Value, scale * 1e-11);
    }

    /// <summary>The worked weeks of the rulebook's reference: figures recomputed from the same definitions, with n - 1.</summary>
    [Theory]
    [InlineData(new double[] { 600, 0, 600, 0, 600, 0, 0 }, 0.80, 1443)]
    [InlineData(new double[] { 400, 380, 420, 400, 390, 410, 0 }, 2.26, 5423)]
    public void Worked_weeks(double[] days, double monotony, double strain)
    {
        Assert.Equal(monotony, Math.Round(Monotony.Of(days)!.Value, 2));
        Assert.Equal(strain, Math.Round(Monotony.Strain(days)!.Value));
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
