using System.Globalization;
using CsCheck;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Strength;

namespace Seasonwright.Truth.Tests.Strength;

/// <summary>
/// Source of bars, discs and collars: IWF Technical and Competition Rules, confirmed through public equipment pages; gym sets from memory.
/// The loadings are arithmetic. K01 to K15 are the ids of the reference values.
/// </summary>
public class PlateTruth
{
    private static readonly PlateSet NoCollars = PlateSet.Competition.WithCollar(0);

    public static TheoryData<string, decimal, Bar, PlateSet, decimal[]> Exact => new()
    {
        { "K01", 100, Bar.Men, NoCollars, [25, 15] },
        { "K02", 100, Bar.Men, PlateSet.Competition, [25, 10, 2.5m] },
        { "K03", 62, Bar.Women, NoCollars, [20, 2.5m, 1] },
        { "K05", 102.5m, Bar.Men, PlateSet.GymKilograms, [25, 15, 1.25m] },
        { "K06", 187, Bar.Men, PlateSet.Competition, [25, 25, 25, 5, 1] },
        { "K07", 225, Bar.Pounds, PlateSet.GymPounds, [45, 45] },
        { "K08", 190, Bar.Pounds, PlateSet.GymPounds, [45, 25, 2.5m] },
        // The largest first would take the 25 and be stuck with 15 left.
        { "K09", 100, Bar.Men, new PlateSet(MassUnit.Kilogram, [new(25, 1), new(20, 1), new(20, 1)]), [20, 20] },
    };

    [Theory]
    [MemberData(nameof(Exact))]
    public void A_target_that_can_be_loaded(string id, decimal target, Bar bar, PlateSet plates, decimal[] side)
    {
        foreach (var rounding in Enum.GetValues<LoadRounding>())
        {
            var loading = LoadableTotals.Of(bar, plates).Load(target, rounding)!;
            Assert.True((target, target) == (loading.Target, loading.Total) && side.SequenceEqual(loading.PerSide), $"{id}: {loading}");
        }
    }

    /// <summary>K04: 102.0 and 103.0 are as near; the lighter is ours.</summary>
    [Fact]
    public void Half_way_the_lighter_is_taken()
    {
        var loading = LoadableTotals.Of(Bar.Men, NoCollars).Load(102.5m, LoadRounding.Nearest)!;
        Assert.Equal((102m, 0.25m), (loading.Total, (loading.Target - loading.Total) / 2));
        Assert.Equal(103m, LoadableTotals.Of(Bar.Men, NoCollars).Load(102.500001m, LoadRounding.Nearest)!.Total);
        Assert.Equal(102m, LoadableTotals.Of(Bar.Men, NoCollars).Load(102.9m, LoadRounding.Down)!.Total);
    }

    /// <summary>K10.</summary>
    [Fact]
    public void Lighter_than_the_bar()
    {
        Assert.All(Enum.GetValues<LoadRounding>(), rounding => Assert.Null(LoadableTotals.Of(Bar.Men, NoCollars).Load(15, rounding)));
        Assert.Null(LoadableTotals.Of(Bar.Men, PlateSet.Competition).Load(24.9m, LoadRounding.Nearest));
        Assert.Equal([], LoadableTotals.Of(Bar.Men, PlateSet.Competition).Load(25, LoadRounding.Nearest)!.PerSide);
    }

    /// <summary>K11.</summary>
    [Fact]
    public void The_smallest_step_of_the_total()
    {
        foreach (var (bar, plates, step) in new[] { (Bar.Men, NoCollars, 1m), (Bar.Men, PlateSet.GymKilograms, 2.5m), (Bar.Pounds, PlateSet.GymPounds, 5m) })
        {
            var totals = LoadableTotals.Of(bar, plates).All.ToList();
            Assert.Equal(step, totals.Zip(totals.Skip(1), (lighter, heavier) => heavier - lighter).Min());
        }
    }

    /// <summary>K12, K13, K14: 81.25, 83.7, 83.75 and 86.25 to 2.5. Half-way some go to the even step (K12), others up (K13); ours goes down, as K14 always does.</summary>
    [Fact]
    public void Steps_of_dumbbells()
    {
        var steps = new DumbbellSteps(2.5m, 100, 2.5m, MassUnit.Kilogram);
        decimal[] targets = [81.25m, 83.7m, 83.75m, 86.25m];
        decimal[] even = [80, 82.5m, 85, 85], up = [82.5m, 82.5m, 85, 87.5m], down = [80, 82.5m, 82.5m, 85];
        Assert.Equal(down, targets.Select(target => steps.Load(target, LoadRounding.Down)!.Value));
        Assert.Equal(even, targets.Select(target => 2.5m * Math.Round(target / 2.5m, MidpointRounding.ToEven)));
        Assert.Equal(up, targets.Select(target => 2.5m * Math.Round(target / 2.5m, MidpointRounding.AwayFromZero)));
        Assert.Equal(down, targets.Select(target => steps.Load(target, LoadRounding.Nearest)!.Value));
        Assert.Equal(85m, steps.Load(83.76m, LoadRounding.Nearest));
        Assert.Equal((null, 2.5m, 100m), (steps.Load(2.4m, LoadRounding.Nearest), steps.Load(2.5m, LoadRounding.Nearest), steps.Load(400, LoadRounding.Nearest)));
        Assert.Equal(48m, new DumbbellSteps(4, 50, 4, MassUnit.Kilogram).To);
    }

    /// <summary>K15. Source: the international pound of 1959, 0.45359237 kg exactly.</summary>
    [Fact]
    public void Pounds_and_kilograms()
    {
        Assert.Equal((102.05828325m, 20.41165665m), (new Weight(225, MassUnit.Pound).Kilograms, new Weight(45, MassUnit.Pound).Kilograms));
        Assert.Equal(220.462262m, new Weight(100).In(MassUnit.Pound), 6);
    }

    /// <summary>The table of bars and discs that the presets are from.</summary>
    [Fact]
    public void Presets_are_the_table()
    {
        var rows = Cases.Rows("strength/plates.csv");
        Assert.Equal(Masses("iwf", "disc"), PlateSet.Competition.Plates.Select(pair => pair.Mass));
        Assert.Equal(Masses("lb", "plate"), PlateSet.GymPounds.Plates.Select(pair => pair.Mass));
        Assert.Equal([Bar.Men.Weight.Amount, Bar.Women.Weight.Amount, PlateSet.Competition.Collar, Bar.Pounds.Weight.Amount],
            [.. Masses("iwf", "bar men"), .. Masses("iwf", "bar women"), .. Masses("iwf", "collar (each)"), .. Masses("lb", "bar")]);

        IEnumerable<decimal> Masses(string set, string item) => rows.Where(row => row["set"] == set && row["item"] == item).Select(row => decimal.Parse(row["mass"], CultureInfo.InvariantCulture));
    }

    private static readonly Gen<(decimal Bar, decimal Collar, PlatePair[] Plates, decimal Target)> Racks = Gen.Select(
        Gen.OneOf(20m, 15m, 7.5m, 10.2m), Gen.OneOf(0m, 2.5m, 0.2m),
        Gen.Select(Gen.OneOf(25m, 20m, 15m, 10m, 7.5m, 5m, 2.5m, 2m, 1.25m, 1.1m, 0.5m, 0.375m), Gen.Int[1, 3], (mass, pairs) => new PlatePair(mass, pairs)).Array[0, 6],
        Gen.Int[0, 40_000].Select(hundredths => hundredths / 100m));

    /// <summary>Source: every choice of plates counted out one by one, apart from the program. A failure prints its seed.</summary>
    [Fact]
    public void Any_rack_is_loaded_as_counting_out_every_choice_says() => Racks.Sample(rack =>
    {
        var plates = new PlateSet(MassUnit.Kilogram, rack.Plates, rack.Collar);
        var totals = LoadableTotals.Of(new Bar(new Weight(rack.Bar)), plates);
        var choices = Choices([.. plates.Plates]).Select(side => (Total: rack.Bar + 2 * rack.Collar + 2 * side.Sum(), Side: side)).ToList();
        Assert.Equal(choices.Select(choice => choice.Total).Distinct().Order(), totals.All);
        Assert.Equal(choices.Max(choice => choice.Total), totals.Heaviest);

        var nearest = totals.Load(rack.Target, LoadRounding.Nearest);
        var down = totals.Load(rack.Target, LoadRounding.Down);
        if (rack.Target < rack.Bar + 2 * rack.Collar)
        {
            Assert.Null(nearest);
            Assert.Null(down);
            return;
        }
        Assert.Equal(choices.Select(choice => choice.Total).Where(total => total <= rack.Target).Max(), down!.Total);
        Assert.Equal(choices.Select(choice => choice.Total).OrderBy(total => Math.Abs(total - rack.Target)).ThenBy(total => total).First(), nearest!.Total);
        foreach (var loading in new[] { nearest, down })
        {
            var best = choices.Where(choice => choice.Total == loading.Total).Select(choice => choice.Side)
                .OrderBy(side => side.Count).ThenByDescending(side => string.Concat(side.Select(mass => ((int)(mass * 1_000)).ToString("D6", CultureInfo.InvariantCulture))), StringComparer.Ordinal).First();
            Assert.Equal(best, loading.PerSide);
        }
    }, iter: 2_000);

    /// <summary>Source: the same, for plates of which there are as many as needed: no more than the target asks for.</summary>
    [Fact]
    public void Plates_without_end_are_as_many_as_needed() => Gen.Select(Racks, Gen.Int[20, 90]).Sample((rack, target) =>
    {
        var endless = new PlateSet(MassUnit.Kilogram, rack.Plates.Where(pair => pair.Mass >= 5).Select(pair => new PlatePair(pair.Mass)));
        var counted = new PlateSet(MassUnit.Kilogram, endless.Plates.Select(pair => new PlatePair(pair.Mass, 20)));
        foreach (var rounding in Enum.GetValues<LoadRounding>())
            Assert.Equal(LoadableTotals.Of(Bar.Women, counted).Load(target, rounding)?.PerSide, LoadableTotals.Of(Bar.Women, endless).Load(target, rounding)?.PerSide);
    }, iter: 300);

    private static IEnumerable<List<decimal>> Choices(PlatePair[] plates) => plates.Length == 0 ? [[]]
        : Choices(plates[1..]).SelectMany(lighter => Enumerable.Range(0, plates[0].Pairs!.Value + 1).Select(count => Enumerable.Repeat(plates[0].Mass, count).Concat(lighter).ToList()));
}
