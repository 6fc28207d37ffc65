using System.Collections.Immutable;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Year;

/// <summary>Which days are match days, and how long a match is after the one before.</summary>
internal static class MatchDays
{
    /// <summary>Days with a match that is confirmed.</summary>
    public static ImmutableHashSet<DateOnly> Certain(YearPlan plan) => Of(plan, match => match.Status == MatchStatus.Confirmed);

    /// <summary>Days with a match that may yet move or not be played.</summary>
    public static ImmutableHashSet<DateOnly> Unsure(YearPlan plan) => Of(plan, match => match.Status != MatchStatus.Confirmed);

    /// <summary>Days from the last match day before; null for the first, and for a match without a day of its own.</summary>
    public static int? Since(Match match, ImmutableArray<DateOnly> matchDays)
    {
        if (!match.IsOnOneDay)
            return null;
        int? since = null;
        foreach (var day in matchDays)
        {
            if (day >= match.Day)
                break;
            since = match.Day!.Value.DayNumber - day.DayNumber;
        }
        return since;
    }

    private static ImmutableHashSet<DateOnly> Of(YearPlan plan, Func<Match, bool> which) =>
        [.. plan.Matches.Where(match => match.IsOnOneDay && which(match)).Select(match => match.Day!.Value)];
}
