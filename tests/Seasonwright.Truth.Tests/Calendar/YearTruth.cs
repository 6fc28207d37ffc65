using System.Globalization;
using Seasonwright.Core.Calendar;

namespace Seasonwright.Truth.Tests.Calendar;

public class YearTruth
{
    private static DaySpan Year(int year) => new(new DateOnly(year, 1, 1), new DateOnly(year, 12, 31));

    /// <summary>Weeks by our grid that start on the weekday within the year: one for each such day.</summary>
    private static int Count(int year, DayOfWeek weekday)
    {
        var grid = new WeekGrid(Year(year).First, weekday, 54);
        return Enumerable.Range(1, grid.Count).Select(number => grid.Week(number).First).Count(first => Year(year).Contains(first) && WeekGrid.StartOfWeek(first, weekday) == first);
    }

    /// <summary>The weekday on which a grid that starts with a whole week must start its weeks.</summary>
    private static DayOfWeek WeekdayOf(DateOnly day) =>
        Assert.Single(Enum.GetValues<DayOfWeek>(), weekday => new WeekGrid(day, weekday, 1).Week(1).Length == 7);

    /// <summary>Source: Gregorian calendar and ISO 8601-1:2019, the rows of calendar-years.csv (check values C06, C07).</summary>
    [Fact]
    public void Days_weeks_and_weekdays_of_the_table()
    {
        var rows = Cases.Rows("calendar/calendar-years.csv");
        Assert.Equal(13, rows.Count);
        foreach (var row in rows)
        {
            var year = int.Parse(row["year"], CultureInfo.InvariantCulture);
            Assert.Equal(row["days"], Year(year).Length.ToString(CultureInfo.InvariantCulture));
            Assert.Equal(row["iso_weeks"], IsoWeek.WeeksIn(year).ToString(CultureInfo.InvariantCulture));
            Assert.Equal(row["jan1"], WeekdayOf(Year(year).First).ToString()[..3]);
            foreach (var weekday in Enum.GetValues<DayOfWeek>())
                Assert.Equal(row[$"{weekday}s".ToLowerInvariant()], Count(year, weekday).ToString(CultureInfo.InvariantCulture));
        }
    }

    /// <summary>Source: Gregorian calendar (check value C08).</summary>
    [Theory]
    [InlineData(2021, 365)]
    [InlineData(2023, 366)]
    public void Days_from_1_July_to_30_June(int year, int days) =>
        Assert.Equal(days, new DaySpan(new DateOnly(year, 7, 1), new DateOnly(year + 1, 6, 30)).Length);

    /// <summary>Source: Gregorian calendar (check value C09).</summary>
    [Theory]
    [InlineData(1900, 365)]
    [InlineData(2000, 366)]
    [InlineData(2024, 366)]
    [InlineData(2100, 365)]
    public void Leap_years(int year, int days) => Assert.Equal(days, Year(year).Days().Count());
}
