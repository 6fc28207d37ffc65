using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Store.Log;

namespace Seasonwright.Store.People;

/// <summary>A tested set as the file has it; it goes with its athlete.</summary>
internal sealed record LiftTestRow(ClubId Club, Guid Id, string Person, string Exercise, DateOnly Day, decimal Amount, string Unit, int? Repetitions, decimal? Velocity, DateTimeOffset Recorded)
{
    public static LiftTestRow Of(ClubId club, LiftTest test) =>
        new(club, test.Id, test.Person.Text, test.Exercise.Text, test.Day, test.Weight.Amount, test.Weight.Unit.ToString(), test.Repetitions, test.Velocity, test.Recorded);

    /// <exception cref="FormatException">A value we never wrote.</exception>
    public LiftTest Value
    {
        get
        {
            try
            {
                return new(Id, new PersonId(Person), new ExerciseId(Exercise), Day, new Weight(Amount, ListedWord.Read<MassUnit>(Unit)), Repetitions, Velocity, Recorded);
            }
            catch (ArgumentException fault)
            {
                throw new FormatException($"The tested set {Id} cannot be.", fault);
            }
        }
    }
}
