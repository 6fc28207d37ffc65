using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfSeason;

/// <summary>Decisive matches with taper_wanted; their dates.</summary>
internal static class PeaksTooMany
{
    /// <summary>The first weeks back, see <see cref="OfAthlete.ReturnAfterBreakVolume"/>.</summary>
    private const int WeeksBack = 2;

    /// <summary>A taper cuts what so many weeks have held, see <see cref="TaperVolume.ReferenceWeeks"/>.</summary>
    private const int WeeksCut = 2;

    public static readonly Figure MaxPeaks = Figure.Number("max_peaks", 3, FigureUnit.Count);
    public static readonly Figure ClusterDays = Figure.Number("cluster_days", 14, FigureUnit.Days);
    public static readonly Figure MinGapWeeks = Figure.Number("min_gap_weeks", 6, FigureUnit.Weeks);

    public static Rule Rule { get; } = new("peaks-too-many")
    {
        Scope = RuleScope.Season,
        Highest = Severity.Caution,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.FromMemory,
        Sources = [Sources.BompaHandbook],
        Figures = [MaxPeaks, ClusterDays, MinGapWeeks],
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        var tapers = Tapers(plan, figures);
        if (tapers.Count == 0) yield break;
        var most = figures.Number(MaxPeaks);
        if (tapers.Count > most)
            yield return new Breach(new Place("season", tapers[0][0].Number, tapers[^1][^1].Number), "many", Severity.Caution, tapers.Count, most) { Numbers = [tapers.Count, most], Figure = MaxPeaks.Name };
        else yield return new Fine(new Place("season", tapers[0][0].Number, tapers[^1][^1].Number));
        foreach (var (one, next) in tapers.Zip(tapers.Skip(1)))
        {
            var apart = next[0].Number - one[0].Number;
            if (apart >= figures.Number(MinGapWeeks)) yield return new Fine(Place.Of(next[0]));
            else yield return new Breach(Place.Of(one[0], next[0]), "close", Severity.Caution, apart, figures.Number(MinGapWeeks)) { Numbers = [apart, figures.Number(MinGapWeeks)], Figure = MinGapWeeks.Name };
        }
    }

    /// <summary>Runs of taper weeks; those that begin within one cluster of matches are one.</summary>
    private static List<List<PlanWeek>> Tapers(Plan plan, Figures figures)
    {
        List<List<PlanWeek>> tapers = [];
        foreach (var run in plan.Runs(week => week.Kind == WeekKind.Taper))
        {
            if (tapers.Count > 0 && run[0].Days.First.DayNumber - tapers[^1][^1].Days.First.DayNumber <= figures.Number(ClusterDays)) tapers[^1].AddRange(run);
            else tapers.Add(run);
        }
        return tapers;
    }

    /// <summary>Soon after days off there is nothing to taper from: the squad is on its way back, and fresh.</summary>
    private static bool MayTaper(Plan plan, Match match) =>
        Taper.WeekFor(plan, match) is not { } week || week.IsTraining && plan.Before(week) is not { IsTraining: false }
            && (WeeksTrained(plan, week) >= WeeksCut || plan.Weeks.Take(week.Number).All(other => other.IsTraining));

    /// <summary>Weeks of full training between the first ones back and a week.</summary>
    private static int WeeksTrained(Plan plan, PlanWeek week) =>
        plan.Weeks.Take(week.Number - 1).Reverse().TakeWhile(other => plan.SinceAbsence(other) > 0).Count(other => other is { IsTraining: true, Kind: not WeekKind.Reduced } && plan.SinceAbsence(other) >= WeeksBack);

    /// <summary>The matches a taper is wanted for: see <see cref="Plan.TaperedFor"/>.</summary>
    public static IEnumerable<Match> Wanted(Plan plan)
    {
        var figures = new Figures(Rule.Id, plan.Setup);
        List<Match> firsts = [];
        DateOnly? last = null;
        foreach (var match in plan.Official.Where(match => match.Importance == Importance.Key && MayTaper(plan, match)))
        {
            if (last is not { } before || match.Day!.Value.DayNumber - before.DayNumber > figures.Number(ClusterDays)) firsts.Add(match);
            last = match.Day;
        }
        List<Match> kept = [];
        foreach (var match in firsts.AsEnumerable().Reverse())
            if (kept.Count < figures.Number(MaxPeaks) && (kept.Count == 0 || kept[^1].Day!.Value.DayNumber - match.Day!.Value.DayNumber >= 7 * figures.Number(MinGapWeeks))) kept.Add(match);
        return kept.AsEnumerable().Reverse();
    }
}
