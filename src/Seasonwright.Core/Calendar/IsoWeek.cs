using System.Globalization;

namespace Seasonwright.Core.Calendar;

/// <summary>A week by ISO 8601-1:2019: weeks start on Monday, week 1 holds the year's first Thursday.</summary>
/// <param name="Year">The ISO year, which differs from the calendar year around New Year.</param>
/// <param name="Number">1 to 52 or 53.</param>
public readonly record struct IsoWeek(int Year, int Number)
{
    public static IsoWeek Of(DateOnly day)
    {
        var time = day.ToDateTime(TimeOnly.MinValue);
        return new IsoWeek(ISOWeek.GetYear(time), ISOWeek.GetWeekOfYear(time));
    }

    public static int WeeksIn(int year) => ISOWeek.GetWeeksInYear(year);

    public DateOnly Monday => DateOnly.FromDateTime(ISOWeek.ToDateTime(Year, Number, DayOfWeek.Monday));

    public DaySpan Days => new(Monday, Monday.AddDays(6));

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Year:0000}-W{Number:00}");
}
