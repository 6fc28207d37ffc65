using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfAthlete;

/// <summary>Stature measurements with dates for athletes 10-17.</summary>
internal static class GrowthSpurt
{
    public static readonly Figure FastCmMonth = Figure.Number("fast_cm_month", 0.6m, FigureUnit.Count);
    public static readonly Figure RemeasureDays = Figure.Number("remeasure_days", 120, FigureUnit.Days);
    public static readonly Figure Age = Figure.Numbers("age", FigureUnit.Count, 10, 17);
    public static readonly Figure MeasureErrorCm = Figure.Number("measure_error_cm", 0.5m, FigureUnit.Count);

    public static Rule Rule { get; } = new("growth-spurt")
    {
        Scope = RuleScope.Athlete,
        Highest = Severity.Caution,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.GrowthVelocity2021, Sources.Towlson2020],
        Figures = [FastCmMonth, RemeasureDays, Age, MeasureErrorCm],
        Needs = Needs.Results | Needs.Squad,
        IsForYouth = true,
    };
}
