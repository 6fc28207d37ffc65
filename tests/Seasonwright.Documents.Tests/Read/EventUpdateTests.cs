using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Events;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>A list of events read again: what the season knows is found, moved, marked, and never doubled or deleted.</summary>
public class EventUpdateTests
{
    private const string Breaks = "What;When;Who\nAutumn break;12 Oct 2026 - 18 Oct 2026;all\nChristmas;20 Dec 2026 - 2 Jan 2027;all\nCamp;5 Feb 2027 - 7 Feb 2027;squad\nFitness testing;4 Jan 2027;squad\n";

    private static readonly DaySpan Year = new(new(2026, 7, 6), new(2027, 7, 4));

    [Theory]
    [MemberData(nameof(EventReaderTests.Samples), MemberType = typeof(EventReaderTests))]
    public void A_second_reading_of_the_same_list_changes_nothing(string name)
    {
        var list = EventReader.Read(SourceText.OfBytes(name, File.ReadAllBytes(EventCases.PathOf(name))), new EventReading(Season: Year));
        var season = Taken(Started(), list);
        Assert.NotEmpty(season.AllEvents);
        AssertNothingNew(season, list);
    }

    [Fact]
    public void A_break_whose_days_moved_is_moved_and_keeps_what_the_coach_set()
    {
        var season = Taken(Started(), Read(Breaks));
        var camp = season.AllEvents.Single(item => item.Title == "Camp") with { Training = new Percent(110), Place = "Skagrund", Nights = 2, Title = "Camp at the lake" };
        season = Applied(season, new SetEvent(camp));
        var list = Read(Breaks.Replace("5 Feb 2027 - 7 Feb 2027;squad", "12 Feb 2027 - 14 Feb 2027;", StringComparison.Ordinal).Replace("4 Jan", "5 Jan", StringComparison.Ordinal));
        var update = Compare(season, list);
        Assert.Equal([ChangeKind.Unchanged, ChangeKind.Unchanged, ChangeKind.Moved], update.Changes.Select(change => change.Kind));
        Assert.Equal(camp with { Days = new DaySpan(new(2027, 2, 12), new(2027, 2, 14)) }, update.Changes[2].Entry! with { Source = camp.Source });
        Assert.Equal("day lastDay", string.Join(' ', update.Changes[2].Fields.Select(field => field.Field)));
        Assert.Equal((ChangeKind.Moved, new DateOnly(2027, 1, 5)), (Assert.Single(update.TestDays).Kind, update.TestDays[0].Entry!.Day));
        season = Taken(season, list);
        Assert.Equal((3, 1), (season.AllEvents.Count(), season.AllTestDays.Count()));
        AssertNothingNew(season, list);
    }

    [Fact]
    public void What_a_later_state_no_longer_holds_is_marked_until_it_returns()
    {
        var season = Taken(Started(), Read(Breaks));
        var list = Read(Breaks.Replace("Camp;5 Feb 2027 - 7 Feb 2027;squad\n", "", StringComparison.Ordinal));
        Assert.Equal([ChangeKind.Unchanged, ChangeKind.Unchanged, ChangeKind.Vanished], Compare(season, list).Changes.Select(change => change.Kind));
        season = Taken(season, list);
        Assert.True(season.AllEvents.Single(item => item.Title == "Camp").Source!.Vanished);
        AssertNothingNew(season, list);
        season = Taken(season, Read(Breaks));
        Assert.DoesNotContain(season.AllEvents, item => item.Source!.Vanished);
    }

    [Fact]
    public void Another_list_marks_nothing_of_the_first()
    {
        var season = Taken(Started(), Read(Breaks));
        var update = Compare(season, Read("What;When\nChristmas;20 Dec 2026 - 2 Jan 2027\nExams;17 May 2027 - 28 May 2027\n"));
        Assert.Equal([ChangeKind.Unchanged, ChangeKind.Added], update.Changes.Select(change => change.Kind));
    }

    [Fact]
    public void What_the_coach_entered_with_equal_days_is_the_same_event()
    {
        var own = new Event(new("own"), EventKind.Holiday, "CHRISTMAS", new DaySpan(new(2026, 12, 20), new(2027, 1, 2)), Training: new Percent(20), Note: "keys at the porter's");
        var change = EventUpdate.Compare([own], [], Read(Breaks)).Changes[1];
        Assert.Equal((ChangeKind.Changed, own with { For = "all", Source = change.Entry!.Source }), (change.Kind, change.Entry));
    }

    [Fact]
    public void What_may_be_the_same_is_asked_and_not_doubled_meanwhile()
    {
        var own = new Event(new("own"), EventKind.Holiday, "Winter pause", new DaySpan(new(2026, 12, 20), new(2027, 1, 2)));
        var list = Read(Breaks);
        var asked = EventUpdate.Compare([own], [], list);
        Assert.Equal([ChangeKind.Added, ChangeKind.Asked, ChangeKind.Added], asked.Changes.Select(change => change.Kind));
        Assert.Equal(("Q-identity", 3), (Assert.Single(asked.Questions).Id, asked.Questions[0].Lines[0]));
        Assert.Equal("own", EventUpdate.Compare([own], [], list, Answers.None.With("Q-identity", "same-1")).Changes[1].Entry!.Id.Text);
        Assert.Equal(ChangeKind.Added, EventUpdate.Compare([own], [], list, Answers.None.With("Q-identity", "new")).Changes[1].Kind);
    }

    [Fact]
    public void Entries_of_one_name_in_other_months_are_asked_and_never_moved_there()
    {
        var season = Taken(Started(), Read("What;When\nHalf-term;26 Oct 2026 - 30 Oct 2026\n"));
        Assert.Equal(ChangeKind.Asked, Compare(season, Read("What;When\nHalf-term;15 Feb 2027 - 19 Feb 2027\n")).Changes[0].Kind);
        var both = Compare(season, Read("What;When\nHalf-term;15 Feb 2027 - 19 Feb 2027\nHalf-term;27 Oct 2026 - 30 Oct 2026\n"));
        Assert.Equal([ChangeKind.Added, ChangeKind.Moved], both.Changes.Select(change => change.Kind));
    }

    [Fact]
    public void Days_that_recur_become_an_event_each_and_not_a_month_off()
    {
        var list = Read("What;When\nHall shut;every Wednesday in March 2027\n");
        var season = Taken(Started(), list);
        Assert.Equal([3, 10, 17, 24, 31], season.AllEvents.Select(item => item.Days.First.Day));
        Assert.All(season.AllEvents, item => Assert.Equal(1, item.Days.Length));
        AssertNothingNew(season, list);
        var fewer = Read("What;When\nHall shut;3, 10, 17 and 25 March 2027\n");
        Assert.Equal([ChangeKind.Unchanged, ChangeKind.Unchanged, ChangeKind.Unchanged, ChangeKind.Moved, ChangeKind.Vanished], Compare(season, fewer).Changes.Select(change => change.Kind));
    }

    [Fact]
    public void Legs_of_a_journey_that_changed_are_told_in_words()
    {
        const string trip = "type,what,start,end,leg,from,to,dep,arr\ntravel,Cup trip,2026-12-08,2026-12-09,1,Harbour Vale,Skagrund,14:00,15:40\ntravel,Cup trip,2026-12-09,,2,Skagrund,Harbour Vale,10:00,\n";
        var season = Taken(Started(), Read(trip));
        var list = Read(trip.Replace("14:00", "13:30", StringComparison.Ordinal));
        var fields = Assert.Single(Compare(season, list).Changes).Fields;
        const string back = "2026-12-09 10:00 Skagrund - Harbour Vale";
        Assert.Equal([new FieldChange("legs", $"2026-12-08 14:00 Harbour Vale - 15:40 Skagrund; {back}", $"2026-12-08 13:30 Harbour Vale - 15:40 Skagrund; {back}")], fields);
    }

    [Fact]
    public void Another_list_in_which_an_event_stands_and_its_return_are_told()
    {
        var own = new Event(new("own"), EventKind.Holiday, "Christmas", new DaySpan(new(2026, 12, 20), new(2027, 1, 2)), For: "all");
        Assert.Equal([new FieldChange("source", "", "breaks.csv")], EventUpdate.Compare([own], [], Read(Breaks)).Changes[1].Fields);
        var gone = own with { Source = new EventSource("school.csv", "Christmas", Vanished: true) };
        Assert.Equal([new FieldChange("vanished", "yes", "no")], EventUpdate.Compare([gone], [], Read(Breaks)).Changes[1].Fields);
    }

    private const string Detailed = "What;When;Part;Who;Training;Place;Note\nAutumn break;12 Oct 2026 - 18 Oct 2026;;all;;;\nCamp;5 Feb 2027 - 7 Feb 2027;pm;squad;80 %;Skagrund;bring skis\nFitness testing;4 Jan 2027;pm;squad;;;\n";

    public static TheoryData<string> Fields { get; } = new("days", "kind", "title", "part", "for", "training", "provisional", "place", "note");

    [Theory]
    [MemberData(nameof(Fields))]
    public void What_the_coach_has_changed_stays_while_the_list_says_the_same_as_last_time(string field)
    {
        var list = Read(Detailed);
        var season = Taken(Started(), list);
        season = Applied(Applied(season, new SetEvent(Hand(CampOf(season), field))), new SetTestDay(Hand(season.AllTestDays.Single(), field)));
        AssertNothingNew(season, list);
        Assert.Equal(CampOf(season), Compare(season, list).Changes[1].Entry);
        Assert.Equal(season.AllTestDays.Single(), Compare(season, list).TestDays[0].Entry);
    }

    [Fact]
    public void What_the_list_says_anew_comes_in_where_the_coach_left_it_alone()
    {
        var season = Taken(Started(), Read(Detailed));
        season = Applied(season, new SetEvent(CampOf(season) with { Place = "Brovik", Training = null }));
        season = Applied(season, new SetTestDay(season.AllTestDays.Single() with { For = "backs" }));
        var list = Read(Detailed.Replace("5 Feb 2027 - 7 Feb 2027;pm", "12 Feb 2027 - 14 Feb 2027;am", StringComparison.Ordinal).Replace("skis", "skates", StringComparison.Ordinal).Replace("4 Jan", "5 Jan", StringComparison.Ordinal));
        season = Taken(season, list);
        Assert.Equal("2027-02-12..2027-02-14 am squad - Brovik bring skates", Told(CampOf(season)));
        Assert.Equal((new DateOnly(2027, 1, 5), "pm", "backs"), (season.AllTestDays.Single().Day, season.AllTestDays.Single().Part, season.AllTestDays.Single().For));
        AssertNothingNew(season, list);
    }

    [Theory]
    [InlineData("ours", "2027-02-06..2027-02-08 pm squad 80 % Skagrund bring skis", 6)]
    [InlineData("list", "2027-02-12..2027-02-14 am squad 80 % Skagrund bring skis", 11)]
    public void What_both_have_changed_is_asked_once_and_then_settled(string answer, string stands, int testDay)
    {
        var season = Taken(Started(), Read(Detailed));
        season = Applied(season, new SetEvent(Hand(CampOf(season), "days")));
        season = Applied(season, new SetTestDay(season.AllTestDays.Single() with { Day = new(2027, 1, 6) }));
        var list = Read(Detailed.Replace("5 Feb 2027 - 7 Feb 2027;pm", "12 Feb 2027 - 14 Feb 2027;am", StringComparison.Ordinal).Replace("4 Jan", "11 Jan", StringComparison.Ordinal));
        var asked = Compare(season, list);
        Assert.Equal([ChangeKind.Unchanged, ChangeKind.Asked], asked.Changes.Select(change => change.Kind));
        Assert.Equal(ChangeKind.Asked, Assert.Single(asked.TestDays).Kind);
        Assert.Equal("Q-both-changed Q-both-changed-2", string.Join(' ', asked.Questions.Select(question => question.Id)));
        Assert.All(asked.Questions, question => Assert.Null(question.Offered));
        Assert.Equal("yours: Sat 6 Feb 2027 to Mon 8 Feb 2027, pm; the list's: Fri 12 Feb 2027 to Sun 14 Feb 2027, am", string.Join("; ", asked.Questions[0].Options.Select(option => option.Text)));
        Assert.Equal("yours: Wed 6 Jan 2027; the list's: Mon 11 Jan 2027", string.Join("; ", asked.Questions[1].Options.Select(option => option.Text)));
        Assert.Null(Edit(season, list));

        season = Taken(season, list, Answers.None.With("Q-both-changed", answer).With("Q-both-changed-2", answer));
        Assert.Equal((stands, testDay), (Told(CampOf(season)), season.AllTestDays.Single().Day.Day));
        Assert.Empty(Compare(season, list).Questions);
        AssertNothingNew(season, list);
    }

    [Fact]
    public void A_list_that_follows_the_coach_asks_nothing_and_from_then_on_its_word_is_known()
    {
        var season = Taken(Started(), Read(Detailed));
        season = Applied(season, new SetEvent(Hand(CampOf(season), "days")));
        var followed = Read(Detailed.Replace("5 Feb 2027 - 7 Feb", "6 Feb 2027 - 8 Feb", StringComparison.Ordinal));
        Assert.Empty(Compare(season, followed).Questions);
        Assert.All(Compare(season, followed).Changes, change => Assert.Equal(ChangeKind.Unchanged, change.Kind));
        season = Taken(season, followed);
        Assert.Null(CampOf(season).Source!.Listed);
        Assert.Equal(new DateOnly(2027, 2, 5), CampOf(Taken(season, Read(Detailed))).Days.First);
    }

    [Fact]
    public void What_the_coach_has_moved_to_another_month_is_still_the_lists_and_is_found_there_too()
    {
        var season = Taken(Started(), Read(Detailed));
        season = Applied(season, new SetEvent(CampOf(season) with { Days = new DaySpan(new(2027, 5, 7), new(2027, 5, 9)) }));
        AssertNothingNew(season, Read(Detailed));
        var follows = Compare(season, Read(Detailed.Replace("5 Feb 2027 - 7 Feb", "7 May 2027 - 9 May", StringComparison.Ordinal)));
        Assert.Equal([ChangeKind.Unchanged, ChangeKind.Unchanged], follows.Changes.Select(change => change.Kind));
        var near = Compare(season, Read(Detailed.Replace("5 Feb 2027 - 7 Feb", "8 May 2027 - 10 May", StringComparison.Ordinal)));
        Assert.Equal("Q-both-changed", Assert.Single(near.Questions).Id);
    }

    [Fact]
    public void Tests_of_two_groups_on_one_day_are_told_apart_by_what_the_list_said_of_them()
    {
        var list = Read("What;When;Who\nFitness testing;4 Jan 2027;backs\nFitness testing;4 Jan 2027;keepers\n");
        var season = Taken(Started(), list);
        var backs = season.AllTestDays.Single(test => test.For == "backs");
        season = Applied(season, new SetTestDay(backs with { For = "wings" }));
        AssertNothingNew(season, list);
        Assert.Equal("wings keepers", string.Join(' ', Compare(season, list).TestDays.Select(change => change.Entry!.For)));
    }

    [Fact]
    public void Kind_and_note_of_what_the_coach_entered_stay_with_the_lists()
    {
        var own = new Event(new("own"), EventKind.Other, "Camp", new DaySpan(new(2027, 2, 5), new(2027, 2, 7)), Note: "keys at the porter's");
        var season = Taken(Applied(Started(), new SetEvent(own)), Read(Detailed));
        Assert.Equal((EventKind.Other, "keys at the porter's", "Skagrund"), (CampOf(season).Kind, CampOf(season).Note, CampOf(season).Place));
        AssertNothingNew(season, Read(Detailed));
    }

    private static Event CampOf(Season season) => season.AllEvents.Single(item => item.Source?.Entry == "Camp");

    private static string Told(Event item) => $"{item.Days} {item.Part} {item.For} {item.Training?.ToString() ?? "-"} {item.Place} {item.Note}";

    private static Event Hand(Event item, string field) => field switch
    {
        "days" => item with { Days = item.Days.Shift(1) },
        "kind" => item with { Kind = EventKind.Tournament },
        "title" => item with { Title = "At the lake" },
        "part" => item with { Part = null },
        "for" => item with { For = "backs", Source = null },
        "training" => item with { Training = null },
        "provisional" => item with { Provisional = true },
        "place" => item with { Place = "Brovik" },
        _ => item with { Note = null },
    };

    private static TestDay Hand(TestDay test, string field) => field switch
    {
        "days" => test with { Day = test.Day.AddDays(40) },
        "title" => test with { Battery = "Jumps" },
        "part" => test with { Part = null },
        _ => test with { For = "backs", Source = null },
    };

    [Fact]
    public void A_list_with_problems_writes_nothing()
    {
        var list = Read("");
        Assert.True(list.IsBlocked);
        Assert.Null(EventImport.Edit(list, EventUpdate.Compare([], [], list), (_, _) => throw new InvalidOperationException(), (_, _) => throw new InvalidOperationException()));
    }

    private static EventList Read(string text) => EventReader.Read(SourceText.OfText("breaks.csv", text), new EventReading(Season: Year));

    private static EventUpdate Compare(Season season, EventList list, Answers? answers = null) => EventUpdate.Compare(season.AllEvents, season.AllTestDays, list, answers);

    private static void AssertNothingNew(Season season, EventList list)
    {
        var again = Compare(season, list);
        Assert.All(again.Changes, change => Assert.True(change.Kind == ChangeKind.Unchanged || change.Row!.State == RowState.Waiting, $"{change}"));
        Assert.All(again.TestDays, change => Assert.Equal(ChangeKind.Unchanged, change.Kind));
        Assert.Null(Edit(season, list));
    }

    private static ImportEvents? Edit(Season season, EventList list, Answers? answers = null)
    {
        var made = season.AllEvents.Count() + season.AllTestDays.Count();
        return EventImport.Edit(list, Compare(season, list, answers), (_, _) => new EventId($"e{++made}"), (_, _) => new TestDayId($"t{++made}"));
    }

    private static Season Taken(Season season, EventList list, Answers? answers = null) => Applied(season, Edit(season, list, answers)!);

    private static Season Started() => Applied(Season.Empty(new SeasonId("s")), new StartSeason(Year.First, DayOfWeek.Monday, Enumerable.Range(1, 52).Select(n => new WeekId($"w{n}")).ToValueList(), new TeamCard("Harbour Vale")));

    private static Season Applied(Season season, SeasonEdit edit) => season.With(Assert.IsType<Accepted>(Decider.Decide(season, edit)).Step);
}
