using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfAthlete;

/// <summary>Role permissions; fields of kind medical (diagnosis, notes, test results of clinics); exports, prints, shared pages, messages.</summary>
internal static class MedicalDetailShared
{
    public static readonly Figure PublicFields = Figure.Words("public_fields", "availability", "restriction_tags", "review_date");
    public static readonly Figure ConsentDays = Figure.Number("consent_days", 180, FigureUnit.Days);

    public static Rule Rule { get; } = new("medical-detail-shared")
    {
        Scope = RuleScope.Athlete,
        Highest = Severity.Stop,
        Evidence = Evidence.Strong,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.BritishOlympicAssociation2000, Sources.OlympicMedicalCode2016],
        Figures = [PublicFields, ConsentDays],
        Needs = Needs.Accounts | Needs.Availability,
        IsFixed = true,
        Releasers = [StaffRole.Doctor],
    };
}
