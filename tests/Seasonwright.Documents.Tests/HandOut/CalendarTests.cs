using System.Globalization;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Calendars;
using Seasonwright.Documents.Tests.Year;

namespace Seasonwright.Documents.Tests.HandOut;

public class CalendarTests
{
    private static readonly Edition Draft = new(null, new DateOnly(2027, 10, 18));

    private static readonly Setup Copenhagen = Setup.Empty(new("team")).With(
        ((Accepted)Decider.Decide(Setup.Empty(new("team")), new SetLocale(new LocaleSettings(Zone: "Europe/Copenhagen")))).Step);

    private static string Write(Season season, CalendarChoices? choices = null, CalendarRevisions? revisions = null) =>
        SeasonCalendar.Write(season, Copenhagen, Draft, choices ?? new CalendarChoices(), revisions ?? CalendarRevisions.None);

    private static IReadOnlyList<string> Only(Season season, CalendarChoices? choices = null, CalendarRevisions? revisions = null) => Assert.Single(ContentLines.Entries(Write(season, choices, revisions)));

    private static Season With(params SeasonEdit[] edits) => new SeasonBook(20).Write(edits).Season;

    private static Season After(Season season, SeasonEdit edit) => season.With(((Accepted)Decider.Decide(season, edit)).Step);

    private static Match Turnes(DateOnly? day = null, TimeOnly? time = null, MatchStatus status = MatchStatus.Confirmed) =>
        new(new("m"), day ?? new DateOnly(2027, 10, 16), KickOff: time, Opponent: "Turnes", Venue: Venue.Home, Status: status, Place: "Harbour Hall", Competition: "League", Round: "7");

    /// <summary>Source: RFC 5545, 3.3.5 (form 3), 3.8.2.2, 3.8.2.4, 3.8.1.11, 3.8.2.7.</summary>
    [Fact]
    public void A_match_with_a_kick_off_takes_two_hours_of_the_venues_clock()
    {
        var entry = Only(With(new SetMatch(Turnes(time: new(18, 30)))));
        Assert.Equal(";TZID=Europe/Copenhagen:20271016T183000", entry.Value("DTSTART"));
        Assert.Equal(";TZID=Europe/Copenhagen:20271016T203000", entry.Value("DTEND"));
        Assert.Equal("Home v Turnes", entry.Value("SUMMARY"));
        Assert.Equal("Harbour Hall", entry.Value("LOCATION"));
        Assert.Equal(@"Harbour Vale\nLeague\, 7", entry.Value("DESCRIPTION"));
        Assert.Equal("CONFIRMED OPAQUE Match 0", string.Join(' ', new[] { "STATUS", "TRANSP", "CATEGORIES", "SEQUENCE" }.Select(name => entry.Value(name))));
        Assert.Equal("20271018T000000Z", entry.Value("DTSTAMP"));
    }

    [Fact]
    public void Abroad_the_venues_clock_holds() => Assert.Equal(
        ";TZID=America/New_York:20271016T183000", Only(With(new SetMatch(Turnes(time: new(18, 30)) with { Zone = "America/New_York" }))).Value("DTSTART"));

    /// <summary>Source: RFC 5545, 3.6.1: an entry of whole days, its end not part of it.</summary>
    [Fact]
    public void Without_a_kick_off_it_is_the_whole_day_and_never_midnight()
    {
        var entry = Only(With(new SetMatch(Turnes())));
        Assert.Equal(";VALUE=DATE:20271016", entry.Value("DTSTART"));
        Assert.Equal(";VALUE=DATE:20271017", entry.Value("DTEND"));
        Assert.DoesNotContain(entry, line => line.Contains("T000000", StringComparison.Ordinal) && !line.StartsWith("DTSTAMP", StringComparison.Ordinal));
    }

    /// <summary>With its hour it takes its minutes of the team's clock; without, its day, and says which part of it. Source: RFC 5545, 3.3.5 (form 3), 3.6.1.</summary>
    [Fact]
    public void A_session_takes_its_minutes_or_its_day()
    {
        var session = new Session(new("s"), new DateOnly(2027, 10, 19), DaySlot.Evening, SessionKind.Practice, new Minutes(85), new Rpe(5.5m), Start: new(18, 30), Place: "Sports hall");
        var entry = Only(With(new SetSession(session)));
        Assert.Equal(";TZID=Europe/Copenhagen:20271019T183000 ;TZID=Europe/Copenhagen:20271019T195500", $"{entry.Value("DTSTART")} {entry.Value("DTEND")}");
        Assert.Equal(@"Practice|Sports hall|Harbour Vale\n85 min\, RPE 5.5|Practice", string.Join('|', new[] { "SUMMARY", "LOCATION", "DESCRIPTION", "CATEGORIES" }.Select(name => entry.Value(name))));
        entry = Only(With(new SetSession(session with { Start = null, Kind = SessionKind.Speed, IsCancelled = true })));
        Assert.Equal(";VALUE=DATE:20271019 CANCELLED", $"{entry.Value("DTSTART")} {entry.Value("STATUS")}");
        Assert.Contains("Speed (evening)", entry.Value("SUMMARY"), StringComparison.Ordinal);
        Assert.Empty(ContentLines.Entries(Write(With(new SetSession(session)), new CalendarChoices(Sessions: false))));
    }

    /// <summary>Practices that are on their days are told on them, not once more over the week.</summary>
    [Fact]
    public void Practices_are_told_once()
    {
        var week = new SeasonBook(20).Season.Weeks[15];
        SeasonEdit[] edits = [new SetPractices(week.Id, week.Id, new Practices(3)), new SetSession(new Session(new("s"), week.Days.First, DaySlot.Evening, SessionKind.Practice, new Minutes(85), new Rpe(5m)))];
        Assert.Equal("Practice (evening)", Only(With(edits), new CalendarChoices(Practices: true)).Value("SUMMARY"));
    }

    /// <summary>A calendar for one group has the sessions of everyone and of that group.</summary>
    [Fact]
    public void Sessions_of_another_group_are_left_out()
    {
        Session For(string id, string? group) => new(new(id), new DateOnly(2027, 10, 19), DaySlot.Morning, SessionKind.Power, new Minutes(40), new Rpe(5m), Name: id, Groups: group is null ? null : new([new GroupId(group)]));
        var season = With(new SetGroup(new GroupLine(new("a"), "Backs")), new SetGroup(new GroupLine(new("b"), "Wings")), new SetSession(For("all", null)), new SetSession(For("of-backs", "a")), new SetSession(For("of-wings", "b")));
        Assert.Equal(["all (morning)", "of-backs (morning)"], ContentLines.Entries(Write(season, new CalendarChoices(Group: "Backs"))).Select(entry => entry.Value("SUMMARY")).Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    [Theory]
    [InlineData(MatchStatus.Provisional, "Home v Turnes (provisional)")]
    [InlineData(MatchStatus.Conditional, "Home v Turnes (conditional)")]
    public void What_is_not_sure_is_tentative_and_says_so(MatchStatus status, string title)
    {
        var entry = Only(With(new SetMatch(Turnes(status: status))));
        Assert.Equal("TENTATIVE", entry.Value("STATUS"));
        Assert.Equal(title, entry.Value("SUMMARY"));
    }

    [Fact]
    public void A_window_takes_all_its_days()
    {
        var entry = Only(With(new SetMatch(Turnes(time: new(18, 30), status: MatchStatus.Window) with { LastDay = new DateOnly(2027, 10, 20) })));
        Assert.Equal(";VALUE=DATE:20271016 ;VALUE=DATE:20271021 TENTATIVE", $"{entry.Value("DTSTART")} {entry.Value("DTEND")} {entry.Value("STATUS")}");
        Assert.Equal("Home v Turnes (on one of these days)", entry.Value("SUMMARY"));
    }

    [Fact]
    public void A_cancelled_match_stays_and_says_so()
    {
        var entry = Only(With(new SetMatch(Turnes(status: MatchStatus.Cancelled))));
        Assert.Equal("CANCELLED Called off: Home v Turnes", $"{entry.Value("STATUS")} {entry.Value("SUMMARY")}");
    }

    [Fact]
    public void A_postponed_match_is_left_out_and_called_off_for_those_who_hold_it()
    {
        var planned = With(new SetMatch(Turnes(time: new(18, 30))));
        var postponed = After(planned, new SetMatch(Turnes(day: null, time: new(18, 30), status: MatchStatus.Postponed) with { Day = null }));
        Assert.Empty(ContentLines.Entries(Write(postponed)));
        var entry = Only(postponed, null, CalendarRevisions.After(Write(planned), "a.ics", planned.Id).Revisions);
        Assert.Equal(";TZID=Europe/Copenhagen:20271016T183000 CANCELLED 1", $"{entry.Value("DTSTART")} {entry.Value("STATUS")} {entry.Value("SEQUENCE")}");
    }

    /// <summary>Source: RFC 5545, 3.8.7.4: the number begins at 0 and rises with each change, also with one that takes a change back.</summary>
    [Fact]
    public void A_move_and_its_undo_raise_the_number_by_one_each()
    {
        var season = With(new SetMatch(Turnes(time: new(18, 30))), new SetTestDay(new TestDay(new("t"), new(2027, 8, 3), "Jumps")));
        var moved = After(season, new MoveMatch(new("m"), new DateOnly(2027, 10, 17), null, new TimeOnly(18, 30)));
        var first = Write(season);
        var second = Write(moved, null, CalendarRevisions.After(first, "a.ics", season.Id).Revisions);
        var third = Write(season, null, CalendarRevisions.After(second, "a.ics", season.Id).Revisions);
        Assert.Equal("0 0|0 1|0 2", string.Join('|', new[] { first, second, third }.Select(text => string.Join(' ', ContentLines.Entries(text).Select(entry => entry.Value("SEQUENCE"))))));
        Assert.Equal(third, Write(season, null, CalendarRevisions.After(third, "a.ics", season.Id).Revisions));
        Assert.Single(new[] { first, second, third }.Select(text => string.Join(' ', ContentLines.Entries(text).Select(entry => entry.Value("UID")))).Distinct(StringComparer.Ordinal));
    }

    [Fact]
    public void A_log_numbers_by_its_entries()
    {
        var season = With(new SetMatch(Turnes(status: MatchStatus.Postponed)), new SetTestDay(new TestDay(new("t"), new(2027, 8, 3), "Jumps")));
        string Told(int touched) => string.Join(' ', ContentLines.Entries(Write(season, null, CalendarRevisions.Counted(key => key == SeasonFacets.Match.Of(new("m")) ? touched : 1, []))).Select(entry => $"{entry.Value("STATUS")} {entry.Value("SEQUENCE")}"));
        Assert.Equal("CONFIRMED 0", Told(1));
        Assert.Equal("CONFIRMED 0 CANCELLED 5", Told(5));
    }

    [Fact]
    public void A_match_on_the_teams_clock_is_numbered_with_the_teams_settings()
    {
        int Sequence(Match match) => int.Parse(Only(With(new SetMatch(match)), null, CalendarRevisions.Counted(key => key == SetupFacets.Locale.Of(default) ? 7 : 1, [])).Value("SEQUENCE")!, CultureInfo.InvariantCulture);
        Assert.Equal(7, Sequence(Turnes(time: new(18, 30))));
        // A number never falls: not when the kick-off is taken away, nor when the match gets a zone of its own.
        Assert.Equal(7, Sequence(Turnes()));
        Assert.Equal(7, Sequence(Turnes(time: new(18, 30)) with { Zone = "Europe/Berlin" }));
    }

    [Fact]
    public void Kinds_switched_off_are_called_off_where_they_were_held()
    {
        var season = With(new SetMatch(Turnes()), new SetEvent(new Event(new("e"), EventKind.Camp, "Camp", new(new(2027, 8, 3), new(2027, 8, 7)))));
        var text = Write(season, new(Events: false), CalendarRevisions.After(Write(season), "a.ics", season.Id).Revisions);
        Assert.Equal("CANCELLED 1 Called off: Camp|CONFIRMED 0 Home v Turnes", string.Join('|', ContentLines.Entries(text).Select(entry => $"{entry.Value("STATUS")} {entry.Value("SEQUENCE")} {entry.Value("SUMMARY")}")));
        // Once more: nothing has changed, and it stays.
        Assert.Equal(text, Write(season, new(Events: false), CalendarRevisions.After(text, "a.ics", season.Id).Revisions));
    }

    [Theory]
    [InlineData("")]
    [InlineData("Date,Home,Away")]
    [InlineData("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Somebody//else//EN\r\nEND:VCALENDAR\r\n")]
    [InlineData("BEGIN:VCALENDAR\r\n")]
    public void A_calendar_that_was_not_written_here_is_a_problem(string text)
    {
        var reading = CalendarRevisions.After(text, "mine.ics", new SeasonId("harbour-vale"));
        Assert.Null(reading.Revisions);
        Assert.StartsWith("mine.ics: This is no calendar", reading.Problem!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void So_is_the_calendar_of_another_season() =>
        Assert.NotNull(CalendarRevisions.After(Write(With(new SetMatch(Turnes()))), "a.ics", new SeasonId("another")).Problem);

    [Fact]
    public void A_group_sees_what_is_for_everyone_for_itself_and_for_people_who_are_no_group()
    {
        SetEvent For(string id, string? whom) => new(new Event(new(id), EventKind.Exams, id, DaySpan.Of(new(2027, 8, 3)), For: whom));
        var season = With(new SetGroup(new GroupLine(new("g1"), "Rookies")), new SetGroup(new GroupLine(new("g2"), "Backs")),
            For("all", null), For("ours", "rookies"), For("both", "backs and rookies"), For("theirs", "Backs only"), For("somebody", "six students"), For("nearly", "Backspacers"));
        Assert.Equal("all both nearly ours somebody", Titles(new(Group: "Rookies")));
        Assert.Equal("all both nearly ours somebody theirs", Titles(new()));

        string Titles(CalendarChoices choices) => string.Join(' ', ContentLines.Entries(Write(season, choices)).Select(entry => entry.Value("SUMMARY")).Order(StringComparer.Ordinal));
    }

    /// <summary>Source: RFC 5545, 3.3.5, form 1: a time of wherever one is.</summary>
    [Fact]
    public void The_legs_of_a_journey_are_entries_with_the_times_of_the_ticket()
    {
        var day = new DateOnly(2027, 11, 12);
        var season = With(new SetEvent(new Event(new("e"), EventKind.Travel, "To Skeldby", new(day, day.AddDays(1)), Provisional: true, Legs: [
            new Leg(day, "Harbour Vale", "Skeldby", new(13, 0), new(17, 30)),
            new Leg(day, "Skeldby", "Far Island", new(23, 0), new(1, 15), day.AddDays(1), -9.5m),
            new Leg(day.AddDays(1), "Far Island", null, new(9, 0), new(8, 0)),
            new Leg(day.AddDays(1), null, "Harbour Vale", null, new(23, 59)),
        ])));
        Assert.Equal(
            """
            ;VALUE=DATE:20271112 ;VALUE=DATE:20271114 To Skeldby (provisional)
            20271112T130000 20271112T173000 Harbour Vale → Skeldby (provisional)
            20271112T230000 20271113T011500 Skeldby → Far Island (provisional)
            ;VALUE=DATE:20271113 ;VALUE=DATE:20271114 To Harbour Vale (provisional)
            20271113T090000  From Far Island (provisional)
            """.ReplaceLineEndings("\n"),
            string.Join('\n', ContentLines.Entries(Write(season)).Select(entry => $"{entry.Value("DTSTART")} {entry.Value("DTEND")} {entry.Value("SUMMARY")}")));
        Assert.Contains("The clock moves -9.5 h on the way", Write(season).Replace("\r\n ", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("OPAQUE", Write(season), StringComparison.Ordinal);
    }

    [Fact]
    public void Practices_are_one_free_entry_over_the_week_and_only_when_asked_for()
    {
        var book = new SeasonBook(20, new DateOnly(2027, 7, 7));
        var season = book.Write(new SetPractices(book.Week(1), book.Week(1), new Practices(4, new Minutes(75))), new SetPractices(book.Week(2), book.Week(2), new Practices(0))).Season;
        Assert.Empty(ContentLines.Entries(Write(season)));
        var entry = Only(season, new CalendarChoices(Practices: true));
        Assert.Equal(";VALUE=DATE:20270707 ;VALUE=DATE:20270712 TRANSPARENT 4 practices of 75 minutes", $"{entry.Value("DTSTART")} {entry.Value("DTEND")} {entry.Value("TRANSP")} {entry.Value("SUMMARY")}");
    }

    [Fact]
    public void Key_matches_cannot_be_told_from_others_unless_switched_on()
    {
        var key = With(new SetMatch(Turnes() with { Importance = Importance.Key }));
        var regular = With(new SetMatch(Turnes()));
        Assert.Equal(Write(regular), Write(key));
        Assert.DoesNotContain("key", Write(key), StringComparison.OrdinalIgnoreCase);
        var entry = Only(key, new CalendarChoices(KeyMatches: true));
        Assert.Equal("Match,Key match", entry.Value("CATEGORIES"));
    }

    [Fact]
    public void Notes_stay_out()
    {
        var season = With(
            new SetMatch(Turnes() with { Note = "knee of number 7" }),
            new SetEvent(new Event(new("e"), EventKind.Holiday, "Break", DaySpan.Of(new(2027, 8, 3)), Note: "physio for number 9")),
            new SetNote(new Note(new("n"), DaySpan.Of(new(2027, 8, 3)), "operation of number 3")));
        Assert.DoesNotMatch("knee|physio|operation|number", Write(season));
    }

    /// <summary>Source: RFC 7986, 5.1 (NAME), 5.2 (DESCRIPTION), 5.3 (UID), 5.9 (COLOR: a colour's name of CSS).</summary>
    [Fact]
    public void The_calendar_says_whose_it_is_and_of_which_state()
    {
        var season = With(new SetMatch(Turnes()));
        var draft = ContentLines.Of(Write(season));
        Assert.Contains("NAME:Harbour Vale (draft)", draft, StringComparer.Ordinal);
        Assert.Contains(@"DESCRIPTION:Harbour Vale. Draft\, Mon 18 Oct 2027", draft, StringComparer.Ordinal);
        var published = ContentLines.Of(SeasonCalendar.Write(season, Copenhagen, new Edition(new Publication(3, "after the cup"), new(2027, 10, 18)), new(), CalendarRevisions.None));
        Assert.Contains("NAME:Harbour Vale", published, StringComparer.Ordinal);
        Assert.Contains(@"DESCRIPTION:Harbour Vale. Version 3 (after the cup)\, Mon 18 Oct 2027", published, StringComparer.Ordinal);
        Assert.Contains("COLOR:teal", draft, StringComparer.Ordinal);
        Assert.DoesNotContain(draft, line => line.StartsWith("REFRESH-INTERVAL", StringComparison.Ordinal) || line.StartsWith("METHOD", StringComparison.Ordinal));
    }
}
