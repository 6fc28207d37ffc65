using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Sessions with a tagged eccentric hamstring exercise.</summary>
internal static class HamstringEccentricGap
{
    public static readonly Figure TargetDays = Figure.Number("target_days", 10, FigureUnit.Days);
    public static readonly Figure LimitDays = Figure.Number("limit_days", 21, FigureUnit.Days);
    public static readonly Figure SetsMin = Figure.Number("sets_min", 1, FigureUnit.Count);

    public static Rule Rule { get; } = new("hamstring-eccentric-gap")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Warning,
        Evidence = Evidence.Strong,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.VanDyk2019, Sources.Ripley2021],
        Figures = [TargetDays, LimitDays, SetsMin],
        Needs = Needs.Sessions,
    };
}
