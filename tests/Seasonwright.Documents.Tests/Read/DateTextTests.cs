using System.Globalization;
using Seasonwright.Core.Calendar;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Tests.Read;

public class DateTextTests
{
    [Theory]
    [InlineData("2026-09-05", "2026-09-05", "")]
    [InlineData("2026-09-05T18:00", "2026-09-05", "")]
    [InlineData("2026/9/5", "2026-09-05", "")]
    [InlineData("20260905", "2026-09-05", "")]
    [InlineData("12.9.2026", "2026-09-12", "")]
    [InlineData("12. 9. 2026", "2026-09-12", "")]
    [InlineData("12.09.26", "2026-09-12", "")]
    [InlineData("Sa., 12.9.", "2026-09-12", "")]
    [InlineData("13/9/26", "2026-09-13", "")]
    [InlineData("5 Sep", "2026-09-05", "")]
    [InlineData("Sat 5 Sep 18:00", "2026-09-05", "")]
    [InlineData("5 Sep 19.30", "2026-09-05", "")]
    [InlineData("Saturday, September 5th, 2026", "2026-09-05", "")]
    [InlineData("5-Sep-26", "2026-09-05", "")]
    [InlineData("5 Sep '26", "2026-09-05", "")]
    [InlineData("Samstag, 5. September 2026", "2026-09-05", "")]
    [InlineData("le samedi 5 septembre 2026", "2026-09-05", "")]
    [InlineData("sábado 5 de septiembre de 2026", "2026-09-05", "")]
    [InlineData("lørdag den 5. september 2026", "2026-09-05", "")]
    [InlineData("1er septembre 2026", "2026-09-01", "")]
    [InlineData("20 Dec - 2 Jan", "2026-12-20", "2027-01-02")]
    [InlineData("20 Dec - 2 Jan 2027", "2026-12-20", "2027-01-02")]
    [InlineData("Fri 21 - Sun 23 Aug", "2026-08-21", "2026-08-23")]
    [InlineData("1-5 March", "2027-03-01", "2027-03-05")]
    [InlineData("15–19 Feb", "2027-02-15", "2027-02-19")]
    [InlineData("18.1.-24.1.", "2027-01-18", "2027-01-24")]
    [InlineData("19./20.9.2026", "2026-09-19", "2026-09-20")]
    [InlineData("19/20 September 2026", "2026-09-19", "2026-09-20")]
    [InlineData("weekend of 19/20 September 2026", "2026-09-19", "2026-09-20")]
    [InlineData("2028-04-22 or 2028-04-23", "2028-04-22", "2028-04-23")]
    [InlineData("Sep 5-7, 2026", "2026-09-05", "2026-09-07")]
    [InlineData("14/2 to 20/2", "2027-02-14", "2027-02-20")]
    [InlineData("25/3–11/4", "2027-03-25", "2027-04-11")]
    [InlineData("19 Dec → 4 Jan inclusive", "2026-12-19", "2027-01-04")]
    [InlineData("week of 6 Dec 2027", "2027-12-06", "2027-12-12")]
    [InlineData("w/c 7 Dec", "2026-12-07", "2026-12-13")]
    [InlineData("Woche vom 7.12.", "2026-12-07", "2026-12-13")]
    [InlineData("week 43", "2026-10-19", "2026-10-25")]
    [InlineData("KW 49-50", "2026-11-30", "2026-12-13")]
    [InlineData("KW 2", "2027-01-11", "2027-01-17")]
    [InlineData("KW 43/2026", "2026-10-19", "2026-10-25")]
    [InlineData("May", "2027-05-01", "2027-05-31")]
    [InlineData("May 2027", "2027-05-01", "2027-05-31")]
    public void A_written_date_is_read(string text, string first, string last)
    {
        var written = DateText.Find(text, months: true);
        Assert.NotNull(written);
        var reading = Alone(written, new SeasonYears(2026, true));
        Assert.Equal((first, last), (Iso(reading.First), Iso(reading.Last)));
    }

    [Theory]
    [InlineData("TBD")]
    [InlineData("")]
    [InlineData("19.30")]
    [InlineData("18:00")]
    [InlineData("31:24")]
    [InlineData("28 – 25 (14 – 11)")]
    [InlineData("45/13/2026")]
    [InlineData("2026-13-40")]
    [InlineData("Skarholm IF")]
    [InlineData("R16-5")]
    public void What_is_no_date_is_none(string text) => Assert.Null(DateText.Find(text));

    [Theory]
    [InlineData("31.2.2027")]
    [InlineData("29 Feb 2027")]
    [InlineData("1066-10-14")]
    [InlineData("KW 53/2025")]
    public void A_day_that_does_not_exist_has_no_date(string text)
    {
        var written = DateText.Find(text);
        Assert.True(written is null || Alone(written, null).IsImpossible);
    }

    [Fact]
    public void The_column_decides_the_order()
    {
        Assert.Equal(DayOrder.DayFirst, Column(["5/9/26", "12/9/26", "16/1/27"]).Order);
        Assert.Equal(DayOrder.MonthFirst, Column(["9/5/2026", "9/11/2026", "10/31/2026"]).Order);
        // 5 September 2026 is a Saturday, 9 May is one too; 4 October is a Sunday, 10 April a Saturday.
        Assert.Equal(DayOrder.DayFirst, Column(["Sat 5/9/2026", "Sun 4/10/2026"]).Order);
    }

    [Fact]
    public void An_order_that_cannot_be_known_is_asked_and_the_answer_is_taken()
    {
        var asker = new Asker(Answers.None);
        var column = DateColumn.Read(Dates(["10/11/2026", "01/02/2027", "7/7/2026"]), new DateHints(), asker);
        Assert.Null(column.Order);
        Assert.Equal([null, null, new DateOnly(2026, 7, 7)], column.Readings.Select(r => r.First));
        Assert.Equal("Q-order", Assert.Single(asker.Open).Id);
        var answered = DateColumn.Read(Dates(["10/11/2026"]), new DateHints(), new Asker(Answers.None.With("Q-order", "month-first")));
        Assert.Equal(new DateOnly(2026, 10, 11), answered.Readings[0].First);
    }

    [Fact]
    public void Weekdays_and_a_leap_day_find_the_season_and_it_is_offered()
    {
        var asker = new Asker(Answers.None);
        var column = DateColumn.Read(Dates(["Sat 4 Sep", "4 Dec", "Sat 8 Jan", "Sat 5 Feb", "Tue 29 Feb"]), new DateHints(), asker);
        Assert.Equal([new(2027, 9, 4), new(2027, 12, 4), new(2028, 1, 8), new(2028, 2, 5), new DateOnly(2028, 2, 29)], column.Readings.Select(r => r.First!.Value));
        Assert.Equal("2027", Assert.Single(asker.Open).Offered);
    }

    [Fact]
    public void Without_any_hint_a_missing_year_leaves_the_dates_empty()
    {
        var asker = new Asker(Answers.None);
        var column = DateColumn.Read(Dates(["4 Sep", "8 Jan"]), new DateHints(), asker);
        Assert.All(column.Readings, reading => Assert.Equal((null, "Q-year"), (reading.First, reading.Ask)));
        var answered = DateColumn.Read(Dates(["4 Sep", "8 Jan"]), new DateHints(), new Asker(Answers.None.With("Q-year", "2026/27")));
        Assert.Equal([new(2026, 9, 4), new DateOnly(2027, 1, 8)], answered.Readings.Select(r => r.First!.Value));
    }

    [Fact]
    public void A_year_written_once_runs_on_over_New_Year()
    {
        var column = Column(["28 Jun - 25 Jul 2026", "Fri 21 - Sun 23 Aug", "KW 42", "KW 49-50", "20 Dec - 2 Jan", "Mon 4 Jan", "8/2 to 14/2", "12 Jun"]);
        Assert.Equal(new DaySpan(new(2026, 12, 20), new(2027, 1, 2)), column.Readings[4].Days);
        Assert.Equal(new DateOnly(2027, 1, 4), column.Readings[5].First);
        Assert.Equal(new DaySpan(new(2027, 2, 8), new(2027, 2, 14)), column.Readings[6].Days);
        Assert.Equal(new DateOnly(2027, 6, 12), column.Readings[7].First);
    }

    [Fact]
    public void A_list_in_no_order_starts_behind_its_longest_pause()
    {
        var column = Column(["6 Mar", "5 Sep 2026", "23 Jan", "10 Oct", "20 Feb", "14 Nov", "9 Jan"]);
        Assert.Equal([2027, 2026, 2027, 2026, 2027, 2026, 2027], column.Readings.Select(r => r.First!.Value.Year));
    }

    [Fact]
    public void A_weekday_that_does_not_fit_is_told() => Assert.True(Alone(DateText.Find("Sat 4 July 2027")!, null).WeekdayDiffers);

    private static string Iso(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";

    private static DateReading Alone(WrittenDate written, SeasonYears? years) =>
        DateColumn.Read([new LineDate(1, written)], new DateHints(Named: years), new Asker(Answers.None)).Readings[0];

    private static List<LineDate> Dates(string[] cells) => [.. cells.Select((cell, i) => new LineDate(i + 1, DateText.Find(cell)!))];

    private static DateColumn Column(string[] cells) => DateColumn.Read(Dates(cells), new DateHints(), new Asker(Answers.None));
}
