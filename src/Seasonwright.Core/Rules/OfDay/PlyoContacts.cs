using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Jump contacts per session; athlete level; strength sign-off; sessions per week.</summary>
internal static class PlyoContacts
{
    public static readonly Figure LimitBeginner = Figure.Number("limit.beginner", 100, FigureUnit.Count);
    public static readonly Figure LimitIntermediate = Figure.Number("limit.intermediate", 120, FigureUnit.Count);
    public static readonly Figure LimitAdvanced = Figure.Number("limit.advanced", 140, FigureUnit.Count);
    public static readonly Figure LowEndBeginner = Figure.Number("low_end.beginner", 80, FigureUnit.Count);
    public static readonly Figure LowEndIntermediate = Figure.Number("low_end.intermediate", 100, FigureUnit.Count);
    public static readonly Figure LowEndAdvanced = Figure.Number("low_end.advanced", 120, FigureUnit.Count);
    public static readonly Figure OverFactor = Figure.Number("over_factor", 1.25m, FigureUnit.Count);
    public static readonly Figure MinGapH = Figure.Number("min_gap_h", 48, FigureUnit.Hours);
    public static readonly Figure MatchWeekFactor = Figure.Number("match_week_factor", 0.6m, FigureUnit.Count);

    public static Rule Rule { get; } = new("plyo-contacts")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Warning,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.NscaPlyometrics, Sources.Thomas2018],
        Figures = [LimitBeginner, LimitIntermediate, LimitAdvanced, LowEndBeginner, LowEndIntermediate, LowEndAdvanced, OverFactor, MinGapH, MatchWeekFactor],
        Needs = Needs.Sessions,
    };
}
