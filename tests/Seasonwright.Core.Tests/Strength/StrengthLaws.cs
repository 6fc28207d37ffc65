using CsCheck;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Strength;

namespace Seasonwright.Core.Tests.Strength;

/// <summary>What holds of every load, table and rack, whatever the figures.</summary>
public class StrengthLaws
{
    private static readonly Gen<PlateSet> PlateSets = Gen.Select(Gen.Enum<MassUnit>(), Gen.Select(Gen.Int[1, 40], Gen.Int[0, 4], (mass, pairs) => new PlatePair(mass * 0.625m, pairs == 0 ? null : pairs)).Array[0, 7], Gen.Int[0, 3],
        (unit, plates, collar) => new PlateSet(unit, plates, collar));

    private static readonly Gen<Bar> Bars = Gen.Select(Gen.Int[1, 50], Gen.Enum<MassUnit>(), (mass, unit) => new Bar(new Weight(mass, unit)));

    [Fact]
    public void Nearest_is_never_farther_than_down_and_down_never_above() => Gen.Select(PlateSets, Bars, Gen.Int[1, 90_000]).Sample((plates, bar, hundredths) =>
    {
        var (totals, target) = (LoadableTotals.Of(bar, plates), hundredths / 100m);
        var (nearest, down) = (totals.Load(target, LoadRounding.Nearest), totals.Load(target, LoadRounding.Down));
        Assert.Equal(target < totals.Empty, nearest is null);
        Assert.Equal(nearest is null, down is null);
        if (nearest is null || down is null) return;
        Assert.True(down.Total <= target);
        Assert.True(Math.Abs(nearest.Total - target) <= target - down.Total);
        foreach (var loading in new[] { nearest, down })
        {
            Assert.Equal(loading.Total, totals.Empty + 2 * loading.PerSide.Sum());
            Assert.Equal(loading.PerSide.OrderDescending(), loading.PerSide);
            Assert.All(plates.Plates, pair => Assert.True(loading.PerSide.Count(mass => mass == pair.Mass) <= (pair.Pairs ?? int.MaxValue)));
            // What is loaded can be loaded again, with the same plates.
            if (bar.Weight.Unit == plates.Unit) Assert.Equal(loading.PerSide, totals.Load(loading.Total, LoadRounding.Down)!.PerSide);
        }
    }, iter: 400);

    [Fact]
    public void A_heavier_target_is_never_loaded_lighter() => Gen.Select(PlateSets, Gen.Int[20, 400], Gen.Int[0, 100]).Sample((plates, target, more) =>
    {
        var totals = LoadableTotals.Of(new Bar(new Weight(20, plates.Unit)), plates);
        if (target < totals.Empty) return;
        foreach (var rounding in Enum.GetValues<LoadRounding>()) Assert.True(totals.Load(target, rounding)!.Total <= totals.Load(target + more, rounding)!.Total);
    }, iter: 300);

    [Fact]
    public void Plates_are_the_same_in_any_order_and_count() =>
        Assert.Equal(new PlateSet(MassUnit.Kilogram, [new(20, 2), new(25, 1)]), new PlateSet(MassUnit.Kilogram, [new(25.0m, 1), new(20, 1), new(20.00m, 1)]));

    [Fact]
    public void Plates_that_cannot_be_are_none()
    {
        Assert.All([0m, -5m, 250.5m, 1.0001m], mass => Assert.Throws<ArgumentOutOfRangeException>(() => new PlatePair(mass)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new PlatePair(20, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new PlateSet(MassUnit.Kilogram, [], -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new PlateSet(MassUnit.Kilogram, Enumerable.Range(1, PlateSet.MostMasses + 1).Select(mass => new PlatePair(mass))));
    }

    [Fact]
    public void More_repetitions_are_always_less_of_the_maximum()
    {
        foreach (var table in new[] { RepTable.Textbook, RepTable.LoadChart })
            Assert.All(Enumerable.Range(1, table.Most - 1), repetitions => Assert.True(table.Percent(repetitions + 1) < table.Percent(repetitions)));
    }

    /// <summary>The line does not know the unit: in pounds everything is so many times the same.</summary>
    [Fact]
    public void A_profile_scales_with_its_unit() => Gen.Select(Gen.Double[0.02, 0.1], Gen.Double[-0.03, 0.03].Array[4], Gen.Double[0.5, 3]).Sample((fall, noise, scale) =>
    {
        VelocityPoint[] points = [.. noise.Select((off, at) => new VelocityPoint(20 + 10 * at, 1.2 - fall * at * 2 + off))];
        if (VelocityProfile.Of(points).Profile?.OneRepMax(0.3).Estimate is not { } one) return;
        var other = VelocityProfile.Of(points.Select(point => new VelocityPoint(scale * point.Load, point.Velocity))).Profile!.OneRepMax(0.3).Estimate!;
        Assert.Equal(scale * one.Load, other.Load, 1e-9 * other.Load);
        Assert.Equal(one.Interval is null, other.Interval is null);
        if (one.Interval is var (low, high)) Assert.InRange(one.Load, low - 1e-9, high + 1e-9);
    }, iter: 1_000);
}
