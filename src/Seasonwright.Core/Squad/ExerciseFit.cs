using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Squad;

/// <summary>Whether somebody who is restricted may do an exercise, by what it asks of the body. Common practice, no source; whoever reported the restriction has the last word.</summary>
public static class ExerciseFit
{
    /// <summary>The restrictions that rule an exercise out, in the order of the list; none where it may be done. With upper and lower body only at once nothing may.</summary>
    public static ValueList<RestrictionTag> RulingOut(this Restrictions restrictions, Exercise exercise) =>
        restrictions.Tags.Where(tag => restrictions.LeavesNothing && IsOfHalf(tag) || exercise.Demands.Contains(RuledOutBy(tag))).ToValueList();

    /// <summary>What must not be asked of somebody. A restriction to one half of the body rules out the work of the other.</summary>
    public static Demand RuledOutBy(RestrictionTag tag) => tag switch
    {
        RestrictionTag.NoLoadedKneeFlexionPast90 => Demand.DeepKnee,
        RestrictionTag.NoOverhead => Demand.Overhead,
        RestrictionTag.NoSprint => Demand.Sprint,
        RestrictionTag.NoJump => Demand.Jump,
        RestrictionTag.NoChangeOfDirection => Demand.ChangeOfDirection,
        RestrictionTag.NoContact => Demand.Contact,
        RestrictionTag.UpperBodyOnly => Demand.Legs,
        RestrictionTag.LowerBodyOnly => Demand.Arms,
        RestrictionTag.NoAxialLoad => Demand.Spine,
        _ => throw new ArgumentOutOfRangeException(nameof(tag)),
    };

    /// <summary>Why it is ruled out and what is done instead; null where it may be done.</summary>
    public static string? Why(this Restrictions restrictions, Exercise exercise, Exercise? instead)
    {
        var tags = string.Join(", ", restrictions.RulingOut(exercise).Select(SquadWords.Word));
        return tags.Length == 0 ? null
            : instead is null ? Sentences.Say("exercise.nothing-left", exercise.Name, tags)
            : Sentences.Say("exercise.instead", exercise.Name, tags, instead.Name);
    }

    private static bool IsOfHalf(RestrictionTag tag) => tag is RestrictionTag.UpperBodyOnly or RestrictionTag.LowerBodyOnly;
}
