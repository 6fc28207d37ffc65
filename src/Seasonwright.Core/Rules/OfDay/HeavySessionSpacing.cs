using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Start times of heavy_lower sessions and of maximal sprint / high-volume jump sessions.</summary>
internal static class HeavySessionSpacing
{
    public static readonly Figure MinH = Figure.Number("min_h", 48, FigureUnit.Hours);
    public static readonly Figure HardH = Figure.Number("hard_h", 24, FigureUnit.Hours);
    public static readonly Figure BestH = Figure.Number("best_h", 72, FigureUnit.Hours);
    public static readonly Figure SprintMinH = Figure.Number("sprint_min_h", 48, FigureUnit.Hours);

    public static Rule Rule { get; } = new("heavy-session-spacing")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.Confirmed,
        Sources = [Sources.Thomas2018, Sources.FullBodyRecovery, Sources.Helland2020],
        Figures = [MinH, HardH, BestH, SprintMinH],
        Needs = Needs.Sessions,
    };
}
