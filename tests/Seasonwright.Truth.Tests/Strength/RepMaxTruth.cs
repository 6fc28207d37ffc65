using System.Globalization;
using CsCheck;
using Seasonwright.Core.Strength;

namespace Seasonwright.Truth.Tests.Strength;

/// <summary>
/// Source: the equations as compiled in LeSuer DA et al. 1997, J Strength Cond Res 11(4):211-213, all eight confirmed in a public list;
/// the values recomputed in Python. R01 to R14 are the ids of the reference values.
/// </summary>
public class RepMaxTruth
{
    private static readonly string[] Names = ["epley", "brzycki", "brzycki-decimal", "lander", "lombardi", "mayhew", "oconner", "wathan"];

    [Theory]
    [InlineData("R01", "epley", 116.667, 133.333)]
    [InlineData("R02", "brzycki", 112.500, 133.333)]
    [InlineData("R03", "brzycki-decimal", 112.511, 133.369)]
    [InlineData("R04", "lander", 113.709, 134.070)]
    [InlineData("R05", "lombardi", 117.462, 125.893)]
    [InlineData("R06", "mayhew", 119.011, 130.934)]
    [InlineData("R07", "oconner", 112.500, 125.000)]
    [InlineData("R08", "wathan", 116.583, 134.747)]
    public void A_hundred_kilograms_five_and_ten_times(string id, string name, double five, double ten)
    {
        Assert.NotEmpty(id);
        var equation = RepMaxEquation.Find(name)!;
        Assert.Equal(five, equation.OneRepMax(100, 5), 0.001);
        Assert.Equal(ten, equation.OneRepMax(100, 10), 0.001);
    }

    [Fact]
    public void The_whole_table()
    {
        var rows = Cases.Rows("strength/one-rm-equations.csv");
        Assert.Equal<string[]>(Names, [.. RepMaxEquation.All.Select(equation => equation.Name)]);
        Assert.Equal(8, rows.Count);
        foreach (var (row, equation) in rows.Zip(RepMaxEquation.All))
            foreach (var (heading, cell) in row.Where(cell => cell.Key[0] == 'r' && cell.Key != "r1"))
                Assert.Equal(double.Parse(cell, CultureInfo.InvariantCulture), equation.OneRepMax(100, int.Parse(heading.AsSpan(1), CultureInfo.InvariantCulture)), 0.00051);
    }

    /// <summary>R09, R10. Source: algebra.</summary>
    [Fact]
    public void Where_equations_meet()
    {
        Assert.Equal(4 / 3d * 87.5, RepMaxEquation.Find("epley")!.OneRepMax(87.5, 10), 1e-9);
        Assert.Equal(4 / 3d * 87.5, RepMaxEquation.Find("brzycki")!.OneRepMax(87.5, 10), 1e-9);
        Assert.Equal(1.125 * 87.5, RepMaxEquation.Find("brzycki")!.OneRepMax(87.5, 5), 1e-9);
        Assert.Equal(1.125 * 87.5, RepMaxEquation.Find("oconner")!.OneRepMax(87.5, 5), 1e-9);
    }

    /// <summary>R11. Source: what a maximum is; the equations themselves say 100 to 108.9 of one repetition with 100.</summary>
    [Fact]
    public void One_repetition_is_the_maximum_itself() => Assert.All(RepMaxEquation.All, equation => Assert.Equal(142.5, equation.OneRepMax(142.5, 1)));

    /// <summary>R12. Source: the equations; Brzycki has its pole at 37 repetitions, Lander at 37.92, and all advise 10 or fewer.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(16)]
    [InlineData(37)]
    [InlineData(38)]
    public void Repetitions_that_no_equation_is_for(int repetitions) =>
        Assert.All(RepMaxEquation.All, equation => Assert.Throws<ArgumentOutOfRangeException>(() => equation.OneRepMax(100, repetitions)));

    /// <summary>R13, R14. Source: Reynolds JM et al. 2006, J Strength Cond Res 20(3):584-592, abstract.</summary>
    [Fact]
    public void Lines_from_five_repetitions()
    {
        Assert.Equal((113.770, 2.98), (Math.Round(FiveRepMaxLine.BenchPress.OneRepMax(100), 3), FiveRepMaxLine.BenchPress.Error));
        Assert.Equal(123.955, FiveRepMaxLine.LegPress.OneRepMax(100), 0.001);
        Assert.Equal(16.16, FiveRepMaxLine.LegPress.Error);
        Assert.Throws<ArgumentOutOfRangeException>(() => FiveRepMaxLine.LegPress.OneRepMax(0));
    }

    /// <summary>Source: the definition of a median of eight, over the values of R01 to R08.</summary>
    [Fact]
    public void The_spread_of_all()
    {
        var spread = RepMaxSpread.Of(100, 5);
        Assert.Equal(112.5, spread.Least, 1e-9);
        Assert.Equal((113.709 + 116.583) / 2, spread.Median, 0.001);
        Assert.Equal(119.011, spread.Greatest, 0.001);
        Assert.Equal(new RepMaxSpread(100, 100, 100), RepMaxSpread.Of(100, 1));
    }

    /// <summary>Source: the definition: an equation is a factor of the load that grows with repetitions.</summary>
    [Fact]
    public void Estimates_scale_with_load_and_grow_with_repetitions() => Gen.Select(Gen.Double[1, 500], Gen.Int[1, 14], Gen.Double[0.1, 3]).Sample((load, repetitions, scale) =>
    {
        foreach (var equation in RepMaxEquation.All)
        {
            Assert.Equal(scale * equation.OneRepMax(load, repetitions), equation.OneRepMax(scale * load, repetitions), 1e-9 * scale * load);
            Assert.True(equation.OneRepMax(load, repetitions + 1) > equation.OneRepMax(load, repetitions));
        }
    }, iter: 1_000);
}
