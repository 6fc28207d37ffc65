using Seasonwright.Core.Calendar;

namespace Seasonwright.Core.Squad;

/// <summary>The days on which one squad of a person leads: what is done then is its session.</summary>
/// <param name="Weekdays">Every week.</param>
/// <param name="Dates">Single runs of days; they come before any weekday.</param>
public sealed record LeadingDays(ValueList<DayOfWeek> Weekdays, ValueList<DaySpan> Dates)
{
    public static LeadingDays None { get; } = new([], []);

    /// <summary>How strongly a day is marked: 2 by its date, 1 by its weekday, 0 not at all.</summary>
    internal int On(DateOnly day) => Dates.Any(span => span.Contains(day)) ? 2 : Weekdays.Contains(day.DayOfWeek) ? 1 : 0;
}
