using Seasonwright.Core.Loads;

namespace Seasonwright.Truth.Tests.Loads;

/// <summary>Weeks against the weeks before them.</summary>
public class ComparisonTruth
{
    /// <summary>Source of the definition: Lolli L et al. 2019, Br J Sports Med 53(15):921-922, the week itself left out. Own numbers.</summary>
    [Fact]
    public void The_week_against_the_mean_before_it() => Assert.Equal(1.375m, TrailingFour.Ratio(2200, [1500, 1600, 1700]));

    /// <summary>Source: algebra on Williams S et al. 2017, Br J Sports Med 51(3):209-210: what they print with the week inside, 10 to 7, is 5 to 3 without it.</summary>
    [Fact]
    public void A_ratio_with_the_week_inside_tells_the_one_without()
    {
        Assert.Equal(5 / 3d, (double)TrailingFour.Ratio(10, [6, 6, 6])!.Value, 1e-12);
        Assert.Equal(10 / 7d, 10 / new[] { 10d, 6, 6, 6 }.Average(), 1e-12);
        foreach (var (week, before) in new[] { (2200m, new decimal?[] { 1500, 1600, 1700 }), (900m, [1000, 1200, 1100]), (3000m, [0, 100, 0]) })
        {
            var without = TrailingFour.Ratio(week, before)!.Value;
            var inside = week / before.Append(week).Average()!.Value;
            Assert.Equal((double)inside, (double)(4 * without / (3 + without)), 1e-12);
        }
    }

    [Theory]
    [InlineData(new[] { 1800, 1900, 2000, 1500 }, 1.33)]
    public void The_worked_weeks_of_the_rulebooks_reference(int[] before, double ratio) =>
        Assert.Equal((decimal)ratio, Math.Round(TrailingFour.Ratio(2400, [.. before.Select(load => (decimal?)load)])!.Value, 2));

    [Fact]
    public void A_week_that_is_missing_is_not_a_week_of_nothing()
    {
        Assert.Null(TrailingFour.Ratio(2400, [1800, null, 2000, 1500]));
        Assert.Null(TrailingFour.Ratio(2400, []));
        Assert.Null(TrailingFour.Ratio(2400, [0, 0, 0, 0]));
        Assert.Equal(0, TrailingFour.Ratio(0, [1800, 1900, 2000, 1500]));
    }

    /// <summary>Arithmetic: from 100 to 20 % in a straight line over 14 days, both ends counted, cuts 40 %.</summary>
    [Fact]
    public void A_straight_taper() => Assert.Equal(0.4m, Reduction.Of([.. Enumerable.Range(0, 14).Select(day => 100 - 80m * day / 13)], [100, 100])!.Value, 12);

    /// <summary>Own numbers, the worked case of the rulebook's reference: 260 min against 500 are 48 % less, 340 are 32 %.</summary>
    [Theory]
    [InlineData(260, 0.48)]
    [InlineData(340, 0.32)]
    [InlineData(550, -0.1)]
    public void A_taper_week(int minutes, double cut) => Assert.Equal((decimal)cut, Reduction.Of([minutes], [500, 500]));

    [Fact]
    public void Against_nothing_nothing_is_less()
    {
        Assert.Null(Reduction.Of([100], []));
        Assert.Null(Reduction.Of([], [100]));
        Assert.Null(Reduction.Of([100], [0, 0]));
    }
}
