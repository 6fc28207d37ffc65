using Seasonwright.Core.Edits;
using Seasonwright.Core.Rules.OfAthlete;
using Seasonwright.Core.Rules.OfWeek;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules;

/// <summary>Where tests that tire may go instead: one rule's remedy must not be the next one's finding.</summary>
internal static class BetterTestDay
{
    private const int Farthest = 14;

    /// <summary>The test on the nearest day within two weeks that no rule has anything against, the earlier of two; nothing where there is none.</summary>
    public static ValueList<SeasonEdit> For(Plan plan, TestDay test)
    {
        var days = Enumerable.Range(1, Farthest).SelectMany(away => new[] { test.Day.AddDays(-away), test.Day.AddDays(away) });
        return days.FirstOrDefault(day => plan.WeekOf(day) is { IsTraining: true } week && !TestTiming.IsAgainst(plan, day, week) && !ReturnAfterBreakStrength.IsAgainst(plan, day, week)) is { } better
            && better != default ? [new SetTestDay(test with { Day = better })] : [];
    }
}
