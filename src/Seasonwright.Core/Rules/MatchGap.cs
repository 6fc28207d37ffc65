using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules;

/// <summary>The time between two matches that follow each other, end of the one to start of the other.</summary>
/// <param name="Hours">Whole hours, rounded down; 0 for two on one day.</param>
/// <param name="IsEstimated">A kick-off is not known: both are taken to start at the same time of day.</param>
internal readonly record struct MatchGap(Match First, Match Second, int Hours, bool IsEstimated)
{
    /// <summary>From kick-off to the end where nobody said. From the rulebook's table of terms; common practice, no source.</summary>
    internal const int HoursOfMatch = 2;

    public static IEnumerable<MatchGap> All(Plan plan) => plan.Matches.Zip(plan.Matches.Skip(1), (first, second) => Of(first, second, plan.Setup.Locale.Zone));

    private static MatchGap Of(Match first, Match second, string zone)
    {
        if (first.KickOff is not { } one || second.KickOff is not { } other)
            return new(first, second, Math.Max(0, 24 * (second.Day!.Value.DayNumber - first.Day!.Value.DayNumber) - HoursOfMatch), IsEstimated: true);
        var between = new KickOff(second.Day!.Value, other, second.Zone ?? zone).ToInstant() - new KickOff(first.Day!.Value, one, first.Zone ?? zone).ToInstant();
        return new(first, second, Math.Max(0, (int)Math.Floor(between.TotalHours) - HoursOfMatch), IsEstimated: false);
    }
}
