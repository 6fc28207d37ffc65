using System.Globalization;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Fixtures;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>
/// Calendars as lists (iCalendar, RFC 5545): the sample gives what a careful human reads from it (tests/Cases/fixtures/samples/ORIGIN.md),
/// and each rule of the standard that a list needs is held on its own.
/// </summary>
public sealed class CalendarListTests
{
    private const string Sample = "samples/fixtures-09-calendar.ics";

    /// <summary>kind,uid,date,date_to,start,end,title,opponent,venue,status,place,ask</summary>
    private static IEnumerable<string[]> Expected(string kind) => FixtureCases.ExpectedRows(Sample).Select(row => row.Split('|')).Where(row => row[0] == kind);

    [Fact]
    public void The_matches_of_the_sample_are_those_expected()
    {
        var list = FixtureCases.Read(Sample, "Harbour Vale");
        Assert.Empty(list.Problems);
        Assert.Equal(
            Expected("match").Select(row => string.Join('|', $"{row[1]}@harbour-vale.invalid", row[2], row[3], row[4], row[7], row[8], row[9], row[10])),
            list.Rows.Select(row => string.Join('|', row.SourceId, Day(row.Day), Day(row.LastDay), row.KickOff?.ToString("HH:mm", CultureInfo.InvariantCulture) ?? "", row.Opponent ?? "",
                row.Venue?.ToString().ToLowerInvariant() ?? "", row.Status.ToString().ToLowerInvariant(), row.Place ?? "")), StringComparer.Ordinal);
    }

    [Fact]
    public void A_round_without_teams_is_asked_and_goes_where_the_answer_says()
    {
        var finals = Assert.Single(FixtureCases.Expected(Sample).GetProperty("questions").EnumerateArray(), question => question.GetProperty("id").GetString() == "Q-finals");
        var list = FixtureCases.Read(Sample, "Harbour Vale");
        var asked = Assert.Single(list.Questions, question => question.Kind == "Q-finals");
        Assert.Equal(finals.GetProperty("options").GetArrayLength(), asked.Options.Count);
        Assert.Equal(asked.Id, Assert.Single(list.Rows[^1].Ask));
        Answers Saying(string answer) => Answers.Read(SourceText.OfText("answers", $$"""{"{{asked.Id}}":"{{answer}}"}""")).Answers;
        Assert.Equal(MatchStatus.Conditional, FixtureCases.Read(Sample, "Harbour Vale", Saying("match")).Rows[^1].Status);
        Assert.Equal(list.Rows.Count - 1, FixtureCases.Read(Sample, "Harbour Vale", Saying("event")).Rows.Count);
        Assert.Contains(EventReader.Read(FixtureCases.Source(Sample), new EventReading(Saying("event"))).Rows, row => row.Title.StartsWith("Lantern Cup", StringComparison.Ordinal) && row.To == new DateOnly(2027, 4, 18));
    }

    [Fact]
    public void The_other_entries_of_the_sample_are_events_and_its_practices_are_told()
    {
        var list = EventReader.Read(FixtureCases.Source(Sample), new EventReading(Season: new DaySpan(new(2026, 8, 1), new(2027, 5, 31))));
        Assert.Empty(list.Problems);
        Assert.Equal(Expected("event").Select(row => $"{row[6]}|{row[2]}|{(row[3].Length > 0 ? row[3] : row[2])}"), list.Rows.Select(row => $"{row.Title}|{Day(row.From)}|{Day(row.To)}"), StringComparer.Ordinal);
        Assert.Equal(2, list.Skipped.Count(skipped => skipped.Kind == "calendar-repeats"));
        Assert.Equal(Expected("match").Count(), list.Skipped.Count(skipped => skipped.Kind == "calendar-match"));
    }

    [Theory]
    // 3.3.5 form 2 (UTC) shown on the calendar's clock, on both sides of a change of the clock.
    [InlineData("X-WR-TIMEZONE:Europe/Copenhagen\nBEGIN:VEVENT\nUID:a\nDTSTART:20261024T160000Z\nSUMMARY:Vale - Brovik\nEND:VEVENT", "2026-10-24 18:00")]
    [InlineData("X-WR-TIMEZONE:Europe/Copenhagen\nBEGIN:VEVENT\nUID:a\nDTSTART:20261025T170000Z\nSUMMARY:Vale - Brovik\nEND:VEVENT", "2026-10-25 18:00")]
    // UTC of a calendar that names no zone: the day, and no time that may be wrong.
    [InlineData("BEGIN:VEVENT\nUID:a\nDTSTART:20261024T160000Z\nSUMMARY:Vale - Brovik\nEND:VEVENT", "2026-10-24 ")]
    // Form 1 (floating) and form 3 (with a zone) are the clock of the place.
    [InlineData("BEGIN:VEVENT\nUID:a\nDTSTART:20261024T160000\nSUMMARY:Vale - Brovik\nEND:VEVENT", "2026-10-24 16:00")]
    [InlineData("BEGIN:VEVENT\nUID:a\nDTSTART;TZID=America/New_York:20261024T193000\nSUMMARY:Vale - Brovik\nEND:VEVENT", "2026-10-24 19:30")]
    // 3.3.4: a day without a time; DTEND is the day after the last.
    [InlineData("BEGIN:VEVENT\nUID:a\nDTSTART;VALUE=DATE:20261024\nDTEND;VALUE=DATE:20261025\nSUMMARY:Vale - Brovik\nEND:VEVENT", "2026-10-24 ")]
    // 3.1: a folded line, here inside a word; 3.3.11: escaped commas.
    [InlineData("BEGIN:VEVENT\nUID:a\nDTSTART;VALUE=DATE:20261024\nSUMMARY:Vale - Bro\n vik\nEND:VEVENT", "2026-10-24 ")]
    public void Times_are_those_of_the_venue_s_clock(string body, string expected)
    {
        var row = Assert.Single(Read(body).Rows);
        Assert.Equal(("Brovik", expected), (row.Opponent, $"{Day(row.Day)} {row.KickOff?.ToString("HH:mm", CultureInfo.InvariantCulture)}"));
    }

    [Theory]
    [InlineData("STATUS:CANCELLED", MatchStatus.Cancelled)]
    [InlineData("STATUS:TENTATIVE", MatchStatus.Provisional)]
    [InlineData("STATUS:CONFIRMED", MatchStatus.Confirmed)]
    public void The_state_of_an_entry_is_the_state_of_its_match(string status, MatchStatus expected) =>
        Assert.Equal(expected, Assert.Single(Read($"BEGIN:VEVENT\nUID:a\nDTSTART;VALUE=DATE:20261024\n{status}\nSUMMARY:Vale - Brovik\nEND:VEVENT").Rows).Status);

    [Fact]
    public void A_match_taken_in_again_is_the_same_one_by_its_uid_wherever_it_went()
    {
        string Of(string day) => $"BEGIN:VEVENT\nUID:a\nDTSTART;TZID=Europe/Oslo:{day}T180000\nSUMMARY:Vale - Brovik\nEND:VEVENT";
        Assert.Equal(Assert.Single(Read(Of("20261024")).Rows).SourceId, Assert.Single(Read(Of("20261101")).Rows).SourceId);
    }

    /// <summary>3.8.5: the rule, without excluded times, with the one that was moved; what days it names is counted by hand in a printed year.</summary>
    [Theory]
    [InlineData("RRULE:FREQ=WEEKLY;COUNT=4", "2026-10-05 2026-10-12 2026-10-19 2026-10-26")]
    [InlineData("RRULE:FREQ=WEEKLY;UNTIL=20261019\nEXDATE;VALUE=DATE:20261012", "2026-10-05 2026-10-19")]
    [InlineData("RRULE:FREQ=MONTHLY;BYDAY=1MO;COUNT=3", "2026-10-05 2026-11-02 2026-12-07")]
    [InlineData("RDATE;VALUE=DATE:20261008", "2026-10-05 2026-10-08")]
    [InlineData("RRULE:FREQ=WEEKLY;COUNT=3\nEND:VEVENT\nBEGIN:VEVENT\nUID:a\nRECURRENCE-ID;VALUE=DATE:20261012\nDTSTART;VALUE=DATE:20261014\nSUMMARY:Hall closed", "2026-10-05 2026-10-14 2026-10-19")]
    [InlineData("RRULE:FREQ=WEEKLY", "")]
    [InlineData("RRULE:FREQ=HOURLY;COUNT=5", "")]
    [InlineData("RRULE:FREQ=DAILY;COUNT=2147483647", "")]
    [InlineData("RRULE:FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30;UNTIL=99990101", "")]
    public void Days_that_recur_are_events_each_and_what_never_ends_is_told(string rule, string days)
    {
        var list = Events($"BEGIN:VEVENT\nUID:a\nDTSTART;VALUE=DATE:20261005\nSUMMARY:Hall closed\n{rule}\nEND:VEVENT\nBEGIN:VEVENT\nUID:b\nDTSTART;VALUE=DATE:20261224\nSUMMARY:Christmas break\nEND:VEVENT");
        Assert.Empty(list.Problems);
        Assert.Equal(days, string.Join(' ', list.Rows.Where(row => row.Title == "Hall closed").Select(row => Day(row.From)).Order(StringComparer.Ordinal)));
        Assert.Equal(days.Length == 0 ? 1 : 0, list.Skipped.Count(skipped => skipped.Kind == "calendar-repeats"));
    }

    /// <summary>3.6.1: an end is not part of the entry, and whole days may say how many they are (3.3.6).</summary>
    [Theory]
    [InlineData("DTSTART;VALUE=DATE:20261005\nDURATION:P5D", "2026-10-05 2026-10-09")]
    [InlineData("DTSTART;VALUE=DATE:20261005\nDURATION:P1W", "2026-10-05 2026-10-11")]
    [InlineData("DTSTART;VALUE=DATE:20261005\nDURATION:PT5H", "2026-10-05 ")]
    [InlineData("DTSTART;VALUE=DATE:20261005\nDTEND;VALUE=DATE:20261010", "2026-10-05 2026-10-09")]
    [InlineData("DTSTART:20261005T000000\nDTEND:20261010T000000", "2026-10-05 2026-10-09")]
    [InlineData("DTSTART:20261005T200000\nDTEND:20261006T000000", "2026-10-05 ")]
    [InlineData("DTSTART:20261005T200000\nDTEND:20261006T010000", "2026-10-05 2026-10-06")]
    [InlineData("DTSTART:20261005T200000\nDURATION:PT4H", "2026-10-05 ")]
    public void The_last_day_is_the_last_that_belongs_to_it(string when, string days)
    {
        var row = Assert.Single(Events($"BEGIN:VEVENT\nUID:a\n{when}\nSUMMARY:Autumn break\nEND:VEVENT").Rows);
        Assert.Equal(days, $"{Day(row.From)} {(row.To == row.From ? "" : Day(row.To))}");
    }

    [Fact]
    public void A_moved_time_goes_where_its_series_goes_and_alone_it_is_an_entry_like_any()
    {
        const string moved = "BEGIN:VEVENT\nUID:a\nRECURRENCE-ID;VALUE=DATE:20261012\nDTSTART;VALUE=DATE:20261014\nSUMMARY:Practice in the school gym\nEND:VEVENT\n", other = "BEGIN:VEVENT\nUID:b\nDTSTART;VALUE=DATE:20261224\nSUMMARY:Christmas break\nEND:VEVENT";
        Assert.Equal(2, Events(moved + other).Rows.Count);
        Assert.Equal(2, Events($"BEGIN:VEVENT\nUID:a\nDTSTART;VALUE=DATE:20261005\nSUMMARY:Practice\nRRULE:FREQ=WEEKLY;COUNT=4\nEND:VEVENT\n{moved}{other}").Skipped.Count(skipped => skipped.Kind == "calendar-repeats"));
    }

    [Fact]
    public void A_camp_at_a_place_is_an_event_and_a_club_at_another_is_a_match()
    {
        string Of(string summary) => $"BEGIN:VEVENT\nUID:a\nDTSTART;VALUE=DATE:20261005\nSUMMARY:{summary}\nEND:VEVENT";
        Assert.Equal("Camp at Skagrund", Assert.Single(Events(Of("Camp at Skagrund")).Rows).Title);
        Assert.Equal("Brovik", Assert.Single(Read(Of("Vale at Brovik")).Rows).Opponent);
    }

    /// <summary>Windows' name of the zone (Unicode CLDR, windowsZones: "Romance Standard Time" is Europe/Paris).</summary>
    [Fact]
    public void A_calendar_that_names_its_zone_as_Windows_does_shows_utc_on_its_clock() =>
        Assert.Equal(new TimeOnly(18, 0), Assert.Single(Read("X-WR-TIMEZONE:Romance Standard Time\nBEGIN:VEVENT\nUID:a\nDTSTART:20261024T160000Z\nSUMMARY:Vale - Brovik\nEND:VEVENT").Rows).KickOff);

    [Fact]
    public void Health_details_beside_a_match_or_in_other_entries_are_held_back_and_told()
    {
        const string body = "BEGIN:VEVENT\nUID:a\nDTSTART;VALUE=DATE:20261024\nSUMMARY:Vale - Brovik\nDESCRIPTION:Mia is out\\, knee surgery\nEND:VEVENT\nBEGIN:VEVENT\nUID:b\nDTSTART;VALUE=DATE:20261026\nSUMMARY:Mia: MRI\nEND:VEVENT";
        var list = Read(body);
        Assert.Null(Assert.Single(list.Rows).Remarks);
        Assert.Contains(list.Skipped, skipped => skipped.Kind == "event-health-words" && skipped.Line == list.Rows[0].Line);
        Assert.DoesNotContain(list.Skipped.Concat(Events(body).Skipped), skipped => skipped.Text.Contains("Mia", StringComparison.Ordinal));
        var csv = FixtureReader.Read(SourceText.OfText("list", "Date,Opponent,Notes\n2026-09-05,Kalnes,Mia injured; bus at 14:00\n2026-09-12,Turnes,\n"), new FixtureOptions());
        Assert.Equal("bus at 14:00", csv.Rows[0].Remarks);
    }

    private static EventList Events(string body) => EventReader.Read(Calendar(body), new EventReading());

    private static FixtureList Read(string body)
    {
        var list = FixtureReader.Read(Calendar(body), new FixtureOptions("Vale"));
        Assert.Empty(list.Problems);
        return list;
    }

    private static SourceText Calendar(string body) => SourceText.OfText("club.ics", $"BEGIN:VCALENDAR\nVERSION:2.0\nPRODID:-//x//y//EN\n{body}\nEND:VCALENDAR\n".Replace("\n", "\r\n", StringComparison.Ordinal));

    private static string Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";
}
