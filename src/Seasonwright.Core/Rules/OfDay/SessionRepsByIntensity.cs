using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Per main lift: repetitions grouped by %1RM zone, reps per set.</summary>
internal static class SessionRepsByIntensity
{
    public static readonly Figure Zones1Pct = Figure.Numbers("zones.1.pct", FigureUnit.Share, 0.55m, 0.69m);
    public static readonly Figure Zones1Reps = Figure.Numbers("zones.1.reps", FigureUnit.Count, 3, 6);
    public static readonly Figure Zones1Range = Figure.Numbers("zones.1.range", FigureUnit.Count, 18, 30);
    public static readonly Figure Zones1Optimal = Figure.Number("zones.1.optimal", 24, FigureUnit.Count);
    public static readonly Figure Zones2Pct = Figure.Numbers("zones.2.pct", FigureUnit.Share, 0.7m, 0.79m);
    public static readonly Figure Zones2Reps = Figure.Numbers("zones.2.reps", FigureUnit.Count, 3, 6);
    public static readonly Figure Zones2Range = Figure.Numbers("zones.2.range", FigureUnit.Count, 12, 24);
    public static readonly Figure Zones2Optimal = Figure.Number("zones.2.optimal", 18, FigureUnit.Count);
    public static readonly Figure Zones3Pct = Figure.Numbers("zones.3.pct", FigureUnit.Share, 0.8m, 0.89m);
    public static readonly Figure Zones3Reps = Figure.Numbers("zones.3.reps", FigureUnit.Count, 2, 4);
    public static readonly Figure Zones3Range = Figure.Numbers("zones.3.range", FigureUnit.Count, 10, 20);
    public static readonly Figure Zones3Optimal = Figure.Number("zones.3.optimal", 15, FigureUnit.Count);
    public static readonly Figure Zones4Pct = Figure.Numbers("zones.4.pct", FigureUnit.Share, 0.9m, 1);
    public static readonly Figure Zones4Reps = Figure.Numbers("zones.4.reps", FigureUnit.Count, 1, 2);
    public static readonly Figure Zones4Range = Figure.Numbers("zones.4.range", FigureUnit.Count, 4, 10);
    public static readonly Figure Zones4Optimal = Figure.Number("zones.4.optimal", 7, FigureUnit.Count);
    public static readonly Figure SumRange = Figure.Numbers("sum_range", FigureUnit.Count, 0.5m, 1.4m);
    public static readonly Figure InSeasonLowOk = Figure.YesNo("in_season_low_ok", true);

    public static Rule Rule { get; } = new("session-reps-by-intensity")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Caution,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.PrilepinTable],
        Figures = [Zones1Pct, Zones1Reps, Zones1Range, Zones1Optimal, Zones2Pct, Zones2Reps, Zones2Range, Zones2Optimal, Zones3Pct, Zones3Reps, Zones3Range, Zones3Optimal, Zones4Pct, Zones4Reps, Zones4Range, Zones4Optimal, SumRange, InSeasonLowOk],
        Needs = Needs.Sessions,
    };
}
