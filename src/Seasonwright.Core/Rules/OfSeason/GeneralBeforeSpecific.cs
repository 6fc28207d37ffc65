using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfSeason;

/// <summary>Ordered preparation blocks with kind and dates.</summary>
internal static class GeneralBeforeSpecific
{
    public static readonly Figure LayoffDays = Figure.Number("layoff_days", 14, FigureUnit.Days);
    public static readonly Figure MinGeneralWeeks = Figure.Number("min_general_weeks", 2, FigureUnit.Weeks);
    public static readonly Figure NoviceMinGeneralWeeks = Figure.Number("novice_min_general_weeks", 4, FigureUnit.Weeks);

    public static Rule Rule { get; } = new("general-before-specific")
    {
        Scope = RuleScope.Season,
        Highest = Severity.Caution,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.FromMemory,
        Sources = [Sources.BompaHandbook],
        Figures = [LayoffDays, MinGeneralWeeks, NoviceMinGeneralWeeks],
        Needs = Needs.Squad,
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        foreach (var run in plan.Runs(week => week.IsPreparation))
        {
            if (plan.DaysAwayBefore(run[0]) < figures.Number(LayoffDays)) continue;
            var general = run.TakeWhile(week => week.Phase!.Phase.Kind == PhaseKind.GeneralPreparation).Count();
            var least = figures.Number(MinGeneralWeeks);
            // A preparation that stays general has no specific block that could come too early.
            if (general >= least || general == run.Count) yield return new Fine(Place.Of(run[0], run[^1]));
            else
            {
                yield return new Breach(Place.Of(run[0], run[general]), "early", Severity.Caution, general, least)
                {
                    Numbers = [general, least],
                    Figure = MinGeneralWeeks.Name,
                };
            }
        }
    }
}
