using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Strength;

/// <summary>What a workout comes to.</summary>
/// <param name="HardSets">By pattern, in the patterns' order; only those with any.</param>
/// <param name="Zones">By lift and zone of the maximum, where the share of it is known or follows from the reserve.</param>
/// <param name="RelativeVolume">Sets x repetitions x share of the maximum: the volume load of somebody whose maximum is 1.</param>
/// <param name="Top">The heaviest share of the maximum; null where none is known.</param>
/// <param name="Contacts">Ground contacts of jumps, both sides of a one-sided exercise.</param>
/// <param name="Metres">Run, of exercises that are counted in metres.</param>
/// <param name="Seconds">It takes about, with rests.</param>
public sealed record WorkoutSum(ValueList<PatternSets> HardSets, ValueList<ZoneRepetitions> Zones, decimal RelativeVolume, Intensity? Top, int Contacts, int Metres, int Seconds)
{
    /// <summary>Repetitions that may be left in a hard set, as in the rulebook: common practice, no source.</summary>
    private const int HardReserve = 4;

    public int Minutes => (Seconds + 59) / 60;

    public int AllHardSets => HardSets.Sum(pattern => pattern.Sets);

    /// <param name="exercises">What an exercise is; one that the team does not have any more counts its time alone.</param>
    public static WorkoutSum Of(WorkoutWeek workout, Func<ExerciseId, Exercise?> exercises)
    {
        var work = workout.Parts.Where(part => part.Part.IsWork).SelectMany(part => part.Items)
            .Select(item => (item.Prescription, Exercise: exercises(item.Item.Exercise))).Where(item => item.Exercise is not null)
            .Select(item => (item.Prescription, Exercise: item.Exercise!, Share: ShareOf(item.Prescription, item.Exercise!))).ToList();
        return new(
            work.Where(item => IsHard(item.Prescription, item.Exercise)).GroupBy(item => item.Exercise.Pattern).OrderBy(pattern => pattern.Key)
                .Select(pattern => new PatternSets(pattern.Key, pattern.Sum(item => item.Prescription.Sets))).ToValueList(),
            work.Where(item => item.Share is not null && item.Prescription.Unit == WorkUnit.Repetitions).GroupBy(item => (item.Exercise.Id, Zone: IntensityZone.Of(item.Share!.Value)))
                .Select(lift => new ZoneRepetitions(lift.Key.Id, lift.Key.Zone, lift.SelectMany(item => Enumerable.Repeat(item.Prescription.Amount, item.Prescription.Sets)).ToValueList()))
                .OrderByDescending(lift => lift.Zone.From).ToValueList(),
            work.Sum(item => item.Share is { } share && item.Prescription.Unit == WorkUnit.Repetitions ? item.Prescription.Sets * item.Prescription.Amount * share.Percent / 100 : 0),
            work.Max(item => item.Share),
            work.Sum(item => item.Prescription.Unit == WorkUnit.Repetitions ? item.Prescription.Sets * item.Prescription.Amount * item.Exercise.Contacts * Sides(item.Exercise) : 0),
            work.Sum(item => item.Prescription.Unit == WorkUnit.Metres && item.Exercise.Pattern == MovementPattern.Run ? item.Prescription.Sets * item.Prescription.Amount : 0),
            workout.Parts.Sum(part => PartTime.Seconds(part, exercises)));
    }

    /// <summary>The share of the maximum with which a set is done: as written, or what the table gives for its repetitions with those left in reserve. Null where nobody can tell.</summary>
    public static Intensity? ShareOf(Prescription prescription, Exercise exercise) => !exercise.HasMax ? null : prescription.Effort switch
    {
        { Kind: EffortKind.OfMax, Amount: { } percent } => new Intensity(Math.Round(percent, 1)),
        { Kind: EffortKind.Reserve, Amount: { } reserve } when prescription.Unit == WorkUnit.Repetitions && RepTable.Textbook.Percent(prescription.Amount, (int)reserve) is { } percent => new Intensity(Math.Round(percent, 1)),
        _ => null,
    };

    /// <summary>Whether the sets of an exercise are hard sets of a strength pattern: few repetitions are left, or nobody can tell.</summary>
    private static bool IsHard(Prescription prescription, Exercise exercise) =>
        exercise.Pattern is not (MovementPattern.Jump or MovementPattern.Throw or MovementPattern.FastLift or MovementPattern.Run or MovementPattern.Conditioning or MovementPattern.Mobility)
        && (prescription.Effort.Kind switch
        {
            EffortKind.Reserve => prescription.Effort.Amount <= HardReserve,
            EffortKind.OfMax => GivenLoad.ReserveOf(prescription, exercise) <= HardReserve,
            _ => true,
        });

    private static int Sides(Exercise exercise) => exercise.IsOneSided ? 2 : 1;
}
