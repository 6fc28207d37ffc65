using System.Globalization;
using CsCheck;
using MathNet.Numerics;
using Seasonwright.Core.Strength;

namespace Seasonwright.Truth.Tests.Strength;

/// <summary>The line of least squares against certified data, R and a library's own fit.</summary>
public class LineTruth
{
    /// <summary>V10. Source: NIST Statistical Reference Datasets, Norris, certified values (from memory; recomputed in exact fractions, agrees to 14 digits).</summary>
    [Fact]
    public void The_certified_line_of_Norris()
    {
        var points = Cases.Rows("strength/linear-regression-nist-norris.csv").Select(row => (Number(row["x"]), Number(row["y"]))).ToList();
        Assert.Equal(36, points.Count);
        var line = FittedLine.Of(points);
        Near(-0.262323073774029, line.Intercept, 1e-10);
        Near(1.00211681802045, line.Slope, 1e-10);
        Near(0.884796396144373, line.Error!.Value, 1e-10);
        Near(0.999993745883712, line.R2, 1e-10);
    }

    /// <summary>V11. Source: Anscombe FJ 1973, Am Stat 27:17-21 (from memory, recomputed): four sets, one line.</summary>
    [Fact]
    public void The_four_sets_of_Anscombe()
    {
        var rows = Cases.Rows("strength/linear-regression-anscombe.csv");
        Assert.Equal(11, rows.Count);
        foreach (var (x, y) in new[] { ("x", "y1"), ("x", "y2"), ("x", "y3"), ("x4", "y4") })
        {
            var line = FittedLine.Of([.. rows.Select(row => (Number(row[x]), Number(row[y])))]);
            Assert.Equal(0.500, line.Slope, 0.003);
            Assert.Equal(3.00, line.Intercept, 0.003);
            Assert.Equal(0.816, Math.Sqrt(line.R2), 0.003);
            Assert.Equal((9, 7.50), (line.Mean.X, Math.Round(line.Mean.Y, 2)));
        }
    }

    /// <summary>Source: MathNet.Numerics, Fit.Line and GoodnessOfFit.</summary>
    [Fact]
    public void Any_line_is_the_librarys() => Gen.Select(Gen.Double[20, 250], Gen.Double[0.1, 2]).Array[3, 12].Sample(points =>
    {
        if (points.Select(point => point.Item1).Max() - points.Select(point => point.Item1).Min() < 1) return;
        var (x, y) = (points.Select(point => point.Item1).ToArray(), points.Select(point => point.Item2).ToArray());
        var (intercept, slope) = Fit.Line(x, y);
        var line = FittedLine.Of(points);
        var size = Math.Abs(intercept) + 1;
        Assert.Equal(intercept, line.Intercept, 1e-9 * size);
        Assert.Equal(slope, line.Slope, 1e-9 * size);
        var fitted = x.Select(at => intercept + slope * at).ToArray();
        Assert.Equal(GoodnessOfFit.RSquared(fitted, y), line.R2, 1e-7);
        Assert.Equal(GoodnessOfFit.StandardError(fitted, y, 2), line.Error!.Value, 1e-9);
    }, iter: 2_000);

    public static TheoryData<int> ByR => [.. Enumerable.Range(0, Cases.Rows("strength/velocity-profile-r.csv").Count)];

    /// <summary>Source: R, functions lm, predict.lm and uniroot, by tests/Oracles/velocity-profile.R: the ends are searched for, not solved for.</summary>
    [Theory]
    [MemberData(nameof(ByR))]
    public void A_profile_is_what_R_makes_of_it(int at)
    {
        var expected = Cases.Rows("strength/velocity-profile-r.csv")[at];
        var points = Cases.Rows("strength/velocity-points.csv").Where(row => row["set"] == expected["set"]).Select(row => new VelocityPoint(Number(row["load"]), Number(row["velocity"]))).ToList();
        Assert.True(points.Count >= 2);
        var (profile, trouble) = VelocityProfile.Of(points);
        Assert.Null(trouble);
        var line = profile!.VelocityOnLoad;
        Same("slope", line.Slope);
        Same("intercept", line.Intercept);
        Same("r2", line.R2);
        Same("see", line.Error);
        Same("l0", profile.LoadAtRest);
        var (estimate, refused) = profile.OneRepMax(Number(expected["threshold"]));
        Assert.Null(refused);
        Same("one_rm", estimate!.Load);
        Same("low", estimate.Interval?.Low);
        Same("high", estimate.Interval?.High);
        Same("other_slope", profile.LoadOnVelocity.Slope);
        Same("other_intercept", profile.LoadOnVelocity.Intercept);
        Same("other_one_rm", estimate.OtherDirection);

        void Same(string column, double? ours)
        {
            if (expected[column].Length == 0) Assert.Null(ours);
            else Near(Number(expected[column]), ours!.Value, 1e-7);
        }
    }

    [Fact]
    public void One_x_has_no_line() => Assert.Throws<ArgumentException>(() => FittedLine.Of([(40, 1), (40, 0.9)]));

    private static void Near(double expected, double actual, double share) => Assert.Equal(expected, actual, Math.Abs(expected) * share);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
