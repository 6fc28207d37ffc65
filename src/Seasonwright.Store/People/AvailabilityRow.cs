using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Store.Log;

namespace Seasonwright.Store.People;

/// <summary>A report of availability as the file has it; it goes with its athlete.</summary>
/// <param name="Tags">Names of restrictions set apart by a space.</param>
internal sealed record AvailabilityRow(ClubId Club, Guid Id, string Person, string State, string Tags, int? MostMinutes, DateOnly From, DateOnly? ReviewOn,
    string Role, bool IsLicensedClinician, string? Reporter, string How, string RecordedBy, DateTimeOffset Recorded, bool IsConfirmed)
{
    public static AvailabilityRow Of(ClubId club, AvailabilityReport report) => new(club, report.Id, report.Person.Text, report.Availability.State.ToString(),
        string.Join(' ', report.Availability.Restrictions.Tags), report.Availability.Restrictions.MostMinutes?.Value, report.From, report.ReviewOn,
        report.By.Role.ToString(), report.By.IsLicensedClinician, report.By.Name, report.How.ToString(), report.RecordedBy.Text, report.Recorded, report.IsConfirmed);

    /// <exception cref="FormatException">A value we never wrote.</exception>
    public AvailabilityReport Value
    {
        get
        {
            try
            {
                var availability = ListedWord.Read<AvailabilityState>(State) switch
                {
                    AvailabilityState.Full => Availability.Full,
                    AvailabilityState.Out => Availability.Out,
                    _ => Availability.Modified(new(Tags.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(ListedWord.Read<RestrictionTag>), MostMinutes is { } most ? new Minutes(most) : null)),
                };
                return new(Id, new PersonId(Person), availability, From, ReviewOn, new(ListedWord.Read<ReporterRole>(Role), IsLicensedClinician, Reporter), ListedWord.Read<ReportedHow>(How), new PersonId(RecordedBy), Recorded, IsConfirmed);
            }
            catch (ArgumentException fault)
            {
                throw new FormatException(string.Create(CultureInfo.InvariantCulture, $"The report {Id} cannot be."), fault);
            }
        }
    }
}
