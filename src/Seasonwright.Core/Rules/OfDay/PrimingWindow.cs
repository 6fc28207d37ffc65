using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Sessions with intent priming; match start; sets, %1RM, minutes, RPE.</summary>
internal static class PrimingWindow
{
    public static readonly Figure MinH = Figure.Number("min_h", 6, FigureUnit.Hours);
    public static readonly Figure MaxH = Figure.Number("max_h", 33, FigureUnit.Hours);
    public static readonly Figure MaxSets = Figure.Number("max_sets", 6, FigureUnit.Count);
    public static readonly Figure MaxMinutes = Figure.Number("max_minutes", 30, FigureUnit.Minutes);
    public static readonly Figure MaxRpe = Figure.Number("max_rpe", 5, FigureUnit.Rpe);

    public static Rule Rule { get; } = new("priming-window")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Caution,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Harrison2019, Sources.Holmberg2022],
        Figures = [MinH, MaxH, MaxSets, MaxMinutes, MaxRpe],
        Needs = Needs.Sessions,
    };

    /// <param name="hours">From the end of the session to the start of the match.</param>
    /// <param name="sets">Heavy ones.</param>
    /// <param name="minutes">Of the session.</param>
    /// <param name="rpe">Intended.</param>
    public static Severity? Judge(decimal hours, int sets, int minutes, decimal rpe, Figures figures) =>
        hours < figures.Number(MinH) || hours > figures.Number(MaxH) || sets > figures.Number(MaxSets) || minutes > figures.Number(MaxMinutes) || rpe > figures.Number(MaxRpe)
            ? Severity.Caution : null;
}
