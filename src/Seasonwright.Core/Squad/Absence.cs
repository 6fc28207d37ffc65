using Seasonwright.Core.Calendar;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Squad;

/// <summary>Days on which a person is not with the team.</summary>
/// <param name="Id">Brought by whoever records it, so that what is sent twice is one absence.</param>
/// <param name="Loads">What is done elsewhere on them.</param>
/// <param name="Recorded">When it was written down.</param>
public sealed record Absence(Guid Id, PersonId Person, AbsenceKind Kind, DaySpan Days, OutsideLoads Loads, DateTimeOffset Recorded)
{
    /// <summary>As it was told of one of its days; null where nobody told.</summary>
    public OutsideLoad? LoadOn(DateOnly day) => Loads.On(day);

    /// <summary>AU of all its days; null while one of them is not known.</summary>
    public int? Au => Days.Days().Aggregate((int?)0, (sum, day) => sum + LoadOn(day)?.PerDay.Au);

    /// <summary>A person's outside load of a day: the sum over the absences that hold it.</summary>
    /// <param name="all">Of one person, in any order.</param>
    /// <returns>AU; null where no absence holds the day, and where one that does has no known load.</returns>
    public static Load? OutsideLoadOn(IEnumerable<Absence> all, DateOnly day)
    {
        Load? sum = null;
        foreach (var absence in all)
        {
            if (!absence.Days.Contains(day)) continue;
            if (absence.LoadOn(day) is not { } load) return null;
            sum = (sum ?? Load.Zero) + load.PerDay;
        }
        return sum;
    }
}
