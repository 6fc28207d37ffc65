using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Athlete age; free days per week.</summary>
internal static class YouthRestDays
{
    public static readonly Figure YouthAge = Figure.Number("youth_age", 18, FigureUnit.Count);
    public static readonly Figure Target = Figure.Number("target", 2, FigureUnit.Count);
    public static readonly Figure Minimum = Figure.Number("minimum", 1, FigureUnit.Count);

    public static Rule Rule { get; } = new("youth-rest-days")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Warning,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.Confirmed,
        Sources = [Sources.Nata2019, Sources.Aap2000],
        Figures = [YouthAge, Target, Minimum],
        Needs = Needs.Squad | Needs.Sessions,
        IsForYouth = true,
    };
}
