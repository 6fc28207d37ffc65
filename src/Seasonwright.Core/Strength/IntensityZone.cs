using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Strength;

/// <summary>A zone of %1RM with the repetitions of a set and of a session that belong to it.</summary>
/// <param name="From">Per cent of 1RM, inside.</param>
/// <param name="Below">Per cent of 1RM, outside: 70, 80 and 90 begin a zone. Prints differ there; this is ours.</param>
/// <param name="FewestInSet">Repetitions.</param>
/// <param name="Optimal">Repetitions in all.</param>
/// <remarks>
/// The table called after A. S. Prilepin, from logs of weightlifters of the 1960s and 70s (snatch, clean and jerk, not the lifts of team
/// sports), as printed by Hristov H 2004/2005 and McCullough T. Some print 55 to 65 for the first zone.
/// </remarks>
public sealed record IntensityZone(decimal From, decimal? Below, int FewestInSet, int MostInSet, int Optimal, int Fewest, int Most)
{
    /// <summary>From the lightest to the heaviest.</summary>
    public static ValueList<IntensityZone> All { get; } = [new(0, 70, 3, 6, 24, 18, 30), new(70, 80, 3, 6, 18, 12, 24), new(80, 90, 2, 4, 15, 10, 20), new(90, null, 1, 2, 7, 4, 10)];

    public static IntensityZone Of(Intensity intensity) => All.Last(zone => intensity.Percent >= zone.From);

    /// <param name="sets">Repetitions of each set done in this zone.</param>
    public ZoneVerdict Judge(IReadOnlyCollection<int> sets)
    {
        var total = sets.Sum();
        return new(total, total < Fewest ? ZoneVolume.Below : total > Most ? ZoneVolume.Above : total == Optimal ? ZoneVolume.Optimal : ZoneVolume.InRange,
            sets.Count(repetitions => repetitions < FewestInSet || repetitions > MostInSet));
    }
}
