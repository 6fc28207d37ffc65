using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Strength;

namespace Seasonwright.Core.Edits;

/// <summary>Says how the maximum of an exercise is worked out, or with null goes back to the usual way.</summary>
public sealed record SetLift(ExerciseId Exercise, Lift? Lift) : SetupEdit
{
    public override string Describe(Setup setup) => Sentences.Say(Lift is null ? "did.reset-lift" : "did.set-lift", setup.Exercise(Exercise)?.Name ?? Exercise.Text);

    internal override void Decide(Draft draft)
    {
        if (Lift is { } lift)
        {
            Check(draft, lift, $"lift/{Exercise}");
            draft.Set(SetupFacets.Lift, Exercise, lift);
        }
        else draft.Remove(SetupFacets.Lift, Exercise);
    }

    internal static void Check(Draft draft, Lift lift, string subject)
    {
        if (lift.Equation is { } name && RepMaxEquation.Find(name) is null) draft.Refuse("lift-equation", $"{subject}.equation", name, string.Join(", ", RepMaxEquation.All.Select(equation => equation.Name)));
        if (lift.Threshold is < Setups.Lift.LeastThreshold or > Setups.Lift.MostThreshold) draft.Refuse("workout-number", $"{subject}.threshold", lift.Threshold, Setups.Lift.LeastThreshold, Setups.Lift.MostThreshold);
    }
}
