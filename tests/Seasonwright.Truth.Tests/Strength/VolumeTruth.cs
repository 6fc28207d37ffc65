using System.Globalization;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Strength;

namespace Seasonwright.Truth.Tests.Strength;

/// <summary>
/// Source of the zones: the table attributed to A. S. Prilepin as printed by Hristov H 2004/2005 and McCullough T. P01 to P09 and R25 are the
/// ids of the reference values.
/// </summary>
public class VolumeTruth
{
    /// <summary>P01 to P04.</summary>
    [Fact]
    public void The_printed_zones()
    {
        var rows = Cases.Rows("strength/prilepin.csv");
        Assert.Equal(IntensityZone.All.Count, rows.Count);
        foreach (var (row, zone) in rows.Zip(IntensityZone.All))
            Assert.Equal(
                (Number(row["reps_per_set_min"]), Number(row["reps_per_set_max"]), Number(row["optimal_total"]), Number(row["range_min"]), Number(row["range_max"])),
                (zone.FewestInSet, zone.MostInSet, zone.Optimal, zone.Fewest, zone.Most));
    }

    /// <summary>Ours, as prints differ: 70, 80 and 90 begin a zone.</summary>
    [Theory]
    [InlineData(0.1, 0)]
    [InlineData(69.9, 0)]
    [InlineData(70, 1)]
    [InlineData(79.9, 1)]
    [InlineData(80, 2)]
    [InlineData(89.9, 2)]
    [InlineData(90, 3)]
    [InlineData(105, 3)]
    [InlineData(200, 3)]
    public void A_zone_by_per_cent(double percent, int zone) => Assert.Equal(IntensityZone.All[zone], IntensityZone.Of(new Intensity((decimal)percent)));

    /// <summary>P05 to P09. Source: the table, both ends of a range included.</summary>
    [Theory]
    [InlineData("P05", 75, 6, 3, 18, ZoneVolume.Optimal, 0)]
    [InlineData("P06", 70, 2, 6, 12, ZoneVolume.InRange, 0)]
    [InlineData("P07", 85, 5, 3, 15, ZoneVolume.Optimal, 0)]
    [InlineData("P08", 92, 11, 1, 11, ZoneVolume.Above, 0)]
    [InlineData("P09", 75, 3, 8, 24, ZoneVolume.InRange, 3)]
    [InlineData("one below", 85, 3, 3, 9, ZoneVolume.Below, 0)]
    [InlineData("one rep", 70, 6, 2, 12, ZoneVolume.InRange, 6)]
    public void Sets_in_a_zone(string id, int percent, int sets, int repetitions, int total, ZoneVolume volume, int outside)
    {
        Assert.NotEmpty(id);
        Assert.Equal(new ZoneVerdict(total, volume, outside), IntensityZone.Of(new Intensity(percent)).Judge([.. Enumerable.Repeat(repetitions, sets)]));
    }

    /// <summary>R25. Source: sets x repetitions x load; Haff GG 2010, Strength Cond J 32(6):31-40 (from memory).</summary>
    [Fact]
    public void Volume_load()
    {
        Assert.Equal(1800m, VolumeLoad.Of([new(3, 10, 60)]).Total);
        var work = VolumeLoad.Of([new(1, 5, 100), new(1, 5, 110), new(1, 3, 120)]);
        Assert.Equal((13, 1410m, 108.4615m), (work.Repetitions, work.Total, Math.Round(work.MeanLoad!.Value, 4)));
        Assert.Null(VolumeLoad.Of([]).MeanLoad);
    }

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
