using Seasonwright.Core.Calendar;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Squad;

/// <summary>Days on which a person is not with the team.</summary>
/// <param name="Id">Brought by whoever records it, so that what is sent twice is one absence.</param>
/// <param name="Load">What is done elsewhere on each of them; null while it is not known, which is not 0.</param>
/// <param name="Recorded">When it was written down.</param>
public sealed record Absence(Guid Id, PersonId Person, AbsenceKind Kind, DaySpan Days, OutsideLoad? Load, DateTimeOffset Recorded)
{
    /// <summary>A person's outside load of a day: the sum over the absences that hold it.</summary>
    /// <param name="all">Of one person, in any order.</param>
    /// <returns>AU; null where no absence holds the day, and where one that does has no known load.</returns>
    public static Load? OutsideLoadOn(IEnumerable<Absence> all, DateOnly day)
    {
        Load? sum = null;
        foreach (var absence in all)
        {
            if (!absence.Days.Contains(day)) continue;
            if (absence.Load is not { } load) return null;
            sum = (sum ?? Quantities.Load.Zero) + load.PerDay;
        }
        return sum;
    }
}
