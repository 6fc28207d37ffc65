using Seasonwright.Core;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Documents.Read.Squads;

namespace Seasonwright.Desk.Squad;

/// <summary>Tested sets out of the lifts that a squad list names.</summary>
public static class ListedLifts
{
    /// <summary>
    /// Of the lifts whose exercise the team has and of which the list says what they are: repetitions, or a maximum. Others are left out. Where the body is lifted as well, the list
    /// names what hangs on it, and without a body mass nothing is known.
    /// </summary>
    /// <param name="id">Names each set, so that the same list gives the same.</param>
    public static ValueList<LiftTest> Of(IEnumerable<SquadLift> lifts, PersonId person, decimal? bodyMass, DateOnly day, Setup setup, Func<SquadLift, Guid> id, DateTimeOffset recorded)
    {
        return lifts.Select(Test).OfType<LiftTest>().ToValueList();

        LiftTest? Test(SquadLift lift)
        {
            if (Find(lift.Exercise, setup) is not { HasMax: true } exercise) return null;
            if ((lift.IsMax == true ? 1 : lift.Reps) is not (>= 1 and <= LiftTest.MostRepetitions and var repetitions)) return null;
            return Weight(lift.Weight, exercise) is { } weight ? new(id(lift), person, exercise.Id, day, weight, repetitions, null, recorded) : null;
        }

        Weight? Weight(EnteredMass entered, Exercise exercise)
        {
            if (exercise.Load == LoadedBy.OnTheBody) return bodyMass is { } mass ? Possible(mass + entered.Kilograms, Core.Quantities.MassUnit.Kilogram) : null;
            return entered.Unit == Documents.Read.Squads.MassUnit.Pound ? Possible(entered.Amount, Core.Quantities.MassUnit.Pound) : Possible(entered.Kilograms, Core.Quantities.MassUnit.Kilogram);
        }

        static Weight? Possible(decimal amount, Core.Quantities.MassUnit unit) => Core.Quantities.Weight.IsPossible(amount, unit) ? new(amount, unit) : null;
    }

    /// <summary>The exercise a list means: the team's of that name, else the book's. What a gym means by "clean" or "row" is the coach's to say; this is the usual one.</summary>
    private static Exercise? Find(string name, Setup setup) => setup.Exercises.FirstOrDefault(exercise => string.Equals(exercise.Name, name, StringComparison.OrdinalIgnoreCase))
        ?? (IdText.IsId(name.Replace(' ', '-')) ? setup.Exercise(new(name switch { "row" => "bent-over-row", "hang clean" => "hang-power-clean", "jerk" => "push-jerk", _ => name.Replace(' ', '-') })) : null);
}
