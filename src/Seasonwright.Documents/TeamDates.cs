using System.Globalization;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Setups;

namespace Seasonwright.Documents;

/// <summary>Days in the order the team reads them.</summary>
public static class TeamDates
{
    /// <summary>"Mon 11 Oct", "Mon Oct 11" or "Mon 10-11".</summary>
    public static string Short(this DateOnly day, LocaleSettings locale) => Write(day, locale.DateOrder switch
    {
        DateOrder.MonthDayYear => "ddd MMM d",
        DateOrder.YearMonthDay => "ddd MM-dd",
        _ => "ddd d MMM",
    });

    /// <summary>With the year.</summary>
    public static string Long(this DateOnly day, LocaleSettings locale) => Write(day, locale.DateOrder switch
    {
        DateOrder.MonthDayYear => "ddd MMM d, yyyy",
        DateOrder.YearMonthDay => "ddd yyyy-MM-dd",
        _ => "ddd d MMM yyyy",
    });

    /// <summary>"Mon 11 Oct – Sun 17 Oct 2027".</summary>
    public static string Words(this DaySpan days, LocaleSettings locale) =>
        days.Length == 1 ? days.First.Long(locale) : $"{(days.First.Year == days.Last.Year ? days.First.Short(locale) : days.First.Long(locale))} – {days.Last.Long(locale)}";

    /// <summary>As forms and files have it.</summary>
    public static string Iso(this DateOnly day) => Write(day, "yyyy-MM-dd");

    /// <summary>As forms and files have it.</summary>
    public static string Iso(this TimeOnly time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Write(DateOnly day, string format) => day.ToString(format, CultureInfo.InvariantCulture);
}
