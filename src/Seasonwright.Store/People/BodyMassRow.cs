using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Store.Log;

namespace Seasonwright.Store.People;

/// <summary>A weighing as the file has it; it goes with its athlete.</summary>
internal sealed record BodyMassRow(ClubId Club, Guid Id, string Person, DateOnly Day, decimal Amount, string Unit, decimal PoundsOver, DateTimeOffset Recorded)
{
    public static BodyMassRow Of(ClubId club, WeighIn weighing) => new(club, weighing.Id, weighing.Person.Text, weighing.Day, weighing.Mass.Amount, weighing.Mass.Unit.ToString(), weighing.Mass.PoundsOver, weighing.Recorded);

    /// <exception cref="FormatException">A value we never wrote.</exception>
    public WeighIn Value
    {
        get
        {
            try
            {
                return new(Id, new PersonId(Person), Day, new BodyMass(Amount, ListedWord.Read<BodyMassUnit>(Unit), PoundsOver), Recorded);
            }
            catch (ArgumentException fault)
            {
                throw new FormatException($"The weighing {Id} cannot be.", fault);
            }
        }
    }
}
