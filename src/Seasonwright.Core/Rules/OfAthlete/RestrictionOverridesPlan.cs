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

    /// <summary>What is ruled out for an athlete at present.</summary>
    /// <param name="Tags">What nothing may bear, "sprint" for instance.</param>
    /// <param name="MostMinutes">Of one item; null for any.</param>
    /// <param name="MostRpe">The same.</param>
    internal readonly record struct Restriction(bool IsOut, IReadOnlyCollection<string> Tags, int? MostMinutes = null, decimal? MostRpe = null);

    /// <summary>A prescribed item. What is stopped is not shown to the athlete until it is changed.</summary>
    public static Severity? Judge(IEnumerable<string> tags, int minutes, decimal rpe, Restriction restriction) =>
        restriction.IsOut || tags.Any(tag => restriction.Tags.Contains(tag, StringComparer.Ordinal)) || minutes > restriction.MostMinutes || rpe > restriction.MostRpe ? Severity.Stop : null;
}
