using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Planned load and intent on the day before a match; other training-day loads in the same week.</summary>
internal static class DayBeforeMatchHeavy
{
    public static readonly Figure MaxShare = Figure.Number("max_share", 0.6m, FigureUnit.Share);
    public static readonly Figure MaxRpe = Figure.Number("max_rpe", 4, FigureUnit.Rpe);
    public static readonly Figure MaxMinutes = Figure.Number("max_minutes", 60, FigureUnit.Minutes);

    public static Rule Rule { get; } = new("day-before-match-heavy")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.WeeklySoccerLoad, Sources.OlivaLozano2022],
        Figures = [MaxShare, MaxRpe, MaxMinutes],
        Needs = Needs.Sessions,
    };
}
