using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfAthlete;

/// <summary>Availability status and restriction tags set by medical role (e.g. no sprint, no lower-body load, no contact, max minutes, max RPE); prescriptions.</summary>
internal static class RestrictionOverridesPlan
{
    public static readonly Figure ExpireNeedsReview = Figure.YesNo("expire_needs_review", true);
    public static readonly Figure ReviewDays = Figure.Number("review_days", 7, FigureUnit.Days);

    public static Rule Rule { get; } = new("restriction-overrides-plan")
    {
        Scope = RuleScope.Athlete,
        Highest = Severity.Stop,
        Evidence = Evidence.Strong,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.OlympicMedicalCode2016, Sources.BritishOlympicAssociation2000],
        Figures = [ExpireNeedsReview, ReviewDays],
        Needs = Needs.Availability | Needs.Sessions,
        IsFixed = true,
        Releasers = [StaffRole.Doctor, StaffRole.Physiotherapist],
    };
}
