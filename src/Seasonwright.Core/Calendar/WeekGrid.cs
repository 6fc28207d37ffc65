namespace Seasonwright.Core.Calendar;

/// <summary>
/// The columns of a year chart: the first week runs from the first day to the day before the next week start (so it may be
/// short, 1 to 7 days), every later week has seven days.
/// </summary>
public readonly record struct WeekGrid
{
    /// <param name="firstDay">The first day of week 1.</param>
    /// <param name="weekStart">The weekday on which every later week starts.</param>
    /// <param name="count">How many weeks, 0 or more.</param>
    public WeekGrid(DateOnly firstDay, DayOfWeek weekStart, int count)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        FirstDay = firstDay;
        WeekStart = weekStart;
        Count = count;
    }

    public DateOnly FirstDay { get; }

    public DayOfWeek WeekStart { get; }

    public int Count { get; }

    /// <summary>The week start on or before <paramref name="day"/>.</summary>
    public static DateOnly StartOfWeek(DateOnly day, DayOfWeek weekStart) =>
        day.AddDays(-(((int)day.DayOfWeek - (int)weekStart + 7) % 7));

    /// <summary>The full week that would hold week 1 if it were not cut at the first day.</summary>
    private DateOnly Anchor => StartOfWeek(FirstDay, WeekStart);

    /// <summary>Days from the first of week 1 to the last of the last week. Needs at least one week.</summary>
    public DaySpan Span => new(FirstDay, Week(Count).Last);

    /// <summary>The days of a week by its number. Numbers below 1 or above <see cref="Count"/> are the full weeks that would adjoin the season.</summary>
    public DaySpan Week(int number)
    {
        var start = Anchor.AddDays(7 * (number - 1));
        return new DaySpan(number == 1 ? FirstDay : start, start.AddDays(6));
    }

    /// <summary>The number of the week that holds a day; it may lie outside 1..<see cref="Count"/>.</summary>
    public int NumberOf(DateOnly day)
    {
        var number = ColumnOf(day);
        // Days cut off a short first week belong to the week before the season.
        return number == 1 && day < FirstDay ? 0 : number;
    }

    private int ColumnOf(DateOnly day) => (int)Math.Floor((day.DayNumber - Anchor.DayNumber) / 7.0) + 1;

    public bool Holds(DateOnly day) => Count > 0 && NumberOf(day) is var number && number >= 1 && number <= Count;

    /// <summary>
    /// By how many columns the weeks of <paramref name="old"/> move so that each lands on the week holding most of its days:
    /// week n of the old grid becomes week n + shift of this one.
    /// </summary>
    // The week that holds the fourth of seven days holds at least four of them.
    public int ShiftFrom(WeekGrid old) => ColumnOf(old.Week(2).First.AddDays(3)) - 2;
}
