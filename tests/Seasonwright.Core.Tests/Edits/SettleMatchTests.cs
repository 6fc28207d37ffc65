using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Tests.Drawn;

namespace Seasonwright.Core.Tests.Edits;

public class SettleMatchTests
{
    private static readonly DateOnly Day = new(2027, 10, 16);

    private static SeasonEdit Start => new StartSeason(new(2027, 7, 5), DayOfWeek.Monday, Enumerable.Range(1, 30).Select(n => new WeekId($"w{n}")).ToValueList(), new("Harbour Vale"));

    private static SetMatch Match(string id, int day, MatchStatus status = MatchStatus.Confirmed, string? after = null, Outcome needs = Outcome.Won, Series? series = null) => new(new Match(
        new(id), Day.AddDays(day), Status: status, Series: series, Condition: after is null ? null : new Condition(new(after), needs)));

    /// <summary>Semi-final, then the final if it is won and the match for third place if not; the final opens the door to Europe.</summary>
    private static Season Cup() => History.After(Start,
        Match("semi", 0),
        Match("final", 7, MatchStatus.Conditional, "semi"),
        Match("third", 7, MatchStatus.Conditional, "semi", Outcome.Lost),
        Match("europe", 21, MatchStatus.Conditional, "final"));

    private static string Statuses(Season season) => string.Join(", ", season.AllMatches.Select(match => $"{match.Id} {match.Status}"));

    private static Season Settled(Season season, string match, Outcome outcome) => History.After(season, new SettleMatch(new(match), outcome));

    [Fact]
    public void We_won() =>
        Assert.Equal("semi Confirmed, final Confirmed, third Cancelled, europe Conditional", Statuses(Settled(Cup(), "semi", Outcome.Won)));

    [Fact]
    public void We_are_out() =>
        Assert.Equal("semi Confirmed, final Cancelled, third Confirmed, europe Cancelled", Statuses(Settled(Cup(), "semi", Outcome.Lost)));

    [Fact]
    public void A_wrong_answer_is_put_right_by_the_other_one()
    {
        Assert.Equal(Settled(Cup(), "semi", Outcome.Won), Settled(Settled(Cup(), "semi", Outcome.Lost), "semi", Outcome.Won));
        Assert.Equal(Settled(Cup(), "semi", Outcome.Lost), Settled(Settled(Cup(), "semi", Outcome.Won), "semi", Outcome.Lost));
    }

    [Fact]
    public void A_match_that_is_on_has_the_status_its_days_give()
    {
        var season = History.After(Start, Match("semi", 0),
            new SetMatch(new Match(new("open"), null, Status: MatchStatus.Conditional, Condition: new Condition(new MatchId("semi")))),
            new SetMatch(new Match(new("week"), Day.AddDays(7), Day.AddDays(9), Status: MatchStatus.Conditional, Condition: new Condition(new MatchId("semi")))));
        var settled = Settled(season, "semi", Outcome.Won);
        Assert.Equal((MatchStatus.Postponed, MatchStatus.Window), (settled.Match(new("open"))!.Status, settled.Match(new("week"))!.Status));
    }

    [Fact]
    public void Matches_that_wait_for_each_other_end()
    {
        var season = History.After(Start, Match("a", 0), Match("b", 7, MatchStatus.Conditional, "a"), Match("a", 0, MatchStatus.Conditional, "b"));
        Assert.Equal("a Conditional, b Cancelled", Statuses(Settled(season, "a", Outcome.Lost)));
    }

    private static Season BestOfThree(int bestOf = 3) => History.After([Start, .. Enumerable.Range(1, bestOf).Select(game =>
        Match($"g{game}", game * 3, game <= bestOf / 2 + 1 ? MatchStatus.Confirmed : MatchStatus.Conditional, series: new Series("final", game, bestOf)))]);

    [Fact]
    public void A_series_that_is_decided_calls_the_rest_off()
    {
        var led = Settled(BestOfThree(), "g1", Outcome.Won);
        Assert.Equal("g1 Confirmed, g2 Confirmed, g3 Conditional", Statuses(led));
        Assert.Equal("g1 Confirmed, g2 Confirmed, g3 Cancelled", Statuses(Settled(led, "g2", Outcome.Won)));
        Assert.Equal("g1 Confirmed, g2 Confirmed, g3 Cancelled", Statuses(Settled(Settled(BestOfThree(), "g1", Outcome.Lost), "g2", Outcome.Lost)));
    }

    [Fact]
    public void A_series_that_is_level_needs_its_last_game()
    {
        var level = Settled(Settled(BestOfThree(), "g1", Outcome.Won), "g2", Outcome.Lost);
        Assert.Equal("g1 Confirmed, g2 Confirmed, g3 Confirmed", Statuses(level));
        Assert.Equal(level, Settled(Settled(Settled(BestOfThree(), "g1", Outcome.Won), "g2", Outcome.Won), "g2", Outcome.Lost));
    }

    [Fact]
    public void A_longer_series_opens_game_by_game()
    {
        var season = Settled(Settled(BestOfThree(5), "g1", Outcome.Won), "g2", Outcome.Lost);
        Assert.Equal("g1 Confirmed, g2 Confirmed, g3 Confirmed, g4 Confirmed, g5 Conditional", Statuses(season));
        season = Settled(season, "g3", Outcome.Won);
        Assert.Equal("g1 Confirmed, g2 Confirmed, g3 Confirmed, g4 Confirmed, g5 Conditional", Statuses(season));
        Assert.Equal("g1 Confirmed, g2 Confirmed, g3 Confirmed, g4 Confirmed, g5 Confirmed", Statuses(Settled(season, "g4", Outcome.Lost)));
        Assert.Equal("g1 Confirmed, g2 Confirmed, g3 Confirmed, g4 Confirmed, g5 Cancelled", Statuses(Settled(season, "g4", Outcome.Won)));
    }

    [Fact]
    public void A_game_called_off_for_a_reason_of_its_own_stays_off()
    {
        var season = History.After(BestOfThree(), Match("g2", 6, MatchStatus.Cancelled, series: new Series("final", 2, 3)));
        Assert.Equal("g1 Confirmed, g2 Cancelled, g3 Confirmed", Statuses(Settled(season, "g1", Outcome.Won)));
    }

    [Fact]
    public void What_waits_for_a_game_that_is_not_needed_is_off_too()
    {
        var season = History.After(BestOfThree(), Match("party", 20, MatchStatus.Conditional, "g3"));
        Assert.Equal(MatchStatus.Cancelled, Settled(Settled(season, "g1", Outcome.Won), "g2", Outcome.Won).Match(new("party"))!.Status);
    }

    [Fact]
    public void Versions_are_numbered_in_order()
    {
        var season = History.After(Start, new Publish("First draft"), new Publish(), new Publish("Final"));
        Assert.Equal(new Publication(3, "Final"), season.LastPublication);
        var accepted = Assert.IsType<Accepted>(Decider.Decide(season, new Publish("Agreed")));
        Assert.Equal("Published version 4 (Agreed)", new Publish("Agreed").Describe(season, Core.Setups.Setup.Empty(new("team"))));
        Assert.Equal([new Publication(1, "First draft"), new Publication(2), new Publication(3, "Final"), new Publication(4, "Agreed")],
            season.With(accepted.Step).Facts.All(SeasonFacets.Publication).Select(version => version.Value));
    }
}
