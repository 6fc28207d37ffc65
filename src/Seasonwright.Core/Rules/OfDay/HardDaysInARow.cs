using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Hard days (see terms) per athlete.</summary>
internal static class HardDaysInARow
{
    public static readonly Figure CautionRun = Figure.Number("caution_run", 2, FigureUnit.Count);
    public static readonly Figure WarningRun = Figure.Number("warning_run", 3, FigureUnit.Count);
    public static readonly Figure HardRpe = Figure.Number("hard_rpe", 7, FigureUnit.Rpe);

    public static Rule Rule { get; } = new("hard-days-in-a-row")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Warning,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Foster1998, Sources.Thomas2018],
        Figures = [CautionRun, WarningRun, HardRpe],
        Needs = Needs.Sessions,
    };
}
