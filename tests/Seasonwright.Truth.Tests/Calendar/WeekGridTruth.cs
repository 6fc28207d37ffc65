using System.Globalization;
using CsCheck;
using NodaTime;
using NodaTime.Calendars;
using NodaTime.Extensions;
using Seasonwright.Core.Calendar;

namespace Seasonwright.Truth.Tests.Calendar;

public class WeekGridTruth
{
    private static readonly DayOfWeek[] Weekdays = Enum.GetValues<DayOfWeek>();

    /// <summary>
    /// Reference library: NodaTime's week rule with a short first week from 1 January, every day of a hundred years and every
    /// week start. A year chart that starts on 1 January numbers its columns like that rule.
    /// </summary>
    [Fact]
    public void Week_numbers_of_a_hundred_years_agree_for_every_week_start()
    {
        foreach (var weekStart in Weekdays)
        {
            var rule = WeekYearRules.FromCalendarWeekRule(CalendarWeekRule.FirstDay, weekStart);
            for (var year = 1990; year < 2090; year++)
            {
                var first = new DateOnly(year, 1, 1);
                var last = new DateOnly(year, 12, 31);
                var grid = new WeekGrid(first, weekStart, rule.GetWeekOfWeekYear(LocalDate.FromDateOnly(last)));
                for (var day = first; day <= last; day = day.AddDays(1))
                {
                    Assert.Equal(rule.GetWeekOfWeekYear(LocalDate.FromDateOnly(day)), grid.NumberOf(day));
                    Assert.True(grid.Holds(day) && grid.Week(grid.NumberOf(day)).Contains(day));
                }
                Assert.InRange(grid.Count, 53, 54);
            }
        }
    }

    /// <summary>
    /// Reference library: NodaTime's "previous or same weekday" for the start of a week. From any day of a hundred years: the
    /// first week may be short, every later one starts on the week start and has seven days, and the weeks leave no day out.
    /// </summary>
    [Fact]
    public void Every_grid_is_cut_where_the_reference_library_cuts() =>
        Gen.Select(Gen.Date[new DateTime(1990, 1, 1), new DateTime(2089, 12, 31)], Gen.Enum<DayOfWeek>(), Gen.Int[1, 60]).Sample((date, weekStart, count) =>
        {
            var first = DateOnly.FromDateTime(date);
            var grid = new WeekGrid(first, weekStart, count);
            var anchor = LocalDate.FromDateOnly(first).With(DateAdjusters.PreviousOrSame(weekStart.ToIsoDayOfWeek()));
            Assert.Equal(first, grid.Week(1).First);
            Assert.InRange(grid.Week(1).Length, 1, 7);
            for (var number = 2; number <= count; number++)
            {
                Assert.Equal(anchor.PlusWeeks(number - 1).ToDateOnly(), grid.Week(number).First);
                Assert.Equal(7, grid.Week(number).Length);
                Assert.Equal(grid.Week(number - 1).Last.AddDays(1), grid.Week(number).First);
            }
            Assert.Equal(anchor.PlusWeeks(count).PlusDays(-1).ToDateOnly(), grid.Span.Last);
            Assert.True(grid.Span.Days().All(day => grid.Holds(day) && grid.Week(grid.NumberOf(day)).Contains(day)));
            Assert.False(grid.Holds(grid.Span.First.AddDays(-1)) || grid.Holds(grid.Span.Last.AddDays(1)));
        }, iter: 2_000);

    /// <summary>
    /// Reference library: NodaTime's ISO rule. A chart of Monday weeks from the Monday of ISO week 1 has the year's ISO weeks
    /// as its columns, 52 or 53 of them.
    /// </summary>
    [Fact]
    public void Columns_from_the_first_iso_week_are_iso_weeks()
    {
        for (var year = 1990; year < 2090; year++)
        {
            var weeks = WeekYearRules.Iso.GetWeeksInWeekYear(year);
            var grid = new WeekGrid(WeekYearRules.Iso.GetLocalDate(year, 1, IsoDayOfWeek.Monday).ToDateOnly(), DayOfWeek.Monday, weeks);
            for (var number = 1; number <= weeks; number++) Assert.Equal(new IsoWeek(year, number), IsoWeek.Of(grid.Week(number).First));
            Assert.Equal(new IsoWeek(year + 1, 1), IsoWeek.Of(grid.Span.Last.AddDays(1)));
        }
    }

    /// <summary>Common practice, no source: a year chart that starts on the first Sunday of 2021 starts on 3 January, and five of its week columns start in January.</summary>
    [Fact]
    public void A_chart_from_the_first_sunday_of_2021()
    {
        var firstSunday = WeekGrid.StartOfWeek(new DateOnly(2021, 1, 7), DayOfWeek.Sunday);
        var grid = new WeekGrid(firstSunday, DayOfWeek.Sunday, 52);
        Assert.Equal(new DateOnly(2021, 1, 3), grid.Week(1).First);
        Assert.Equal(5, Enumerable.Range(1, 52).Count(number => grid.Week(number).First is { Year: 2021, Month: 1 }));
        Assert.Equal(new DateOnly(2022, 1, 1), grid.Span.Last);
    }
}
