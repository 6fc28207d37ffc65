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

    /// <summary>
    /// How often in the taper against before. The match counts as one of the week's hard efforts on both sides; how hard the single
    /// sessions are waits for sessions.
    /// </summary>
    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        foreach (var run in plan.Runs(week => week.Kind == WeekKind.Taper))
        {
            var place = Place.Of(run[0], run[^1]);
            var before = plan.NormalBefore(run[0], (int)figures.Number(ReferenceWeeks)).Where(week => week.HasEmphasis).Select(week => week.AllExposures + 1m).ToList();
            if (before.Count == 0 || !run.All(week => week.HasEmphasis))
            {
                yield return new TooLittle(place, "missing.emphasis");
                continue;
            }
            var share = (run.Average(week => week.AllExposures + 1m) / before.Average()).AsShown();
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
