using Seasonwright.Core.Edits;
using Seasonwright.Core.Loads;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfSeason;

/// <summary>Taper-week planned minutes (or sets) v mean of the 2 weeks before.</summary>
internal static class TaperVolume
{
    public static readonly Figure MinDrop = Figure.Number("min_drop", 0.41m, FigureUnit.Share);
    public static readonly Figure MaxDrop = Figure.Number("max_drop", 0.6m, FigureUnit.Share);
    public static readonly Figure ReferenceWeeks = Figure.Number("reference_weeks", 2, FigureUnit.Weeks);
    public static readonly Figure ShortMinDrop = Figure.Number("short_min_drop", 0.2m, FigureUnit.Share);
    public static readonly Figure ShortMaxDrop = Figure.Number("short_max_drop", 0.35m, FigureUnit.Share);

    public static Rule Rule { get; } = new("taper-volume")
    {
        Scope = RuleScope.Season,
        Highest = Severity.Caution,
        Evidence = Evidence.Strong,
        Status = SourceStatus.Confirmed,
        Sources = [Sources.Bosquet2007, Sources.Wang2023, Sources.Mujika2003],
        Figures = [MinDrop, MaxDrop, ReferenceWeeks, ShortMinDrop, ShortMaxDrop],
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        foreach (var run in plan.Runs(week => week.Kind == WeekKind.Taper))
        {
            var place = Place.Of(run[0], run[^1]);
            var before = plan.NormalBefore(run[0], (int)figures.Number(ReferenceWeeks)).Select(week => week.Training!.Value).ToList();
            var training = run.Select(week => week.Training).OfType<decimal>().ToList();
            if (training.Count < run.Count || Reduction.Of(training, before) is not { } cut)
            {
                yield return new TooLittle(place, training.Count < run.Count ? "missing.load" : "missing.before");
                continue;
            }
            // One week is the short version of a league; more are a full taper.
            var (least, most) = run.Count == 1 ? (ShortMinDrop, ShortMaxDrop) : (MinDrop, MaxDrop);
            var drop = cut.AsShown();
            if (drop >= figures.Number(least) && drop <= figures.Number(most)) yield return new Fine(place);
            else
            {
                var limit = drop < figures.Number(least) ? least : most;
                var middle = 1 - (figures.Number(least) + figures.Number(most)) / 2;
                yield return new Breach(place, drop < 0 ? "rise" : run.Count == 1 ? "short" : "full", Severity.Caution, drop, figures.Number(limit))
                {
                    Numbers = [Math.Abs(drop).AsPercent(), figures.Number(least).AsPercent(), figures.Number(most).AsPercent()],
                    Figure = limit.Name,
                    Remedy = [.. run.Select(week => new SetWeekLoad(week.Id, week.Id, Plan.LoadOf(week.Load.Match.Au + middle * before.Average())))],
                };
            }
        }
    }
}
