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
        Rising = [[ShortMinDrop, ShortMaxDrop], [MinDrop, MaxDrop]],
        Looks = Looks,
    };

    // One week is the short version of a league; more are a full taper.
    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        foreach (var run in plan.Runs(week => week.Kind == WeekKind.Taper))
        {
            var (usual, code) = run.Count == 1 ? ((ShortMinDrop, ShortMaxDrop), "short") : ((MinDrop, MaxDrop), "full");
            var look = Cut.Judge(plan, run, figures, ReferenceWeeks, usual, (code, code));
            // Beside two matches or more the training is lighter still, and rightly.
            yield return look is Breach { Value: var drop } && drop > figures.Number(usual.Item2) && run.Exists(week => week.Matches.Length > 1) ? new Fine(look.Place) : look;
        }
    }
}
