using System.Collections.Frozen;
using System.Collections.Immutable;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Setups;

/// <summary>The exercises every team starts with, in the order of their patterns. A team adds its own, or its own way of one of these, under the same id.</summary>
/// <remarks>What each asks for and how its maximum relates to another's: common practice, no source.</remarks>
public static partial class ExerciseBook
{
    public static ImmutableArray<Exercise> All { get; } =
    [
        .. Squatting, .. Lunging, .. Hinging, .. BendingKnees, .. Pushing, .. Pulling, .. ArmWork, .. ShoulderWork, .. HipWork, .. LowerLegWork,
        .. NeckWork, .. TrunkWork, .. Carrying, .. Jumping, .. Throwing, .. LiftingFast, .. Running, .. ConditioningWork, .. MobilityWork,
    ];

    private static readonly FrozenDictionary<ExerciseId, Exercise> ById = All.ToFrozenDictionary(exercise => exercise.Id);

    public static Exercise? Find(ExerciseId id) => ById.GetValueOrDefault(id);

    private static Exercise Of(string id, string name, MovementPattern pattern, LoadedBy load, ValueList<Muscle> muscles, ValueList<Equipment> equipment, ValueList<Demand> demands,
        string? easier = null, string? harder = null, bool oneSided = false, int contacts = 0, string? maxOf = null, int share = 100) =>
        new(new(id), name, pattern, load, muscles, equipment, demands, oneSided, contacts, Id(easier), Id(harder), Id(maxOf), maxOf is null ? null : new Percent(share));

    private static ExerciseId? Id(string? text) => text is null ? null : new ExerciseId(text);
}
