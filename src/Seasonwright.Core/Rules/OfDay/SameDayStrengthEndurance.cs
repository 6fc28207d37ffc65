using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Strength and endurance sessions on the same day with start and end times; block emphasis.</summary>
internal static class SameDayStrengthEndurance
{
    public static readonly Figure BestH = Figure.Number("best_h", 6, FigureUnit.Hours);
    public static readonly Figure HardH = Figure.Number("hard_h", 3, FigureUnit.Hours);

    public static Rule Rule { get; } = new("same-day-strength-endurance")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.Confirmed,
        Sources = [Sources.Robineau2016, Sources.Schumann2022, Sources.Eddens2018],
        Figures = [BestH, HardH],
        Needs = Needs.Sessions,
    };
}
