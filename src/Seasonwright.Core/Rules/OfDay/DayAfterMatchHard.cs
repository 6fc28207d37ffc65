using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Sessions within 48 h after match end for athletes with >= min_minutes played.</summary>
internal static class DayAfterMatchHard
{
    public static readonly Figure MinMinutes = Figure.Number("min_minutes", 60, FigureUnit.Minutes);
    public static readonly Figure FirstH = Figure.Number("first_h", 36, FigureUnit.Hours);
    public static readonly Figure SecondH = Figure.Number("second_h", 48, FigureUnit.Hours);
    public static readonly Figure MaxRpeFirst = Figure.Number("max_rpe_first", 4, FigureUnit.Rpe);

    public static Rule Rule { get; } = new("day-after-match-hard")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.Confirmed,
        Sources = [Sources.Silva2018, Sources.Silva2018Conclusion],
        Figures = [MinMinutes, FirstH, SecondH, MaxRpeFirst],
        Needs = Needs.Sessions,
    };
}
