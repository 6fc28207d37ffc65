using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Strength;

/// <summary>Hard sets of a pattern.</summary>
public readonly record struct PatternSets(MovementPattern Pattern, int Sets);

/// <summary>Repetitions of one lift in one zone of its maximum.</summary>
/// <param name="Sets">Repetitions of each set.</param>
public sealed record ZoneRepetitions(ExerciseId Exercise, IntensityZone Zone, ValueList<int> Sets)
{
    /// <summary>How they lie to the zone's printed range.</summary>
    public ZoneVerdict Verdict => Zone.Judge(Sets);
}
