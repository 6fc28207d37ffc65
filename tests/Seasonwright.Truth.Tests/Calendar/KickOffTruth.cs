using System.Globalization;
using Seasonwright.Core.Calendar;

namespace Seasonwright.Truth.Tests.Calendar;

public class KickOffTruth
{
    private static readonly TimeSpan Moment = TimeSpan.FromMinutes(10);

    private static DateTimeOffset InstantOf(DateTime wallClock, string zone) =>
        new KickOff(DateOnly.FromDateTime(wallClock), TimeOnly.FromDateTime(wallClock), zone).ToInstant();

    private static TimeSpan Offset(string text) => TimeSpan.Parse(text.TrimStart('+'), CultureInfo.InvariantCulture);

    /// <summary>
    /// Source: IANA time zone database 2025b, the rows of calendar-dst.csv (check values C10 to C13). A wall clock that the
    /// change skips is read forward by the skipped time, one it repeats as the earlier of the two: NodaTime's lenient rule.
    /// </summary>
    [Fact]
    public void Wall_clocks_around_every_change_of_the_table()
    {
        var rows = Cases.Rows("calendar/calendar-dst.csv");
        Assert.Equal(24, rows.Count);
        foreach (var row in rows)
        {
            var zone = row["zone"];
            var change = DateTimeOffset.Parse(row["change_utc"], CultureInfo.InvariantCulture);
            var (before, after) = (Offset(row["offset_before"]), Offset(row["offset_after"]));
            var lastBefore = (change - Moment).ToOffset(before);
            if (after < before) lastBefore -= before - after;
            Same(lastBefore, InstantOf(lastBefore.DateTime, zone));

            var firstAfter = change.ToOffset(after) + (after < before ? before - after + Moment : Moment);
            Same(firstAfter, InstantOf(firstAfter.DateTime, zone));

            if (after > before)
            {
                // The clock shows no such time: ten minutes into the gap is ten minutes after the change.
                var skipped = (change.ToOffset(before) + Moment).DateTime;
                Same((change + Moment).ToOffset(after), InstantOf(skipped, zone));
            }
            else
            {
                // Shown twice: the first time is meant.
                var repeated = (change.ToOffset(after) + Moment).DateTime;
                Same(new DateTimeOffset(repeated, before), InstantOf(repeated, zone));
            }
        }

        static void Same(DateTimeOffset expected, DateTimeOffset actual) =>
            Assert.Equal((expected, expected.Offset), (actual, actual.Offset));
    }

    /// <summary>Source: IANA time zone database 2025b (check value C14).</summary>
    [Theory]
    [InlineData("America/Phoenix", "-07:00")]
    [InlineData("Asia/Kolkata", "05:30")]
    [InlineData("Asia/Kathmandu", "05:45")]
    [InlineData("America/Sao_Paulo", "-03:00")]
    public void Zones_without_a_change_in_2021(string zone, string offset)
    {
        foreach (var day in new DaySpan(new DateOnly(2021, 1, 1), new DateOnly(2021, 12, 31)).Days())
            Assert.Equal(Offset(offset), new KickOff(day, new TimeOnly(15, 0), zone).ToInstant().Offset);
    }

    /// <summary>Source: IANA time zone database 2025b (check value C15): 30 December 2011 never was in Apia, so its three o'clock is the next day's.</summary>
    [Fact]
    public void A_day_that_a_zone_left_out() => Assert.Equal(
        new DateTimeOffset(2011, 12, 31, 15, 0, 0, TimeSpan.FromHours(14)),
        new KickOff(new DateOnly(2011, 12, 30), new TimeOnly(15, 0), "Pacific/Apia").ToInstant());

    /// <summary>Source: IANA time zone database 2025b (check value C16). Weeks are counted in days; their hours differ.</summary>
    [Theory]
    [InlineData(12, 167)]
    [InlineData(43, 169)]
    [InlineData(23, 168)]
    public void Hours_in_a_berlin_week_of_2021(int week, int hours)
    {
        var days = new IsoWeek(2021, week).Days;
        Assert.Equal(7, days.Length);
        Assert.Equal(hours, (Midnight(days.Last.AddDays(1)) - Midnight(days.First)).TotalHours);

        static DateTimeOffset Midnight(DateOnly day) => new KickOff(day, TimeOnly.MinValue, "Europe/Berlin").ToInstant();
    }

    [Theory]
    [InlineData("Europe/Berlin", true)]
    [InlineData("Etc/UTC", true)]
    [InlineData("Europe/Atlantis", false)]
    [InlineData("", false)]
    public void Zones_are_iana_names(string id, bool known) => Assert.Equal(known, KickOff.IsZone(id));
}
