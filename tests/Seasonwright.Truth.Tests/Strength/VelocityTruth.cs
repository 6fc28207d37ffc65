using System.Globalization;
using Seasonwright.Core.Strength;

namespace Seasonwright.Truth.Tests.Strength;

/// <summary>V01 to V09 are the ids of the reference values; the source stands at each.</summary>
public class VelocityTruth
{
    /// <summary>V01: Gonzalez-Badillo JJ, Sanchez-Medina L 2010, Int J Sports Med 31(5):347-352. V02: Sanchez-Medina L et al. 2017, Sports Med Int Open 1(2):E80-E88. V03: trials in Isokinet Exerc Sci 2021 and J Strength Cond Res 39(4):e530-e537. As printed.</summary>
    [Fact]
    public void Velocities_of_the_maximum()
    {
        Assert.Equal((0.16, 0.04), (VelocityThreshold.BenchPress.MetresPerSecond, VelocityThreshold.BenchPress.Deviation));
        Assert.Equal((0.32, 0.03), (VelocityThreshold.FullSquat.MetresPerSecond, VelocityThreshold.FullSquat.Deviation));
        Assert.Equal((0.17, 0.30), (VelocityThreshold.BenchPressOfTrials.MetresPerSecond, VelocityThreshold.SquatOfTrials.MetresPerSecond));
    }

    /// <summary>V04, V05. Source: as V01 and V02; coefficients from memory, supported by 100.8 and 100.2 % at the velocities of V01 and V02.</summary>
    [Fact]
    public void Per_cent_by_velocity()
    {
        var rows = Cases.Rows("strength/load-velocity.csv");
        Assert.Equal(10, rows.Count);
        foreach (var row in rows)
        {
            Assert.Equal(Number(row["bench_percent_1rm"]), VelocityRelation.BenchPress.Percent(Number(row["v_m_s"])), 0.00051);
            Assert.Equal(Number(row["squat_percent_1rm"]), VelocityRelation.FullSquat.Percent(Number(row["v_m_s"])), 0.00051);
        }
        Assert.Equal(100.8, VelocityRelation.BenchPress.Percent(VelocityThreshold.BenchPress.MetresPerSecond), 0.05);
        Assert.Equal(100.2, VelocityRelation.FullSquat.Percent(VelocityThreshold.FullSquat.MetresPerSecond), 0.05);
        Assert.Throws<ArgumentOutOfRangeException>(() => VelocityRelation.FullSquat.Percent(1.51));
    }

    /// <summary>V06. Source: a straight line, own numbers.</summary>
    [Fact]
    public void Points_on_a_line()
    {
        var (profile, _) = VelocityProfile.Of(Points([1.10, 0.86, 0.62, 0.38]));
        Assert.Equal((-0.012, 1.58, 1), (profile!.VelocityOnLoad.Slope, profile.VelocityOnLoad.Intercept, profile.VelocityOnLoad.R2), Within(1e-9));
        var estimate = profile.OneRepMax(0.17).Estimate!;
        Assert.Equal(117.5, estimate.Load, 1e-9);
        Assert.Equal(117.5, estimate.OtherDirection, 1e-9);
        Assert.Equal((117.5, 117.5), estimate.Interval!.Value, (one, other) => Math.Abs(one.Item1 - other.Item1) < 1e-6 && Math.Abs(one.Item2 - other.Item2) < 1e-6);
    }

    /// <summary>V07, V08. Source: least squares, own numbers; the two directions differ, and the program's is velocity on load.</summary>
    [Fact]
    public void Points_beside_a_line()
    {
        var (profile, _) = VelocityProfile.Of(Points([1.12, 0.85, 0.66, 0.39]));
        Assert.Equal((-0.0119, 1.588, 0.9955009), (profile!.VelocityOnLoad.Slope, profile.VelocityOnLoad.Intercept, profile.VelocityOnLoad.R2), Within(1e-7));
        Assert.Equal(0.0252982, profile.VelocityOnLoad.Error!.Value, 1e-4);
        Assert.Equal(133.4454, profile.LoadAtRest, 1e-4);
        Assert.Equal(119.1597, profile.OneRepMax(0.17).Estimate!.Load, 1e-4);
        Assert.Equal(120.0, profile.OneRepMax(0.16).Estimate!.Load, 1e-4);
        Assert.Equal(133.15993, profile.LoadOnVelocity.Intercept, 1e-4);
        Assert.Equal(-83.655536, profile.LoadOnVelocity.Slope, 1e-4);
        Assert.Equal(118.9385, profile.OneRepMax(0.17).Estimate!.OtherDirection, 1e-4);
    }

    /// <summary>V09. Source: a straight line through two points.</summary>
    [Fact]
    public void Two_points()
    {
        var (profile, _) = VelocityProfile.Of([new(40, 1.12), new(100, 0.39)]);
        var estimate = profile!.OneRepMax(0.17).Estimate!;
        Assert.Equal(118.0822, estimate.Load, 1e-4);
        Assert.Null(estimate.Interval);
        Assert.Null(profile.VelocityOnLoad.Error);
    }

    /// <summary>By definition: where there is no falling line there is no maximum.</summary>
    [Fact]
    public void What_is_no_profile()
    {
        Assert.Equal(VelocityTrouble.OneLoad, VelocityProfile.Of([]).Trouble);
        Assert.Equal(VelocityTrouble.OneLoad, VelocityProfile.Of([new(40, 1), new(40, 0.9)]).Trouble);
        Assert.Equal(VelocityTrouble.NotFalling, VelocityProfile.Of([new(40, 0.9), new(60, 1)]).Trouble);
        Assert.Equal(VelocityTrouble.NotFalling, VelocityProfile.Of([new(40, 0.7), new(60.1, 0.7), new(82.3, 0.7)]).Trouble);
        var (profile, _) = VelocityProfile.Of([new(40, 0.5), new(60, 0.45), new(80, 0.4)]);
        Assert.Equal(VelocityTrouble.BelowThreshold, profile!.OneRepMax(0.6).Trouble);
        Assert.Equal(VelocityTrouble.FarFromLifted, VelocityProfile.Of([new(10, 0.5), new(20, 0.49)]).Profile!.OneRepMax(0.17).Trouble);
        Assert.Throws<ArgumentOutOfRangeException>(() => profile.OneRepMax(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new VelocityPoint(0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new VelocityPoint(40, 55));
        Assert.Throws<ArgumentOutOfRangeException>(() => new VelocityPoint(double.NaN, 1));
    }

    /// <summary>By definition: the share lost from the fastest repetition, which need not be the first. Own numbers.</summary>
    [Fact]
    public void Velocity_lost_in_a_set()
    {
        double[] set = [0.96, 1.00, 0.94, 0.88, 0.80, 0.71];
        Assert.Equal(0.29, VelocityLoss.Of(set)!.Value, 1e-12);
        Assert.Equal((5, 6, null), (VelocityLoss.EndsAfter(set, 0.2), VelocityLoss.EndsAfter(set, 0.25), VelocityLoss.EndsAfter(set, 0.3)));
        Assert.Null(VelocityLoss.Of([]));
        Assert.Equal(0, VelocityLoss.Of([0.5]));
    }

    private static IEnumerable<VelocityPoint> Points(double[] velocities) => velocities.Select((velocity, at) => new VelocityPoint(40 + 20 * at, velocity));

    private static Func<(double, double, double), (double, double, double), bool> Within(double tolerance) => (one, other) =>
        Math.Abs(one.Item1 - other.Item1) < tolerance && Math.Abs(one.Item2 - other.Item2) < tolerance && Math.Abs(one.Item3 - other.Item3) < tolerance;

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
