using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Ordered tests of one test day with category.</summary>
internal static class TestOrder
{
    public static readonly Figure Order = Figure.Words("order", "nonfatiguing", "agility", "max_power_strength", "sprint", "local_muscular_endurance", "anaerobic_capacity", "aerobic_capacity");
    public static readonly Figure ResetMin = Figure.Number("reset_min", 60, FigureUnit.Minutes);

    public static Rule Rule { get; } = new("test-order")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Caution,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.CollegeTestOrder],
        Figures = [Order, ResetMin],
        Needs = Needs.Results,
    };
}
