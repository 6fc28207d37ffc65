using Seasonwright.Core.Edits;
using Seasonwright.Core.Loads;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules;

/// <summary>Easier weeks against the normal ones before them: a cut of the usual size, or not. For unloading weeks and tapers.</summary>
internal static class Cut
{
    /// <param name="weeks">Side by side; their cut is told as one.</param>
    /// <param name="reference">The figure that says how many normal weeks they are held against.</param>
    /// <param name="usual">The figures between which the cut is usual, both inside.</param>
    /// <param name="codes">The rule's sentences for a cut too small and too large; a rise is "rise".</param>
    public static Look Judge(Plan plan, List<PlanWeek> weeks, Figures figures, Figure reference, (Figure Least, Figure Most) usual, (string Small, string Large) codes)
    {
        var place = Place.Of(weeks[0], weeks[^1]);
        var before = plan.NormalBefore(weeks[0], (int)figures.Number(reference)).Select(week => week.Training!.Value).ToList();
        var training = weeks.Select(week => week.Training).OfType<decimal>().ToList();
        if (training.Count < weeks.Count) return new TooLittle(place, "missing.load");
        if (Reduction.Of(training, before) is not { } cut) return new TooLittle(place, "missing.before");
        var (least, most, drop) = (figures.Number(usual.Least), figures.Number(usual.Most), cut.AsShown());
        if (drop >= least && drop <= most) return new Fine(place);
        var limit = drop < least ? usual.Least : usual.Most;
        var middle = 1 - (least + most) / 2;
        return new Breach(place, drop < 0 ? "rise" : drop < least ? codes.Small : codes.Large, Severity.Caution, drop, figures.Number(limit))
        {
            Numbers = [Math.Abs(drop).AsPercent(), least.AsPercent(), most.AsPercent()],
            Figure = limit.Name,
            Remedy = [.. weeks.Select(week => new SetWeekLoad(week.Id, week.Id, Plan.LoadOf(week.Load.Match.Au + middle * before.Average())))],
        };
    }
}
