using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfAthlete;

/// <summary>Two test results of the same test: protocol, device, surface, time of day, kit, warm-up, hours since last match or hard session.</summary>
internal static class TestConditionsDiffer
{
    public static readonly Figure MaxHours = Figure.Number("max_hours", 3, FigureUnit.Hours);
    public static readonly Figure MinRestH = Figure.Number("min_rest_h", 48, FigureUnit.Hours);
    public static readonly Figure SameOrder = Figure.YesNo("same_order", true);

    public static Rule Rule { get; } = new("test-conditions-differ")
    {
        Scope = RuleScope.Athlete,
        Highest = Severity.Caution,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.CollegeTestOrder, Sources.Hopkins2000],
        Figures = [MaxHours, MinRestH, SameOrder],
        Needs = Needs.Results,
    };
}
