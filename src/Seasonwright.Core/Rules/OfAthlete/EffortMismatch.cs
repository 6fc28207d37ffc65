using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfAthlete;

/// <summary>Intended RPE and reported RPE per session.</summary>
internal static class EffortMismatch
{
    public static readonly Figure Gap = Figure.Number("gap", 2, FigureUnit.Count);
    public static readonly Figure Times = Figure.Number("times", 3, FigureUnit.Count);
    public static readonly Figure WindowDays = Figure.Number("window_days", 14, FigureUnit.Days);
    public static readonly Figure EasyGap = Figure.Number("easy_gap", 1.5m, FigureUnit.Count);
    public static readonly Figure MinSessions = Figure.Number("min_sessions", 4, FigureUnit.Count);

    public static Rule Rule { get; } = new("effort-mismatch")
    {
        Scope = RuleScope.Athlete,
        Highest = Severity.Caution,
        Evidence = Evidence.Strong,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.Inoue2022],
        Figures = [Gap, Times, WindowDays, EasyGap, MinSessions],
        Needs = Needs.Reports,
    };
}
