using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Squad;

/// <summary>A person's time in a squad. A person may be in two squads at once.</summary>
/// <param name="To">The last day, still in it; null while it goes on. Not before <paramref name="From"/>.</param>
/// <param name="Leads">Days on which this squad comes before the person's others.</param>
/// <param name="Squad">A squad of the team beside its main one ("second team"); null for the main one.</param>
public sealed record Membership(PersonId Person, TeamId Team, DateOnly From, DateOnly? To, LeadingDays Leads, string? Squad = null)
{
    /// <summary>The last day; the end of the calendar while it goes on.</summary>
    public DaySpan Days { get; } = new(From, To ?? DateOnly.MaxValue);

    public bool Contains(DateOnly day) => Days.Contains(day);

    /// <summary>
    /// Whose session a day of one person is, so that its load counts once: of the squads the person is in on that day the
    /// one marked as leading by date, else by weekday, else the one the person came to first. Ties go by the team's id, the main squad first.
    /// </summary>
    /// <param name="all">Of one person, in any order.</param>
    /// <returns>Null where the person is in no squad on that day.</returns>
    public static Membership? LeadingOn(IEnumerable<Membership> all, DateOnly day) => all.Where(one => one.Contains(day))
        .OrderByDescending(one => one.Leads.On(day)).ThenBy(one => one.From).ThenBy(one => one.Team.Text, StringComparer.Ordinal)
        .ThenBy(one => one.Squad, StringComparer.Ordinal).ThenBy(one => one.To ?? DateOnly.MaxValue).FirstOrDefault();
}
