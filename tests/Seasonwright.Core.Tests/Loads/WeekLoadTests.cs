using Seasonwright.Core.Edits;
using Seasonwright.Core.Loads;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Tests.Drawn;

namespace Seasonwright.Core.Tests.Loads;

public class WeekLoadTests
{
    private static readonly Season Season = History.After(
        new StartSeason(new(2027, 7, 5), DayOfWeek.Monday, new([new("w1"), new("w2")]), new("Harbour Vale")),
        new SetWeekLoad(new("w1"), new("w1"), new Load(3000)),
        new SetPractices(new("w1"), new("w1"), new Practices(2, new Minutes(60))),
        new SetMatch(new Match(new("a"), new DateOnly(2027, 7, 7))),
        new SetMatch(new Match(new("b"), new DateOnly(2027, 7, 10), Importance: Importance.Friendly)),
        new SetMatch(new Match(new("off"), new DateOnly(2027, 7, 9), Status: MatchStatus.Cancelled)),
        new SetMatch(new Match(new("window"), new DateOnly(2027, 7, 8), new DateOnly(2027, 7, 10), Status: MatchStatus.Window)),
        // Of two weeks nobody knows which.
        new SetMatch(new Match(new("either"), new DateOnly(2027, 7, 11), new DateOnly(2027, 7, 12), Status: MatchStatus.Window)),
        new SetMatch(new Match(new("next"), new DateOnly(2027, 7, 12))));

    /// <summary>825 AU for the match and for the one on some day of the week, 550 for the friendly; 2 practices of 60 min at the usual week's RPE 5.5 are 660.</summary>
    [Fact]
    public void Matches_and_practices_come_off_the_target_first()
    {
        var load = WeekLoad.Of(Season, Setup.Empty(new("team")), Season.Weeks[0]);
        Assert.Equal(new WeekLoad(new Load(3000), new Load(2200), new Load(660), null), load);
        Assert.Equal(new Load(140), load.Ours);
    }

    [Fact]
    public void A_week_without_target_or_practices_says_so()
    {
        var load = WeekLoad.Of(Season, Setup.Empty(new("team")), Season.Weeks[1]);
        Assert.Equal(new WeekLoad(null, new Load(825), null, null), load);
        Assert.Null(load.Ours);
    }

    [Fact]
    public void What_is_left_is_never_less_than_nothing() =>
        Assert.Equal(Load.Zero, WeekLoad.Of(History.After(Season, new SetWeekLoad(new("w1"), new("w1"), new Load(100))), Setup.Empty(new("team")), Season.Weeks[0]).Ours);

    private static readonly Session Practice = new(new("p"), new(2027, 7, 6), DaySlot.Evening, SessionKind.Practice, new Minutes(60), new Rpe(5));

    private static readonly Session Gym = Practice with { Id = new("g"), Kind = SessionKind.UpperStrength, Slot = DaySlot.Morning, Rpe = new Rpe(6) };

    private static (int? Practice, int? Placed, int? LaidOut) Of(params Session[] sessions)
    {
        var load = WeekLoad.Of(History.After(Season, [.. sessions.Select(session => new SetSession(session))]), Setup.Empty(new("team")), Season.Weeks[0]);
        return (load.Practice?.Au, load.Placed?.Au, load.LaidOut?.Au);
    }

    /// <summary>Practices on days stand for the two that were entered (660 AU), a cancelled one too; 300 and 360 AU are 60 min at RPE 5 and 6.</summary>
    [Fact]
    public void Sessions_on_days_stand_for_what_was_entered()
    {
        Assert.Equal((660, null, null), Of());
        Assert.Equal((300, null, null), Of(Practice));
        Assert.Equal((660, 360, 2200 + 660 + 360), Of(Gym));
        Assert.Equal((300, 360, 2200 + 300 + 360), Of(Practice, Gym));
        Assert.Equal((0, 0, 2200), Of(Practice with { IsCancelled = true }, Gym with { IsCancelled = true }));
        Assert.Equal((660, null, null), Of(Practice with { Day = new(2027, 7, 12) }));
    }

    [Fact]
    public void Nothing_is_laid_out_while_practices_are_not_known()
    {
        var season = History.After(Season, new SetSession(Gym with { Day = new(2027, 7, 13) }));
        Assert.Equal(new WeekLoad(null, new Load(825), null, new Load(360)), WeekLoad.Of(season, Setup.Empty(new("team")), season.Weeks[1]));
        Assert.Null(WeekLoad.Of(season, Setup.Empty(new("team")), season.Weeks[1]).LaidOut);
        Assert.All(DayLoad.Of(season, Setup.Empty(new("team")), season.Weeks[1]), day => Assert.Null(day.Total));
    }

    /// <summary>The window's match counts on its first day, as it does in the week.</summary>
    [Fact]
    public void Each_day_has_its_own()
    {
        var season = History.After(Season, new SetSession(Practice), new SetSession(Gym));
        Assert.Equal(
            [(0, 0, 0), (0, 300, 360), (825, 0, 0), (825, 0, 0), (0, 0, 0), (550, 0, 0), (0, 0, 0)],
            DayLoad.Of(season, Setup.Empty(new("team")), season.Weeks[0]).Select(day => (day.Match.Au, day.Practice!.Value.Au, day.Ours.Au)));
    }

    /// <summary>Everyone has 300 AU, the backs 360 more, the keepers 120 more: the athlete with the most is a back.</summary>
    [Fact]
    public void A_group_does_its_own_sessions_and_everyones()
    {
        var season = History.After(Season,
            new SetGroup(new GroupLine(new("keepers"), "Keepers")), new SetGroup(new GroupLine(new("backs"), "Backs")),
            new SetSession(Practice), new SetSession(Gym with { Groups = new([new("backs")]) }), new SetSession(Gym with { Id = new("k"), Minutes = new Minutes(20), Groups = new([new("keepers")]) }));
        int Ours(GroupId? group) => DayLoad.Of(season, Setup.Empty(new("team")), season.Weeks[0], group).Sum(day => day.Ours.Au);
        Assert.Equal((360, 120, 0, 360), (Ours(new("backs")), Ours(new("keepers")), Ours(new("forwards")), Ours(null)));
        Assert.Equal(2200 + 300 + 360, WeekLoad.Of(season, Setup.Empty(new("team")), season.Weeks[0]).LaidOut!.Value.Au);
    }
}
