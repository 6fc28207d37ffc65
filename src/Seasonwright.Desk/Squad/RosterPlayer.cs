using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;

namespace Seasonwright.Desk.Squad;

/// <summary>A player of a team and everything that was told of them.</summary>
/// <param name="Memberships">Of every team, the earliest first; at least one.</param>
/// <param name="Reports">In the order they were written down.</param>
/// <param name="Absences">The earliest first.</param>
/// <param name="Weighings">The earliest first.</param>
public sealed record RosterPlayer(
    Athlete Athlete, ValueList<Membership> Memberships, ValueList<AvailabilityReport> Reports, ValueList<Absence> Absences, ValueList<WeighIn> Weighings)
{
    public PersonId Id => Athlete.Id;

    /// <summary>What binds on a day.</summary>
    public Standing StandingOn(DateOnly day) => Standing.On(Reports, day);

    /// <summary>The person's time in the main squad of a team; null where they are in another squad of it only.</summary>
    public Membership? MainIn(TeamId team) => Memberships.LastOrDefault(one => one.Team == team && one.Squad is null);

    /// <summary>Whether the person is in some squad of a team on a day, or will be.</summary>
    public bool IsInOrComing(TeamId team, DateOnly day) => Memberships.Any(one => one.Team == team && one.Days.Last >= day);
}
