using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Hard sets per muscle or movement pattern per week; block emphasis.</summary>
internal static class WeeklySetsRange
{
    public static readonly Figure DevMin = Figure.Number("dev_min", 10, FigureUnit.Count);
    public static readonly Figure DevMax = Figure.Number("dev_max", 20, FigureUnit.Count);
    public static readonly Figure StrMin = Figure.Number("str_min", 4, FigureUnit.Count);
    public static readonly Figure StrMax = Figure.Number("str_max", 12, FigureUnit.Count);
    public static readonly Figure KeepMin = Figure.Number("keep_min", 2, FigureUnit.Count);
    public static readonly Figure IndirectWeight = Figure.Number("indirect_weight", 0.5m, FigureUnit.Count);

    public static Rule Rule { get; } = new("weekly-sets-range")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Caution,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Schoenfeld2017, Sources.BazValle2022, Sources.Spiering2021],
        Figures = [DevMin, DevMax, StrMin, StrMax, KeepMin, IndirectWeight],
        Needs = Needs.Sessions,
    };
}
