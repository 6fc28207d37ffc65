using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Store.Log;

namespace Seasonwright.Store.People;

/// <summary>An athlete as the file has them.</summary>
/// <param name="Positions">Set apart by "/".</param>
internal sealed record AthleteRow(ClubId Club, string Person, string Family, string Given, string? Number, string Positions, DateOnly? Born, int? TrainingYears, DateOnly? TrainingOn, DateTimeOffset Created)
{
    public static AthleteRow Of(ClubId club, Athlete athlete, DateTimeOffset created) => new(club, athlete.Id.Text, athlete.Family, athlete.Given, athlete.Number,
        string.Join('/', athlete.Positions), athlete.Born, athlete.Training?.Years, athlete.Training?.On, created);

    /// <exception cref="FormatException">A value we never wrote.</exception>
    public Athlete Value => new(new PersonId(Person), Family, Given, Number, Positions.Split('/', StringSplitOptions.RemoveEmptyEntries).ToValueList(), Born, Training);

    private TrainingAge? Training
    {
        get
        {
            if (TrainingYears is null && TrainingOn is null) return null;
            if (TrainingYears is { } years && years is >= 0 and <= TrainingAge.Most && TrainingOn is { } on) return new TrainingAge(years, on);
            throw new FormatException(string.Create(CultureInfo.InvariantCulture, $"{TrainingYears} years of training on {TrainingOn}."));
        }
    }
}
