using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Tests.Drawn;

namespace Seasonwright.Core.Tests.Edits;

/// <summary>What a list said of an event or test day outlives what is done to it by hand, for as long as the two differ.</summary>
public class ListedEventTests
{
    private static readonly DaySpan Weekend = new(new(2027, 10, 16), new(2027, 10, 17));

    private static readonly Event Camp = new(new("e"), EventKind.Camp, "Camp", Weekend, For: "squad", Source: new EventSource("club.csv", "Camp"));

    private static readonly TestDay Jumps = new(new("t"), new(2027, 10, 18), "Jumps", Part: "pm", Source: new EventSource("club.csv", "Jumps"));

    private static readonly Season Taken = History.After(
        new StartSeason(new(2027, 7, 5), DayOfWeek.Monday, Enumerable.Range(1, 30).Select(n => new WeekId($"w{n}")).ToValueList(), new("Harbour Vale")),
        new ImportFixtures(new([new Match(new("m"), new(2027, 9, 4))]), "league.csv"),
        new ImportEvents(new([Camp]), new([Jumps]), "club.csv"));

    private static Event EventAfter(params SeasonEdit[] edits) => After(edits).AllEvents.Single();

    private static TestDay TestAfter(params SeasonEdit[] edits) => After(edits).AllTestDays.Single();

    private static Season After(SeasonEdit[] edits) => edits.Aggregate(Taken, (season, edit) => History.After(season, edit));

    [Fact]
    public void A_move_by_hand_keeps_what_the_list_said_and_a_move_back_lets_it_go()
    {
        var moved = new SetEvent(Camp with { Days = Weekend.Shift(7), Source = null });
        Assert.Equal((Weekend.Shift(7), Camp), (EventAfter(moved).Days, EventAfter(moved).AsListed()));
        Assert.Equal(Camp, EventAfter(moved, new SetEvent(Camp)));

        var later = new SetTestDay(Jumps with { Day = Jumps.Day.AddDays(1), Source = null });
        Assert.Equal((Jumps.Day.AddDays(1), Jumps), (TestAfter(later).Day, TestAfter(later).AsListed()));
        Assert.Equal(Jumps, TestAfter(later, new SetTestDay(Jumps)));
    }

    [Fact]
    public void So_does_every_field_a_list_has_a_say_in_and_no_other()
    {
        var changed = Camp with { Kind = EventKind.Tournament, Part = "am", For = null, Training = new Percent(30), Provisional = true, Place = "Skagrund", Legs = new([new Leg(Weekend.First)]), Note = "keys" };
        Assert.Equal((changed, Camp), (EventAfter(new SetEvent(changed)) with { Source = Camp.Source }, EventAfter(new SetEvent(changed)).AsListed()));
        Assert.Null(EventAfter(new SetEvent(Camp with { Title = "Camp at the lake", Nights = 1 })).Source!.Listed);
        Assert.Equal(Jumps, TestAfter(new SetTestDay(Jumps with { Part = null, For = "backs" })).AsListed());
        Assert.Null(TestAfter(new SetTestDay(Jumps with { Battery = "Jumps and sprints" })).Source!.Listed);
    }

    [Fact]
    public void A_season_dated_anew_keeps_the_lists_word_of_its_test_days()
    {
        var redated = TestAfter(new Redate(new(2027, 7, 12), DayOfWeek.Monday, RedatePlan.Moves, ValueList<WeekId>.Empty));
        Assert.Equal((Jumps.Day.AddDays(7), Jumps), (redated.Day, redated.AsListed()));
    }

    [Fact]
    public void Of_the_next_year_no_list_has_said_anything_yet()
    {
        var last = After([new SetEvent(Camp with { Days = Weekend.Shift(7) }), new SetTestDay(Jumps with { Part = null })]);
        Assert.True(NextSeason.TryFrom(last, new(2028, 9, 2), null, out var facts));
        Assert.All(facts.All(SeasonFacets.Event).Select(item => item.Value.Source), source => Assert.Equal(Camp.Source, source));
        Assert.All(facts.All(SeasonFacets.TestDay).Select(item => item.Value.Source), source => Assert.Equal(Jumps.Source, source));
    }

    [Fact]
    public void What_a_file_says_a_list_said_is_checked_as_an_entry_is()
    {
        var listed = new EventListing(Weekend, Training: new Percent(200));
        var refused = Assert.IsType<Refused>(Decider.Decide(Taken, new ImportEvents(new([Camp with { Source = Camp.Source! with { Listed = listed } }]), ValueList<TestDay>.Empty, "club.csv")));
        Assert.Equal("training", Assert.Single(refused.Reasons).Id);
        var impossible = new EventListing(DaySpan.Of(new(1700, 1, 1)));
        Assert.IsType<Refused>(Decider.Decide(Taken, new ImportEvents(ValueList<Event>.Empty, new([Jumps with { Source = Jumps.Source! with { Listed = impossible } }]), "club.csv")));
    }
}
