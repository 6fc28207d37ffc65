using Seasonwright.Core.Edits;
using Seasonwright.Core.Loads;
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

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        foreach (var week in plan.Weeks.Where(week => week.Kind == WeekKind.Unloading))
        {
            var place = Place.Of(week);
            var before = plan.NormalBefore(week, (int)figures.Number(ReferenceWeeks)).Select(other => other.Training!.Value).ToList();
            if (week.Training is not { } training || Reduction.Of([training], before) is not { } cut)
            {
                yield return new TooLittle(place, week.Training is null ? "missing.load" : "missing.before");
                continue;
            }
            var (least, most) = week.IsCompetition ? (CompetitionMinDrop, CompetitionMaxDrop) : (MinDrop, MaxDrop);
            var drop = cut.AsShown();
            if (drop >= figures.Number(least) && drop <= figures.Number(most)) yield return new Fine(place);
            else
            {
                var limit = drop < figures.Number(least) ? least : most;
                var middle = 1 - (figures.Number(least) + figures.Number(most)) / 2;
                yield return new Breach(place, drop < 0 ? "rise" : drop < figures.Number(least) ? "small" : "large", Severity.Caution, drop, figures.Number(limit))
                {
                    Numbers = [Math.Abs(drop).AsPercent(), figures.Number(least).AsPercent(), figures.Number(most).AsPercent()],
                    Figure = limit.Name,
                    Remedy = [new SetWeekLoad(week.Id, week.Id, Plan.LoadOf(week.Load.Match.Au + middle * before.Average()))],
                };
            }
        }
    }
}
