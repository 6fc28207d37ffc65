using Seasonwright.Core.Squad;

namespace Seasonwright.Core.Rules;

/// <summary>Organised sport on days away from the team, as far as it was told. School and work are none; on a holiday there is what was told.</summary>
internal static class OutsideSport
{
    /// <summary>Minutes told of a day, at least; null where there may be more that nobody told.</summary>
    public static int? MinutesOn(IEnumerable<Absence> absences, DateOnly day)
    {
        var told = Of(absences, day).Select(absence => absence.LoadOn(day) is { } load ? load.PerDay.Au == 0 ? 0 : load.Minutes?.Value : absence.Kind == AbsenceKind.Holiday ? 0 : null).ToList();
        return told.Contains(null) ? null : told.Sum();
    }

    /// <summary>Whether nothing is done on a day away; null where nobody told.</summary>
    public static bool? IsFreeOn(IEnumerable<Absence> absences, DateOnly day)
    {
        var all = Of(absences, day).ToList();
        return all.Exists(absence => absence.LoadOn(day)?.PerDay.Au > 0) ? false
            : all.TrueForAll(absence => absence.LoadOn(day) is not null || absence.Kind == AbsenceKind.Holiday) ? true
            : null;
    }

    private static IEnumerable<Absence> Of(IEnumerable<Absence> absences, DateOnly day) =>
        absences.Where(absence => absence.Days.Contains(day) && absence.Kind is not (AbsenceKind.School or AbsenceKind.Work));
}
