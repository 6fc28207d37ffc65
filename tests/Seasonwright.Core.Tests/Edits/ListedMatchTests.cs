using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Tests.Drawn;

namespace Seasonwright.Core.Tests.Edits;

/// <summary>What a list said of a match outlives what is done to the match by hand, for as long as the two differ.</summary>
public class ListedMatchTests
{
    private static readonly DateOnly Saturday = new(2027, 10, 16);

    private static readonly Match Imported = new(new("m"), Saturday, KickOff: new TimeOnly(18, 0), Opponent: "Turnes", Source: new MatchSource("7"));

    private static readonly Season Taken = History.After(
        new StartSeason(new(2027, 7, 5), DayOfWeek.Monday, Enumerable.Range(1, 30).Select(n => new WeekId($"w{n}")).ToValueList(), new("Harbour Vale")),
        new ImportFixtures(new([Imported]), "league.csv"));

    private static Match After(params SeasonEdit[] edits) => edits.Aggregate(Taken, (season, edit) => History.After(season, edit)).Match(Imported.Id)!;

    private static readonly MoveMatch Move = new(Imported.Id, Saturday.AddDays(1), KickOff: new TimeOnly(16, 0));

    [Fact]
    public void A_move_by_hand_keeps_what_the_list_said_and_a_move_back_lets_it_go()
    {
        Assert.Equal((Saturday.AddDays(1), Imported), (After(Move).Day, After(Move).AsListed()));
        Assert.Equal(Imported, After(Move, new MoveMatch(Imported.Id, Saturday, KickOff: Imported.KickOff)));
    }

    [Fact]
    public void So_does_any_change_whatever_it_says_of_the_source_itself()
    {
        var changed = After(Move, new SetMatch(Imported with { Opponent = "Brovik", Note = "derby", Source = null }));
        Assert.Equal(("Brovik", Imported with { Note = "derby" }), (changed.Opponent, changed.AsListed()));
        Assert.Equal(Imported, After(Move, new SetMatch(Imported with { Source = new MatchSource("7", Listed: new Listing(Saturday.AddDays(5))) })));
    }

    [Fact]
    public void What_no_list_has_a_say_in_changes_nothing_of_it()
    {
        var settled = After(new SettleMatch(Imported.Id, Outcome.Won), new SetMatch(Imported with { Importance = Importance.Key, Zone = "Europe/Oslo" }));
        Assert.Null(settled.Source!.Listed);
        Assert.Null(History.After(Taken, new SetMatch(new Match(new("own"), Saturday))).Match(new("own"))!.Source);
    }

    [Fact]
    public void A_match_called_off_by_an_outcome_is_still_conditional_in_the_list()
    {
        var waits = new Match(new("final"), Saturday.AddDays(7), Status: MatchStatus.Conditional, Condition: new Condition(Imported.Id), Source: new MatchSource("8"));
        var season = History.After(History.After(Taken, new ImportFixtures(new([waits]), "cup.csv")), new SettleMatch(Imported.Id, Outcome.Lost));
        var final = season.Match(waits.Id)!;
        Assert.Equal((MatchStatus.Cancelled, waits), (final.Status, final.AsListed()));
    }

    [Fact]
    public void What_a_file_says_a_list_said_is_checked_as_a_match_is()
    {
        var refused = Assert.IsType<Refused>(Decider.Decide(Taken, new ImportFixtures(new([Imported with { Source = new MatchSource("7", Listed: new Listing(Saturday, Saturday.AddDays(-1))) }]), "league.csv")));
        Assert.Equal("days-backward", Assert.Single(refused.Reasons).Id);
    }
}
