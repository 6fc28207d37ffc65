using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfSeason;

/// <summary>Unloading-week load; mean load of up to 3 previous non-unloading weeks; sessions in both.</summary>
internal static class UnloadingSize
{
    public static readonly Figure MinDrop = Figure.Number("min_drop", 0.3m, FigureUnit.Share);
    public static readonly Figure MaxDrop = Figure.Number("max_drop", 0.5m, FigureUnit.Share);
    public static readonly Figure MinFrequency = Figure.Number("min_frequency", 0.75m, FigureUnit.Share);
    public static readonly Figure MinDays = Figure.Number("min_days", 4, FigureUnit.Days);
    public static readonly Figure MaxDays = Figure.Number("max_days", 10, FigureUnit.Days);
    public static readonly Figure CompetitionMinDrop = Figure.Number("competition_min_drop", 0.15m, FigureUnit.Share);
    public static readonly Figure CompetitionMaxDrop = Figure.Number("competition_max_drop", 0.3m, FigureUnit.Share);
    public static readonly Figure ReferenceWeeks = Figure.Number("reference_weeks", 3, FigureUnit.Weeks);

    public static Rule Rule { get; } = new("unloading-size")
    {
        Scope = RuleScope.Season,
        Highest = Severity.Caution,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Rogerson2024, Sources.Bell2023, Sources.Bell2022],
        Figures = [MinDrop, MaxDrop, MinFrequency, MinDays, MaxDays, CompetitionMinDrop, CompetitionMaxDrop, ReferenceWeeks],
        Needs = Needs.Sessions,
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures) =>
        from week in plan.Weeks
        where week.Kind == WeekKind.Unloading
        select Cut.Judge(plan, [week], figures, ReferenceWeeks, week.IsCompetition ? (CompetitionMinDrop, CompetitionMaxDrop) : (MinDrop, MaxDrop), ("small", "large"));
}
