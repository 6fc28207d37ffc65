using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Sessions meeting heavy_lower (see terms) and their hours before match start.</summary>
internal static class HeavyLowerBeforeMatch
{
    public static readonly Figure MinH = Figure.Number("min_h", 48, FigureUnit.Hours);
    public static readonly Figure CautionH = Figure.Number("caution_h", 72, FigureUnit.Hours);
    public static readonly Figure SmallDoseSets = Figure.Number("small_dose_sets", 6, FigureUnit.Count);

    public static Rule Rule { get; } = new("heavy-lower-before-match")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.Thomas2018, Sources.FullBodyRecovery, Sources.Helland2020],
        Figures = [MinH, CautionH, SmallDoseSets],
        Needs = Needs.Sessions,
    };
}
