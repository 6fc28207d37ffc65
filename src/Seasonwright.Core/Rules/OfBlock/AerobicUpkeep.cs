using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules.OfBlock;

/// <summary>Weekly hard aerobic exposures (sessions >= min_minutes at intent cond_high or matches >= 60 min); weekly minutes v development phase.</summary>
internal static class AerobicUpkeep
{
    public static readonly Figure MinPerWeek = Figure.Number("min_per_week", 2, FigureUnit.Count);
    public static readonly Figure MinMinutes = Figure.Number("min_minutes", 13, FigureUnit.Minutes);
    public static readonly Figure MaxVolumeCut = Figure.Number("max_volume_cut", 0.66m, FigureUnit.Share);
    public static readonly Figure MaxWeeks = Figure.Number("max_weeks", 15, FigureUnit.Weeks);

    public static Rule Rule { get; } = new("aerobic-upkeep")
    {
        Scope = RuleScope.Block,
        Highest = Severity.Caution,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.Confirmed,
        Sources = [Sources.Spiering2021],
        Figures = [MinPerWeek, MinMinutes, MaxVolumeCut, MaxWeeks],
        Needs = Needs.Sessions,
        Looks = Looks,
    };

    /// <summary>Counts exposures a week; how long and how hard they are waits for sessions.</summary>
    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        var least = figures.Number(MinPerWeek);
        foreach (var run in plan.Runs(week => week.IsTraining && week.HasEmphasis && Exposures(week) < least))
        {
            // One light week holds; two running do not.
            if (run.Count == 1) yield return new Fine(Place.Of(run[0]));
            else
            {
                yield return new Breach(Place.Of(run[0], run[^1]), "few", Severity.Caution, run.Min(Exposures), least)
                {
                    Numbers = [run.Min(Exposures), run.Count, least],
                    Figure = MinPerWeek.Name,
                    Remedy = [.. run.SelectMany(week => plan.Emphasise([week], QualityKind.HighIntensityConditioning, week.Exposures(QualityKind.HighIntensityConditioning) + least - Exposures(week)))],
                };
            }
        }
        foreach (var week in plan.Weeks.Where(week => week.IsTraining && (!week.HasEmphasis || Exposures(week) >= least)))
            yield return week.HasEmphasis ? new Fine(Place.Of(week)) : new TooLittle(Place.Of(week), "missing.emphasis");
    }

    private static int Exposures(PlanWeek week) =>
        week.Exposures(QualityKind.HighIntensityConditioning) + week.Exposures(QualityKind.AerobicConditioning) + week.Matches.Length;
}
