using System.Globalization;
using NodaTime;
using NodaTime.Calendars;
using Seasonwright.Core.Calendar;

namespace Seasonwright.Truth.Tests.Calendar;

public class IsoWeekTruth
{
    private static DateOnly Day(string text) => DateOnly.ParseExact(text, "O", CultureInfo.InvariantCulture);

    /// <summary>Source: ISO 8601-1:2019, the rows of calendar-iso-weeks.csv (check values C01 to C04).</summary>
    [Fact]
    public void Iso_weeks_of_the_table()
    {
        var rows = Cases.Rows("calendar/calendar-iso-weeks.csv");
        Assert.Equal(21, rows.Count);
        foreach (var row in rows)
        {
            var day = Day(row["date"]);
            var week = IsoWeek.Of(day);
            Assert.Equal($"{row["date"]} {row["iso_year"]} {row["iso_week"]} {row["iso_weekday"]} {row["weekday"]} {row["day_of_year"]}",
                $"{day:O} {week.Year} {week.Number} {day.DayNumber - week.Monday.DayNumber + 1} {day.ToString("ddd", CultureInfo.InvariantCulture)} {day.DayOfYear}");
        }
    }

    /// <summary>Source: ISO 8601-1:2019 (check values C02, C03: the rows the table leaves out).</summary>
    [Theory]
    [InlineData("2022-01-01", "2021-W52")]
    [InlineData("2000-01-01", "1999-W52")]
    [InlineData("2019-12-30", "2020-W01")]
    [InlineData("2016-01-03", "2015-W53")]
    public void Weeks_around_new_year(string day, string week) => Assert.Equal(week, IsoWeek.Of(Day(day)).ToString());

    /// <summary>Source: ISO 8601-1:2019 (check value C05).</summary>
    [Fact]
    public void Years_with_53_weeks() => Assert.Equal(
        [2004, 2009, 2015, 2020, 2026, 2032, 2037, 2043, 2048],
        Enumerable.Range(2000, 51).Where(year => IsoWeek.WeeksIn(year) == 53));

    /// <summary>Reference library: NodaTime's ISO week rule, every day of two hundred years.</summary>
    [Fact]
    public void Every_day_of_two_centuries_agrees_with_the_reference_library()
    {
        var rule = WeekYearRules.Iso;
        for (var day = new DateOnly(1950, 1, 1); day.Year < 2150; day = day.AddDays(1))
        {
            var reference = LocalDate.FromDateOnly(day);
            var week = IsoWeek.Of(day);
            Assert.Equal((rule.GetWeekYear(reference), rule.GetWeekOfWeekYear(reference)), (week.Year, week.Number));
            Assert.True(week.Days.Contains(day) && week.Days.Length == 7 && week.Monday.DayOfWeek == DayOfWeek.Monday);
        }
        for (var year = 1950; year < 2150; year++) Assert.Equal(rule.GetWeeksInWeekYear(year), IsoWeek.WeeksIn(year));
    }
}
