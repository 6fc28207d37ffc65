using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Store.Log;

namespace Seasonwright.Store.People;

/// <summary>An absence as the file has it; it goes with its athlete.</summary>
/// <param name="Minutes">A day, with <paramref name="Rpe"/>; where the load was told so.</param>
/// <param name="Au">A day; where the load was told so.</param>
internal sealed record AbsenceRow(ClubId Club, Guid Id, string Person, string Kind, DateOnly First, DateOnly Last, int? Minutes, decimal? Rpe, int? Au, DateTimeOffset Recorded)
{
    public static AbsenceRow Of(ClubId club, Absence absence) => new(club, absence.Id, absence.Person.Text, absence.Kind.ToString(), absence.Days.First, absence.Days.Last,
        absence.Load?.Minutes?.Value, absence.Load?.Rpe?.Value, absence.Load is { Minutes: null } load ? load.PerDay.Au : null, absence.Recorded);

    /// <exception cref="FormatException">A value we never wrote.</exception>
    public Absence Value
    {
        get
        {
            try
            {
                var load = (Minutes, Rpe, Au) switch
                {
                    ({ } minutes, { } rpe, null) => OutsideLoad.Of(new Minutes(minutes), new Rpe(rpe)),
                    (null, null, { } au) => OutsideLoad.Of(new Load(au)),
                    (null, null, null) => null,
                    _ => throw new FormatException($"The load of the absence {Id} is told in two ways."),
                };
                return new(Id, new PersonId(Person), ListedWord.Read<AbsenceKind>(Kind), new(First, Last), load, Recorded);
            }
            catch (ArgumentException fault)
            {
                throw new FormatException($"The absence {Id} cannot be.", fault);
            }
        }
    }
}
