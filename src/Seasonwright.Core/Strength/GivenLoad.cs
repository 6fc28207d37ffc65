using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Strength;

/// <summary>What somebody lifts in the sets of a prescription.</summary>
/// <param name="Target">As it is worked out, not rounded; null where nobody can tell: then <paramref name="Reserve"/> says how hard it should be.</param>
/// <param name="Made">As it can be made; null where there is no target, or nothing as light can be made.</param>
/// <param name="Share">Of the maximum, per cent; null where it is not known.</param>
/// <param name="Reserve">Repetitions to leave, where no weight is known or the effort is told in them.</param>
public sealed record GivenLoad(Weight? Target, MadeWeight? Made, Intensity? Share, int? Reserve)
{
    /// <summary>Nothing is told and nothing known.</summary>
    public static GivenLoad Unknown { get; } = new(null, null, null, null);

    /// <param name="maximum">Of the exercise; null where none is known.</param>
    /// <param name="bodyMass">Kilograms; null where it is not known.</param>
    /// <param name="today">Share of the maximum that the day has, 1 for all of it: see <see cref="DayShare"/>.</param>
    /// <param name="atVelocity">The load that has the velocity of the prescription, by the person's own profile; null where none reaches there.</param>
    public static GivenLoad Of(Prescription prescription, Exercise exercise, Weight? maximum, decimal? bodyMass, RackLoads loads, decimal today = 1, Weight? atVelocity = null)
    {
        var share = WorkoutSum.ShareOf(prescription, exercise);
        var effort = prescription.Effort;
        var target = effort.Kind switch
        {
            EffortKind.Fixed => effort.Weight,
            EffortKind.Velocity => atVelocity,
            EffortKind.OfBodyMass when bodyMass is { } mass && effort.Amount is { } percent => Possible(mass * percent / 100, MassUnit.Kilogram),
            EffortKind.OfMax or EffortKind.Reserve when share is { } known && maximum is { } most => OfMaximum(known, most, exercise, bodyMass, today),
            _ => null,
        };
        return new(target, target is null ? null : loads.Make(exercise, target), share, ReserveOf(prescription, exercise));
    }

    /// <summary>Where the body is lifted as well, the maximum is of both together and the body's part is taken off again.</summary>
    private static Weight? OfMaximum(Intensity share, Weight maximum, Exercise exercise, decimal? bodyMass, decimal today)
    {
        if (exercise.Load != LoadedBy.OnTheBody) return Possible(share.Of(maximum.Amount) * today, maximum.Unit);
        return bodyMass is { } mass ? Possible(share.Of(maximum.Kilograms) * today - mass, MassUnit.Kilogram) : null;
    }

    /// <summary>Repetitions that a set leaves: as written; of a per cent of the maximum those that the table leaves, below its last row at least. Null where nobody can tell.</summary>
    public static int? ReserveOf(Prescription prescription, Exercise exercise) => prescription switch
    {
        { Effort: { Kind: EffortKind.Reserve, Amount: { } reserve } } => (int)reserve,
        { Effort.Kind: EffortKind.OfMax, Unit: WorkUnit.Repetitions } when WorkoutSum.ShareOf(prescription, exercise) is { } share =>
            Math.Max(0, (RepTable.Textbook.Repetitions(share.Percent) ?? RepTable.Textbook.Most) - prescription.Amount),
        _ => null,
    };

    private static Weight? Possible(decimal amount, MassUnit unit) => Weight.IsPossible(amount, unit) ? new(amount, unit) : null;
}
