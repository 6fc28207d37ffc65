using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Working sets with %1RM (or repetitions in reserve) per main pattern; block emphasis.</summary>
internal static class HeavyExposureRange
{
    public static readonly Figure HeavyPct = Figure.Number("heavy_pct", 0.8m, FigureUnit.Share);
    public static readonly Figure MaxGapDays = Figure.Number("max_gap_days", 10, FigureUnit.Days);
    public static readonly Figure VeryHeavyPct = Figure.Number("very_heavy_pct", 0.9m, FigureUnit.Share);
    public static readonly Figure MaxVeryHeavy = Figure.Number("max_very_heavy", 2, FigureUnit.Count);

    public static Rule Rule { get; } = new("heavy-exposure-range")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Caution,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Acsm2009, Sources.McMaster2013],
        Figures = [HeavyPct, MaxGapDays, VeryHeavyPct, MaxVeryHeavy],
        Needs = Needs.Sessions,
    };
}
