using CsCheck;
using Ical.Net;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Calendars;
using Seasonwright.Documents.Tests.Year;

namespace Seasonwright.Documents.Tests.HandOut;

/// <summary>What holds of the calendar of every season. Source of the form: RFC 5545, 3.1 (lines, folding), 3.3.11 (text), 3.6.1 (what an entry must have, and may have once).</summary>
public class CalendarLaws
{
    private static readonly CalendarChoices Everything = new(Practices: true, KeyMatches: true);

    private static readonly Edition Draft = new(null, new DateOnly(2027, 10, 18));

    private static string Written(Season season, Setup setup, CalendarRevisions? revisions = null) => SeasonCalendar.Write(season, setup, Draft, Everything, revisions ?? CalendarRevisions.None);

    [Fact]
    public void Calendars_of_any_season_keep_the_form() => RandomSeasons.Any.Sample(
        season => KeepsTheForm(season, Setup.Empty(new("team"))), iter: 100, print: season => season.Id.Text);

    [Fact]
    public void Calendars_of_hostile_seasons_keep_the_form()
    {
        foreach (var (season, setup) in HostileSeasons.All) KeepsTheForm(season, setup);
    }

    private static void KeepsTheForm(Season season, Setup setup)
    {
        var text = Written(season, setup);
        Assert.Equal(text, Written(season, setup));
        var entries = ContentLines.Entries(text);
        Assert.Distinct(entries.Select(entry => entry.Value("UID")!), StringComparer.Ordinal);
        Assert.All(entries, entry =>
        {
            foreach (var needed in new[] { "UID", "DTSTAMP", "DTSTART", "SUMMARY", "SEQUENCE", "STATUS", "TRANSP" }) Assert.NotNull(entry.Value(needed));
            foreach (var once in new[] { "DTEND", "LOCATION", "DESCRIPTION", "CATEGORIES", "COLOR" }) entry.Value(once);
            // A whole day is never written as midnight, and the end is of the same kind as the start.
            Assert.Equal(entry.Value("DTSTART")!.Contains("VALUE=DATE:", StringComparison.Ordinal), entry.Value("DTEND")?.Contains("VALUE=DATE:", StringComparison.Ordinal) ?? false || entry.Value("DTEND") is null && entry.Value("DTSTART")!.Contains("VALUE=DATE:", StringComparison.Ordinal));
            Assert.DoesNotContain(entry, line => line.StartsWith("ATTACH", StringComparison.Ordinal) || line.StartsWith("RRULE", StringComparison.Ordinal));
        });
        // Nothing dated is left out but what was postponed, and nothing is there twice.
        var expected = season.AllMatches.Count(match => match.Day is not null && match.Status != MatchStatus.Postponed)
            + season.AllEvents.Sum(item => 1 + (item.Legs?.Count ?? 0)) + season.AllTestDays.Count() + season.Weeks.Count(week => season.PracticesOf(week.Id) is { Count: > 0 });
        Assert.Equal(expected, entries.Count);

        var read = Assert.Single(CalendarCollection.Load(text)!);
        Assert.Equal(expected, read.Events.Count);

        // Read again it is what it was: nothing has changed, nothing is numbered anew.
        var again = CalendarRevisions.After(text, "season.ics", season.Id);
        Assert.Null(again.Problem);
        Assert.Equal(text, Written(season, setup, again.Revisions));
    }

    /// <summary>Whatever becomes of a season, everybody who takes each new calendar in order ends with what the season holds.</summary>
    [Fact]
    public void Numbers_never_fall_and_rise_with_every_change() => Gen.Select(RandomSeasons.Any, RandomSeasons.Any, RandomSeasons.Any).Sample((one, two, three) =>
    {
        var setup = Setup.Empty(new("team"));
        var held = new Dictionary<string, (int Sequence, string Content)>(StringComparer.Ordinal);
        var text = Written(one, setup);
        foreach (var season in new[] { one, two, three, three, one })
        {
            // The same season at another time of its life.
            var now = new Season(one.Id, season.Facts);
            text = Written(now, setup, CalendarRevisions.After(text, "season.ics", now.Id).Revisions);
            var entries = ContentLines.Entries(text).ToDictionary(entry => entry.Value("UID")!, StringComparer.Ordinal);
            Assert.All(held.Keys, uid => Assert.True(entries.ContainsKey(uid), uid));
            foreach (var (uid, entry) in entries)
            {
                var content = string.Join('\n', entry.Where(line => !line.StartsWith("SEQUENCE", StringComparison.Ordinal)));
                var sequence = int.Parse(entry.Value("SEQUENCE")!, System.Globalization.CultureInfo.InvariantCulture);
                if (held.TryGetValue(uid, out var before)) Assert.Equal(before.Sequence + (before.Content == content ? 0 : 1), sequence);
                held[uid] = (sequence, content);
            }
            var alive = ContentLines.Entries(Written(now, setup)).Select(entry => entry.Value("UID")!).ToHashSet(StringComparer.Ordinal);
            Assert.All(entries.Where(entry => !alive.Contains(entry.Key)), entry => Assert.Equal("CANCELLED", entry.Value.Value("STATUS")));
        }
    }, iter: 20, print: _ => "");

    /// <summary>Bytes cut off, doubled or overwritten: a problem or a calendar, never an error.</summary>
    [Fact]
    public void A_damaged_calendar_is_a_problem_or_a_calendar()
    {
        var season = HostileSeasons.All.ElementAt(14);
        var whole = Written(season.Season, season.Setup);
        var problems = 0;
        for (var seed = 1; seed <= 150; seed++)
        {
            var random = new Random(seed);
            var (from, to) = (random.Next(whole.Length), random.Next(whole.Length));
            var damaged = (seed % 3) switch
            {
                0 => whole[..from],
                1 => whole[..Math.Max(from, to)] + whole[Math.Min(from, to)..],
                _ when seed % 2 == 0 => whole.Replace("UID:", "UID:\u0001;", StringComparison.Ordinal).Replace("SEQUENCE:0", "SEQUENCE:2147483647", StringComparison.Ordinal).Replace("UID:\u0001;" + CalendarUidOf(whole), "UID:" + CalendarUidOf(whole), StringComparison.Ordinal).Replace("TZID=Europe", "TZID=\"Nowhere\u0002\"", StringComparison.Ordinal),
                _ => string.Concat(whole.AsSpan(0, from), "\u0000=;:\"\r\nBEGIN:VEVENT\r\nDTSTART:99999999", whole.AsSpan(from)),
            };
            var reading = CalendarRevisions.After(damaged, "season.ics", season.Season.Id);
            Assert.True(reading.Problem is null ^ reading.Revisions is null);
            if (reading.Problem is not null) problems++;
            else ContentLines.Of(Written(season.Season, season.Setup, reading.Revisions));
        }
        Assert.InRange(problems, 30, 120);
    }

    private static string CalendarUidOf(string text) => text.Split("UID:")[1].Split("\r\n")[0];
}
