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
        Assert.Equal(new WeekLoad(new Load(3000), new Load(2200), new Load(660)), load);
        Assert.Equal(new Load(140), load.Ours);
    }

    [Fact]
    public void A_week_without_target_or_practices_says_so()
    {
        var load = WeekLoad.Of(Season, Setup.Empty(new("team")), Season.Weeks[1]);
        Assert.Equal(new WeekLoad(null, new Load(825), null), load);
        Assert.Null(load.Ours);
    }

    [Fact]
    public void What_is_left_is_never_less_than_nothing() =>
        Assert.Equal(Load.Zero, WeekLoad.Of(History.After(Season, new SetWeekLoad(new("w1"), new("w1"), new Load(100))), Setup.Empty(new("team")), Season.Weeks[0]).Ours);
}
