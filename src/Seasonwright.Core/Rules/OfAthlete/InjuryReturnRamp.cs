using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfAthlete;

/// <summary>Status returning with clinician release; days away; own 4-week mean load before injury; planned weekly load; clinician's own schedule if any.</summary>
internal static class InjuryReturnRamp
{
    public static readonly Figure AwayDaysMin = Figure.Number("away_days_min", 8, FigureUnit.Days);
    public static readonly Figure Step = Figure.Numbers("step", FigureUnit.Share, 0.5m, 0.7m, 0.85m, 1);
    public static readonly Figure LongAwayDays = Figure.Number("long_away_days", 28, FigureUnit.Days);
    public static readonly Figure LongStep = Figure.Numbers("long_step", FigureUnit.Share, 0.4m, 0.55m, 0.7m, 0.85m, 1);
    public static readonly Figure SprintAfterShare = Figure.Number("sprint_after_share", 0.6m, FigureUnit.Share);

    public static Rule Rule { get; } = new("injury-return-ramp")
    {
        Scope = RuleScope.Athlete,
        Highest = Severity.Warning,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Soligard2016, Sources.Bengtsson2020],
        Figures = [AwayDaysMin, Step, LongAwayDays, LongStep, SprintAfterShare],
        Needs = Needs.Availability | Needs.Reports,
    };
}
