using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>Where a span of days is first met in a season.</summary>
internal static class FirstWeeks
{
    /// <summary>The number of the first week that holds one of the days; null outside the season.</summary>
    public static int? FirstWeekOf(this Season season, DaySpan days) =>
        season.Days is { } span && span.Overlaps(days) ? season.WeekOf(days.First > span.First ? days.First : span.First)?.Number : null;
}
