using CsCheck;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;

namespace Seasonwright.Core.Tests.Squad;

/// <summary>Reports on one person drawn from small pools, so that days and instants meet.</summary>
internal static class AnySquad
{
    public static readonly PersonId Ida = new("ida");
    public static readonly DateOnly Monday = new(2027, 10, 18);
    public static readonly DateTimeOffset Seven = new(2027, 10, 18, 7, 0, 0, TimeSpan.Zero);

    public static readonly Gen<Restrictions> AnyRestrictions = Gen.Select(Gen.Enum<RestrictionTag>().List[0, 3], Gen.OneOf(0, 0, 20, 30, 45),
        (tags, cap) => new Restrictions(tags, cap == 0 ? null : new Minutes(cap)));

    public static readonly Gen<Availability> AnyAvailability = Gen.Frequency(
        (2, Gen.Const(Availability.Full)), (1, Gen.Const(Availability.Out)),
        (5, AnyRestrictions.Where(restrictions => !restrictions.LeavesNothing).Select(Availability.Modified)));

    public static readonly Gen<Reporter> NoClinician = Gen.OneOf(
        new Reporter(ReporterRole.Coach, false), new Reporter(ReporterRole.Athlete, false, "Ida"), new Reporter(ReporterRole.Other, false, "a parent"), new Reporter(ReporterRole.Therapist, true), new Reporter(ReporterRole.Doctor, false, "Student"));

    public static readonly Gen<Reporter> Clinician = Gen.OneOf(new Reporter(ReporterRole.Doctor, true, "Dr Wexcombe"), new Reporter(ReporterRole.Therapist, true, "Pell"), new Reporter(ReporterRole.Other, true, "Orrin"));

    public static readonly Gen<AvailabilityReport> Clinical = Report(Clinician);
    public static readonly Gen<AvailabilityReport> NotClinical = Report(NoClinician);
    public static readonly Gen<List<AvailabilityReport>> Reports = Gen.Frequency((1, Clinical), (1, NotClinical)).List[0, 8];

    public static Gen<AvailabilityReport> Report(Gen<Reporter> by) => Gen.Select(AnyAvailability, Gen.Int[-3, 5], Gen.Int[-5, 9], by, Gen.Enum<ReportedHow>(), Gen.Int[0, 12], Gen.Bool, Gen.Guid,
        (availability, from, review, who, how, at, confirmed, id) => new AvailabilityReport(id, Ida, availability, Monday.AddDays(from), review < -3 ? null : Monday.AddDays(review), who, how, new("coach"), Seven.AddHours(6 * at), confirmed));
}
