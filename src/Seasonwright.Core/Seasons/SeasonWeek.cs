using Seasonwright.Core.Calendar;

namespace Seasonwright.Core.Seasons;

/// <summary>A week with the place it has now.</summary>
/// <param name="Number">1 is the first week of the season; weeks outside have numbers below 1 or above the count.</param>
/// <param name="Id">What stays with the week when it is moved.</param>
/// <param name="Days">Its days, both ends inside; seven but for a short first week.</param>
public sealed record SeasonWeek(int Number, WeekId Id, DaySpan Days)
{
    /// <summary>The ISO 8601 week that holds most of this week's days (the earlier one of two halves).</summary>
    public IsoWeek IsoWeek => IsoWeek.Of(Days.First.AddDays((Days.Length - 1) / 2));
}
