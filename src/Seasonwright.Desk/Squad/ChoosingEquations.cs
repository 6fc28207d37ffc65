using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Squad;

/// <summary>Choosing the equation by which a team estimates the maximum of an exercise; it is the team's, for all its players, and is undone like any edit.</summary>
public static class ChoosingEquations
{
    /// <param name="equation">By its name for scripts; the usual one goes back to the usual way.</param>
    public static Task<Answer> ChooseEquationAsync(this OpenSeason open, Actor actor, Guid gesture, ExerciseId exercise, string equation)
    {
        var lift = open.Setup.Lift(exercise) with { Equation = equation == Lift.UsualEquation ? null : equation };
        return open.TeamStream.ApplyAsync(actor, new Gesture(gesture, open.TeamStream.State.Number, [new SetLift(exercise, lift == Lift.Usual ? null : lift)]));
    }
}
