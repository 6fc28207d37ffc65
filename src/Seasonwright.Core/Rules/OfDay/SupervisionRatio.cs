using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Athletes booked in a strength session; qualified staff present; age group or level.</summary>
internal static class SupervisionRatio
{
    public static readonly Figure RatioUnder14 = Figure.Number("ratio.under_14", 10, FigureUnit.Count);
    public static readonly Figure RatioSchool = Figure.Number("ratio.school", 15, FigureUnit.Count);
    public static readonly Figure RatioAdult = Figure.Number("ratio.adult", 20, FigureUnit.Count);
    public static readonly Figure NewWeeks = Figure.Number("new_weeks", 4, FigureUnit.Weeks);
    public static readonly Figure MaxLiftTest = Figure.Number("max_lift_test", 5, FigureUnit.Count);

    public static Rule Rule { get; } = new("supervision-ratio")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Warning,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.FromMemory,
        Sources = [Sources.Nsca2017, Sources.Faigenbaum2009],
        Figures = [RatioUnder14, RatioSchool, RatioAdult, NewWeeks, MaxLiftTest],
        Needs = Needs.Sessions | Needs.Squad,
    };
}
