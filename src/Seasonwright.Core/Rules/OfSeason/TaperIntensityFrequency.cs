using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfSeason;

/// <summary>Intended RPE or %1RM or speed in key sessions; number of sessions per week; taper v reference.</summary>
internal static class TaperIntensityFrequency
{
    public static readonly Figure MinIntensity = Figure.Number("min_intensity", 0.95m, FigureUnit.Share);
    public static readonly Figure MinFrequency = Figure.Number("min_frequency", 0.8m, FigureUnit.Share);
    public static readonly Figure ReferenceWeeks = Figure.Number("reference_weeks", 2, FigureUnit.Weeks);

    public static Rule Rule { get; } = new("taper-intensity-frequency")
    {
        Scope = RuleScope.Season,
        Highest = Severity.Caution,
        Evidence = Evidence.Strong,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Bosquet2007, Sources.Mujika2003],
        Figures = [MinIntensity, MinFrequency, ReferenceWeeks],
        Needs = Needs.Sessions,
        Looks = Looks,
    };

    private static decimal Efforts(PlanWeek week) => week.AllExposures + Math.Max(1, week.Matches.Length);

    /// <summary>
    /// How often in the taper against before. A match counts as one of the week's hard efforts, and so does the hardest session of a
    /// week without one; how hard the single sessions are waits for sessions.
    /// </summary>
    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        foreach (var run in plan.Runs(week => week.Kind == WeekKind.Taper))
        {
            var place = Place.Of(run[0], run[^1]);
            var before = plan.NormalBefore(run[0], (int)figures.Number(ReferenceWeeks)).Where(week => week.HasEmphasis).Select(Efforts).ToList();
            if (before.Count == 0 || !run.All(week => week.HasEmphasis))
            {
                yield return new TooLittle(place, "missing.emphasis");
                continue;
            }
            var share = (run.Average(Efforts) / before.Average()).AsShown();
            if (share >= figures.Number(MinFrequency)) yield return new Fine(place);
            else
            {
                yield return new Breach(place, "rarer", Severity.Caution, share, figures.Number(MinFrequency))
                {
                    Numbers = [share.AsPercent(), figures.Number(MinFrequency).AsPercent()],
                    Figure = MinFrequency.Name,
                };
            }
        }
    }
}
