using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Strength sessions per week for athletes under 16 or in their first year.</summary>
internal static class YouthStrengthSpacing
{
    public static readonly Figure MaxWeek = Figure.Number("max_week", 3, FigureUnit.Count);
    public static readonly Figure MinGapH = Figure.Number("min_gap_h", 48, FigureUnit.Hours);
    public static readonly Figure MinReps = Figure.Number("min_reps", 6, FigureUnit.Count);
    public static readonly Figure AgeUnder = Figure.Number("age_under", 16, FigureUnit.Count);

    public static Rule Rule { get; } = new("youth-strength-spacing")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Caution,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Faigenbaum2009, Sources.YouthResistanceConsensus],
        Figures = [MaxWeek, MinGapH, MinReps, AgeUnder],
        Needs = Needs.Squad | Needs.Sessions,
        IsForYouth = true,
    };
}
