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

    private static FixtureList Read(string body)
    {
        var list = FixtureReader.Read(SourceText.OfText("club.ics", $"BEGIN:VCALENDAR\nVERSION:2.0\nPRODID:-//x//y//EN\n{body}\nEND:VCALENDAR\n".Replace("\n", "\r\n", StringComparison.Ordinal)), new FixtureOptions("Vale"));
        Assert.Empty(list.Problems);
        return list;
    }

    private static string Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";
}
