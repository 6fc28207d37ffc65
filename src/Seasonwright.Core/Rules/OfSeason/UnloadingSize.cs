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
        Rising = [[MinDrop, MaxDrop], [CompetitionMinDrop, CompetitionMaxDrop], [MinDays, MaxDays]],
        Needs = Needs.Sessions,
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures) =>
        from run in plan.Runs(week => week.Kind == WeekKind.Unloading)
        from look in run.Select(week => Cut.Judge(plan, [week], figures, ReferenceWeeks, week.IsCompetition ? (CompetitionMinDrop, CompetitionMaxDrop) : (MinDrop, MaxDrop), ("small", "large"))).Append(Length(run, figures))
        select look;

    private static Look Length(List<PlanWeek> run, Figures figures)
    {
        var place = Place.Of(run[0], run[^1]);
        var days = run.Sum(week => week.Days.Length);
        if (days >= figures.Number(MinDays) && days <= figures.Number(MaxDays)) return new Fine(place);
        var limit = days > figures.Number(MaxDays) ? MaxDays : MinDays;
        return new Breach(place, "days", Severity.Caution, days, figures.Number(limit)) { Numbers = [days, figures.Number(MinDays), figures.Number(MaxDays)], Figure = limit.Name };
    }
}
