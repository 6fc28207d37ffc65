using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Squad;

/// <summary>What somebody reported of a person's availability. It is never changed: a newer report follows it. No diagnosis, by design.</summary>
/// <param name="Id">Brought by whoever records it, so that what is sent twice is one report.</param>
/// <param name="From">The first day it holds; it has no last day.</param>
/// <param name="ReviewOn">The day to ask again; null where none is agreed. Passing it changes nothing by itself.</param>
/// <param name="RecordedBy">Who wrote it down.</param>
/// <param name="Recorded">The instant it was written down; what is newest is told by it.</param>
/// <param name="IsConfirmed">Whether the reporter has confirmed what was written down in their name. It binds either way.</param>
public sealed record AvailabilityReport(
    Guid Id, PersonId Person, Availability Availability, DateOnly From, DateOnly? ReviewOn, Reporter By, ReportedHow How, PersonId RecordedBy, DateTimeOffset Recorded, bool IsConfirmed)
{
    /// <summary>Whether it may loosen what was reported before: a licensed clinician's, with the name. Any other only tightens.</summary>
    public bool MayLoosen => By is { IsLicensedClinician: true, Name: not null };
}
