namespace Seasonwright.Core.Rules;

/// <summary>Days without a dose of something, as far as sessions tell: between two doses, or at least so many at an end of the weeks that are laid out.</summary>
internal readonly record struct DoseGap(PlanWeek First, PlanWeek Last, int Days)
{
    public Place Place => Place.Of(First, Last);

    /// <param name="isKnown">The weeks whose sessions tell; a gap ends where they do.</param>
    /// <param name="doses">The days with a dose.</param>
    public static IEnumerable<DoseGap> All(Plan plan, Func<PlanWeek, bool> isKnown, IEnumerable<DateOnly> doses)
    {
        List<DateOnly> days = [.. doses.Order()];
        foreach (var run in plan.Runs(isKnown))
        {
            var (from, since) = (run[0], run[0].Days.First);
            foreach (var dose in days.Where(day => day >= run[0].Days.First && day <= run[^1].Days.Last))
            {
                var week = plan.WeekOf(dose)!;
                yield return new DoseGap(from, week, dose.DayNumber - since.DayNumber);
                (from, since) = (week, dose);
            }
            // A week without any is a week, the day after its last being the next that anything is known of.
            yield return new DoseGap(from, run[^1], run[^1].Days.Last.DayNumber - since.DayNumber + (since == run[0].Days.First ? 1 : 0));
        }
    }
}
