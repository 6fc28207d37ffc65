using System.Text;
using CsCheck;
using Seasonwright.Core.Calendar;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Fixtures;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>Calendars and web tables as nobody should send them: a problem or rows that are all told, never a crash, and no more memory than a file of that size deserves.</summary>
public sealed class CalendarFaultTests
{
    /// <summary>What one reading may allocate, bytes for each byte of the file, and at least.</summary>
    private const long PerByte = 4_000, AtLeast = 40_000_000;

    private static readonly string[] Properties =
    [
        "RRULE:FREQ=SECONDLY", "RRULE:FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30", "RRULE:FREQ=DAILY;COUNT=2147483647", "RRULE:FREQ=DAILY;INTERVAL=0", "RRULE:FREQ=HOURLY;BYSETPOS=-1;UNTIL=99991231T235959Z", "RRULE:", "RRULE:NONSENSE",
        "RECURRENCE-ID;TZID=Europe/Oslo:20261020T180000", "RECURRENCE-ID:garbage", "EXDATE:20261024,20261025,x", "RDATE;VALUE=PERIOD:20261024T100000Z/PT1H", "EXRULE:FREQ=SECONDLY",
        "DURATION:PT1H30M", "DURATION:-P999999999W", "DURATION:P1Y", "DURATION:", "DTEND:20251024T100000Z", "DTEND;VALUE=DATE:20261024", "DTEND:99991231T235959Z", "DTEND;VALUE=DATE:99991231",
        "STATUS:", "STATUS:TENTATIVE", "STATUS:CANCELLED\r\nSTATUS:CONFIRMED", "SEQUENCE:-1", "SEQUENCE:99999999999999999999", "UID:", "UID:a\r\nUID:b", "LOCATION:\\,\\;\\n\\\\", "LOCATION;LANGUAGE=\"x:", "DESCRIPTION:" ,
        "BEGIN:VALARM\r\nTRIGGER:-PT15M\r\nEND:VALARM", "BEGIN:VEVENT\r\nEND:VEVENT", "BEGIN:VEVENT", "END:VCALENDAR", "END:VEVENT\r\nEND:VEVENT", "ATTACH;ENCODING=BASE64;VALUE=BINARY:!!!!", "ATTACH:file:///etc/passwd", "URL:http://example.invalid/",
        "X-A;B=C;D=\"e\nf\":g", "ATTENDEE;CN=\"A\":mailto:a@example.invalid", ":", ";", "=", "\u0001", "CATEGORIES:MATCH,,,;", "GEO:1e400;x", "SUMMARY;ALTREP=\"cid:x\":Vale - Brovik", "SUMMARY:" ,
    ];

    private static readonly string[] Starts =
    [
        "DTSTART;VALUE=DATE:20261024", "DTSTART:20261024T160000Z", "DTSTART;TZID=Europe/Oslo:20260329T023000", "DTSTART;TZID=Europe/Oslo:20261025T023000", "DTSTART;TZID=Nowhere/At All:20261024T160000", "DTSTART;TZID=\"Romance Standard Time\":20261024T160000",
        "DTSTART:00000000", "DTSTART:99991231T235959Z", "DTSTART:20261332T256199Z", "DTSTART:", "", "DTSTART;VALUE=PERIOD:20261024T160000Z/PT1H", "DTSTART;VALUE=DATE:20270229",
    ];

    // The first reading of all makes the tables of words, which belong to no file.
    static CalendarFaultTests() => Read(SourceText.OfText("first", "Event;From\nCamp;5 Feb 2027\n"));

    [Fact]
    public void Hundreds_of_broken_calendars_are_told_and_never_thrown()
    {
        var count = 0;
        foreach (var start in Starts)
        {
            foreach (var property in Properties)
            {
                Check($"BEGIN:VCALENDAR\r\nVERSION:2.0\r\nX-WR-TIMEZONE:Europe/Oslo\r\nBEGIN:VEVENT\r\nUID:a\r\n{start}\r\nSUMMARY:Vale - Brovik\r\n{property}\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n");
                count++;
            }
        }
        Assert.True(count >= 500, $"{count} calendars");
    }

    [Theory]
    [InlineData("BEGIN:VCALENDAR")]
    [InlineData("BEGIN:VCALENDAR\r\nBEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\nEND:VEVENT\r\nEND:VCALENDAR\r\nEND:VCALENDAR")]
    [InlineData("BEGIN:VCALENDAR\r\nEND:VCALENDAR")]
    [InlineData("BEGIN:VCALENDAR\r\nBEGIN:VTIMEZONE\r\nTZID:Europe/Oslo\r\nBEGIN:STANDARD\r\nRRULE:FREQ=SECONDLY\r\nDTSTART:19700101T000000\r\nEND:STANDARD\r\nEND:VTIMEZONE\r\nBEGIN:VEVENT\r\nDTSTART;TZID=Europe/Oslo:20261024T180000\r\nSUMMARY:Vale - Brovik\r\nEND:VEVENT\r\nEND:VCALENDAR")]
    [InlineData("BEGIN:VCALENDAR\nBEGIN:VEVENT\nSUMMARY:a\n b\n c\nEND:VEVENT\nEND:VCALENDAR\nBEGIN:VCALENDAR\nBEGIN:VEVENT\nSUMMARY:Vale - Brovik\nEND:VEVENT\nEND:VCALENDAR")]
    public void A_calendar_of_another_shape_is_told(string text) => Check(text);

    [Fact]
    public void A_calendar_as_large_as_a_file_may_be_is_read_within_bounds()
    {
        var text = new StringBuilder("BEGIN:VCALENDAR\r\n");
        for (var i = 0; i < SourceText.MostLines / 6 - 1; i++) text.Append(System.Globalization.CultureInfo.InvariantCulture, $"BEGIN:VEVENT\r\nUID:{i}\r\nDTSTART;VALUE=DATE:20261024\r\nRRULE:FREQ=SECONDLY\r\nSUMMARY:Vale - Brovik\r\nEND:VEVENT\r\n");
        Check(text.Append("END:VCALENDAR\r\n").ToString());
        Check("BEGIN:VCALENDAR\r\n" + string.Concat(Enumerable.Repeat("BEGIN:VEVENT\r\n", 9_000)));
    }

    [Fact]
    public void Any_bytes_turned_in_a_calendar_are_told_or_read()
    {
        var sample = File.ReadAllBytes(Path.Combine(FixtureCases.Folder, "samples", "fixtures-09-calendar.ics"));
        Gen.Select(Gen.Int[16, sample.Length - 1], Gen.Byte, Gen.Int[0, 40]).Sample((at, with, cut) =>
        {
            var bytes = sample.ToArray();
            bytes[at] = with;
            Check(SourceText.OfBytes("club.ics", bytes.AsSpan()[..(bytes.Length - cut)]));
        }, iter: 300);
    }

    [Theory]
    [InlineData("<table>")]
    [InlineData("<table><tr><td rowspan=99999999 colspan=99999999>Camp<td>5 Feb 2027</table>")]
    [InlineData("<table><tr><td rowspan=-1 colspan=0>Camp<td>5 Feb 2027<tr><td>x</table>")]
    [InlineData("<table><tr><td><script>alert(1)</script>Camp<td><style>x</style>5 Feb 2027<td><img src=x onerror=alert(1)></table>")]
    [InlineData("<!DOCTYPE html [<!ENTITY a \"&b;&b;\"><!ENTITY b SYSTEM \"file:///etc/passwd\">]><table><tr><td>&a;<td>5 Feb 2027</table>")]
    [InlineData("<html><iframe src=\"file:///etc/passwd\"></iframe><table><caption>x<tbody><th>Event<th>From<tr><td>Camp<td>2027-02-05")]
    [InlineData("<table><tr><td>Date<td>Opponent<tr><td>5 Sep 2026<td>\"Brovik\"\"\t;<tr><td>12 Sep 2026<td>Turnes</table>")]
    public void A_web_table_is_read_or_told_and_nothing_of_it_is_run(string html) => Check(html);

    [Fact]
    public void Tables_deep_in_tables_and_very_many_cells_stay_bounded()
    {
        Check(string.Concat(Enumerable.Repeat("<table><tr><td>", 2_000)) + "5 Feb 2027");
        Check("<table>" + string.Concat(Enumerable.Repeat("<tr><td rowspan=65534>5 Feb 2027<td colspan=1000>Camp", 3_000)));
        Check("<table><tr>" + string.Concat(Enumerable.Repeat("<td>x", 9_000)) + "</table>");
    }

    [Fact]
    public void A_copied_table_reads_as_its_rows_whatever_cells_are_joined()
    {
        var list = FixtureReader.Read(SourceText.OfText("page", "<table><tr><th>Date<th>Opponent<th>H/A<tr><td rowspan=2>Sat 5 Sep 2026<td>Brovik<td>H<tr><td>Turnes<br>II<td>A<tr><td>12 Sep 2026<td>Kal<b>mar</b><td>H</table>"), new FixtureOptions());
        Assert.Equal(["Brovik", "Turnes II", "Kalmar"], list.Rows.Select(row => row.Opponent), StringComparer.Ordinal);
    }

    private static void Check(string text)
    {
        Check(SourceText.OfText("club.ics", text));
        Check(SourceText.OfBytes("club.ics", Encoding.UTF8.GetBytes(text)));
    }

    private static void Check(SourceText source)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        var (fixtures, events) = Read(source);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, AtLeast + PerByte * source.Text.Length);
        Assert.All(fixtures.Problems.Concat(events.Problems), problem => Assert.True(problem.What.Length > 0 && problem.Mend.Length > 0));
        if (!source.Text.StartsWith("BEGIN:VCALENDAR", StringComparison.Ordinal)) return;
        foreach (var line in FixtureCases.EntryLines(source))
        {
            Assert.True(fixtures.Problems.Count > 0 || fixtures.Rows.Any(row => row.Line == line) || fixtures.Skipped.Any(skipped => skipped.Line == line), $"{line} is lost as a match");
            Assert.True(events.Problems.Count > 0 || events.Rows.Any(row => row.Line == line) || events.TestDays.Any(row => row.Line == line) || events.Skipped.Any(skipped => skipped.Line == line), $"{line} is lost as an event");
        }
    }

    private static (FixtureList Fixtures, EventList Events) Read(SourceText source) =>
        (FixtureReader.Read(source, new FixtureOptions("Vale")), EventReader.Read(source, new EventReading(Season: new DaySpan(new(2026, 8, 1), new(2027, 5, 31)))));
}
