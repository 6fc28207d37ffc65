namespace Seasonwright.Core.Strength;

/// <summary>What was lifted in all: sets x repetitions x load, added up.</summary>
/// <param name="Repetitions">In all.</param>
/// <param name="Total">Repetitions x load, in the unit of the loads; exact.</param>
/// <remarks>Haff GG 2010, Strength Cond J 32(6):31-40 (the formula from memory).</remarks>
public readonly record struct VolumeLoad(int Repetitions, decimal Total)
{
    /// <summary>Load of the average repetition, not rounded; null where nothing was lifted.</summary>
    public decimal? MeanLoad => Repetitions > 0 ? Total / Repetitions : null;

    public static VolumeLoad Of(IEnumerable<LiftedSets> work) => work.Aggregate(new VolumeLoad(), (sum, sets) =>
        new(sum.Repetitions + sets.Sets * sets.Repetitions, sum.Total + sets.Sets * sets.Repetitions * sets.Load));
}
