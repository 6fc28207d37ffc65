using System.Numerics;
using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Strength;

/// <summary>
/// Every total that a bar and a set of plates can be loaded to, worked out once: then each load of a squad is looked up. Exact where bar
/// and plates have one unit, else to 28 digits.
/// </summary>
public sealed class LoadableTotals
{
    private const ushort Never = ushort.MaxValue;

    private readonly PlateSet plates;

    /// <summary>Thousandths that every plate is a multiple of.</summary>
    private readonly int step;

    /// <summary>The fewest plates a side of the mass at the first index or lighter ones whose sum is the second, in steps.</summary>
    private readonly ushort[][] fewest;

    private LoadableTotals(PlateSet plates, decimal empty, int step, ushort[][] fewest) => (this.plates, Empty, this.step, this.fewest) = (plates, empty, step, fewest);

    /// <summary>The bar with its collars alone, the lightest total.</summary>
    public decimal Empty { get; }

    public decimal Heaviest => Total(Array.FindLastIndex(fewest[0], count => count != Never));

    /// <summary>From the lightest to the heaviest, at most <see cref="Weight.Most"/> on the two sides together.</summary>
    public IEnumerable<decimal> All => Enumerable.Range(0, fewest[0].Length).Where(sum => fewest[0][sum] != Never).Select(Total);

    public static LoadableTotals Of(Bar bar, PlateSet plates)
    {
        var masses = plates.Plates.Select(pair => (int)(pair.Mass * 1_000)).ToArray();
        var grid = masses.Length == 0 ? 1 : (int)masses.Aggregate(BigInteger.Zero, (divisor, mass) => BigInteger.GreatestCommonDivisor(divisor, mass));
        var most = (int)(new Weight(Weight.Most).In(plates.Unit) * 500) / grid;
        if (plates.Plates.All(pair => pair.Pairs is not null)) most = (int)Math.Min(most, plates.Plates.Sum(pair => pair.Pairs!.Value * pair.Mass) * 1_000 / grid);
        var counts = new ushort[masses.Length + 1][];
        counts[^1] = new ushort[most + 1];
        counts[^1].AsSpan(1).Fill(Never);
        for (var index = masses.Length - 1; index >= 0; index--) counts[index] = With(counts[index + 1], masses[index] / grid, plates.Plates[index].Pairs);
        return new(plates, bar.Weight.In(plates.Unit) + 2 * plates.Collar, grid, counts);
    }

    /// <summary>The loading that stands for a target; above <see cref="Heaviest"/> that is the heaviest one.</summary>
    /// <param name="target">In the unit of the plates.</param>
    /// <returns>Null where the target is lighter than the empty bar.</returns>
    public Loading? Load(decimal target, LoadRounding rounding)
    {
        if (target < Empty) return null;
        var last = fewest[0].Length - 1;
        var below = (int)Math.Min(last, decimal.Floor((target - Empty) * 500 / step));
        while (fewest[0][below] == Never) below--;
        var above = Array.FindIndex(fewest[0], below + 1, count => count != Never);
        var sum = rounding == LoadRounding.Nearest && above > 0 && Total(above) - target < target - Total(below) ? above : below;
        return new(target, Total(sum), PerSide(sum));
    }

    /// <summary>Plates of one more mass beside lighter ones; those on hand in bundles of 1, 2, 4 and so on, of which any number can be made.</summary>
    private static ushort[] With(ushort[] lighter, int mass, int? pairs)
    {
        var counts = (ushort[])lighter.Clone();
        if (pairs is null)
        {
            for (var sum = mass; sum < counts.Length; sum++) counts[sum] = Math.Min(counts[sum], More(counts[sum - mass], 1));
            return counts;
        }
        for (int left = Math.Min(pairs.Value, counts.Length / mass), bundle = 1; left > 0; left -= bundle, bundle *= 2)
        {
            bundle = Math.Min(bundle, left);
            for (var sum = counts.Length - 1; sum >= bundle * mass; sum--) counts[sum] = Math.Min(counts[sum], More(counts[sum - bundle * mass], bundle));
        }
        return counts;
    }

    private static ushort More(ushort count, int by) => count == Never ? Never : (ushort)Math.Min(Never - 1, count + by);

    /// <summary>Of the fewest plates those with the most of the heaviest mass, then of the next.</summary>
    private ValueList<decimal> PerSide(int sum)
    {
        var side = new List<decimal>();
        for (var index = 0; index < plates.Plates.Count; index++)
        {
            var mass = (int)(plates.Plates[index].Mass * 1_000) / step;
            var count = Math.Min(plates.Plates[index].Pairs ?? int.MaxValue, sum / mass);
            while (fewest[index + 1][sum - count * mass] == Never || count + fewest[index + 1][sum - count * mass] != fewest[index][sum]) count--;
            side.AddRange(Enumerable.Repeat(plates.Plates[index].Mass, count));
            sum -= count * mass;
        }
        return side.ToValueList();
    }

    private decimal Total(int sum) => Empty + 2m * sum * step / 1_000;
}
