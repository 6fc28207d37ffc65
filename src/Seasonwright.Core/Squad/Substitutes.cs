using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Squad;

/// <summary>What is done in the place of an exercise that somebody must not do, or for which the equipment is not there. Common practice, no source; whoever reported the restriction has the last word.</summary>
public static class Substitutes
{
    /// <summary>Asked for by nothing that is put in the place of what does without: each carries a risk of its own.</summary>
    private static readonly Demand[] NeverNew = [Demand.Sprint, Demand.Jump, Demand.ChangeOfDirection, Demand.Contact];

    /// <summary>
    /// The nearest exercise that may be done: itself where nothing is against it; else an easier one of its own or one of its pattern with the same main muscle,
    /// those with a weight first where it has one; then any of its pattern; then its neighbours'. Of equally near ones the easiest. Null where nothing of this is left.
    /// </summary>
    /// <param name="atHand">The equipment that is there; null for all.</param>
    /// <param name="exercises">To choose from: the team's.</param>
    public static Exercise? For(Exercise exercise, Restrictions restrictions, IReadOnlySet<Equipment>? atHand, IReadOnlyCollection<Exercise> exercises)
    {
        if (restrictions.LeavesNothing) return null;
        var never = restrictions.Tags.Select(ExerciseFit.RuledOutBy).ToHashSet();
        return MayBeDone(exercise, never, atHand) ? exercise : Near(exercise, never, atHand, exercises).FirstOrDefault();
    }

    /// <summary>Others that can stand for an exercise where nobody is restricted, the nearest first: what a coach chooses from.</summary>
    /// <param name="atHand">The equipment that is there; null for all.</param>
    public static IEnumerable<Exercise> Near(Exercise exercise, IReadOnlySet<Equipment>? atHand, IReadOnlyCollection<Exercise> exercises) => Near(exercise, [], atHand, exercises);

    private static bool MayBeDone(Exercise exercise, IReadOnlySet<Demand> never, IReadOnlySet<Equipment>? atHand) =>
        !exercise.Demands.Any(never.Contains) && (atHand is null || exercise.Equipment.All(atHand.Contains));

    private static IEnumerable<Exercise> Near(Exercise exercise, IEnumerable<Demand> ruledOut, IReadOnlySet<Equipment>? atHand, IReadOnlyCollection<Exercise> exercises)
    {
        var never = ruledOut.Concat(NeverNew.Except(exercise.Demands)).ToHashSet();
        var easier = EasierOnes(exercise, exercises);
        return exercises
            .Where(other => other.Id != exercise.Id && MayBeDone(other, never, atHand))
            .Select(other => (Exercise: other, Step: StepTo(exercise, other, easier)))
            .Where(other => other.Step is not null)
            .OrderBy(other => other.Step)
            .ThenBy(other => easier.IndexOf(other.Exercise.Id))
            .ThenBy(other => Distance(exercise, other.Exercise))
            .ThenBy(other => other.Exercise.Easier is not null)
            .ThenBy(other => other.Exercise.Id.Text, StringComparer.Ordinal)
            .Select(other => other.Exercise);
    }

    /// <summary>How far away another exercise is; null where it is something else altogether, as what shares no muscle is, endurance work aside.</summary>
    private static int? StepTo(Exercise exercise, Exercise other, List<ExerciseId> easier)
    {
        if (exercise.Pattern is not (MovementPattern.Run or MovementPattern.Conditioning) && !exercise.Muscles.Any(other.Muscles.Contains)) return null;
        var isAsHeavy = other.HasMax || !exercise.HasMax;
        if (easier.Contains(other.Id)) return isAsHeavy ? 0 : 2;
        if (other.Pattern == exercise.Pattern) return !SharesMain(exercise, other) ? 4 : isAsHeavy ? 1 : 3;
        var neighbours = NeighboursOf(exercise.Pattern);
        var place = Array.IndexOf(neighbours, other.Pattern);
        return place < 0 ? null : SharesMain(exercise, other) ? 5 + place : 5 + neighbours.Length + place;
    }

    private static bool SharesMain(Exercise exercise, Exercise other) => exercise.Muscles is [var main, ..] && other.Muscles.Contains(main);

    /// <summary>Its easier one, that one's, and so on, each once: a team's own may lead round in a circle.</summary>
    private static List<ExerciseId> EasierOnes(Exercise exercise, IEnumerable<Exercise> exercises)
    {
        var chain = new List<ExerciseId>();
        for (var next = exercise.Easier; next is { } id && id != exercise.Id && !chain.Contains(id); next = exercises.FirstOrDefault(other => other.Id == id)?.Easier) chain.Add(id);
        return chain;
    }

    /// <summary>What is different, the main muscle, sides and a weight most; a maximum that tells of the other's brings them nearer.</summary>
    private static int Distance(Exercise one, Exercise other) =>
        (one.Muscles is [var main, ..] && other.Muscles is [var others, ..] && main == others ? 0 : 2) + (one.IsOneSided == other.IsOneSided ? 0 : 2) + (one.HasMax == other.HasMax ? 0 : 2)
        + (one.Load == other.Load ? 0 : 1) + (one.MaxOf == other.Id || other.MaxOf == one.Id ? 0 : 1)
        + Differences(one.Muscles, other.Muscles) + Differences(one.Demands, other.Demands);

    private static int Differences<T>(ValueList<T> one, ValueList<T> other) => one.Except(other).Count() + other.Except(one).Count();

    /// <summary>Patterns that stand for another where nothing of it is left, the nearest first. Common practice, no source.</summary>
    private static MovementPattern[] NeighboursOf(MovementPattern pattern) => pattern switch
    {
        MovementPattern.Squat => [MovementPattern.Lunge, MovementPattern.Hinge, MovementPattern.HipSides],
        MovementPattern.Lunge => [MovementPattern.Squat, MovementPattern.Hinge, MovementPattern.HipSides],
        MovementPattern.Hinge => [MovementPattern.KneeFlexion, MovementPattern.Lunge, MovementPattern.HipSides],
        MovementPattern.KneeFlexion => [MovementPattern.Hinge, MovementPattern.HipSides],
        MovementPattern.HorizontalPush => [MovementPattern.VerticalPush, MovementPattern.Arms, MovementPattern.Shoulder],
        MovementPattern.VerticalPush => [MovementPattern.HorizontalPush, MovementPattern.Shoulder, MovementPattern.Arms],
        MovementPattern.HorizontalPull => [MovementPattern.VerticalPull, MovementPattern.Shoulder, MovementPattern.Arms],
        MovementPattern.VerticalPull => [MovementPattern.HorizontalPull, MovementPattern.Shoulder, MovementPattern.Arms],
        MovementPattern.Arms => [MovementPattern.HorizontalPush, MovementPattern.HorizontalPull, MovementPattern.Shoulder],
        MovementPattern.Shoulder => [MovementPattern.HorizontalPull, MovementPattern.HorizontalPush, MovementPattern.Arms],
        MovementPattern.HipSides => [MovementPattern.Hinge, MovementPattern.Trunk],
        MovementPattern.LowerLeg => [MovementPattern.HipSides],
        MovementPattern.Trunk => [MovementPattern.Rotation],
        MovementPattern.Rotation => [MovementPattern.Trunk],
        MovementPattern.Carry => [MovementPattern.Trunk, MovementPattern.HorizontalPull],
        MovementPattern.Jump => [MovementPattern.Throw, MovementPattern.Squat, MovementPattern.LowerLeg, MovementPattern.HipSides],
        MovementPattern.Throw => [MovementPattern.Rotation, MovementPattern.HorizontalPush],
        MovementPattern.FastLift => [MovementPattern.Throw, MovementPattern.Jump, MovementPattern.Hinge, MovementPattern.Squat],
        MovementPattern.Run => [MovementPattern.Conditioning],
        _ => [],
    };
}
