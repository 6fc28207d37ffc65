using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Demo;
using Seasonwright.Desk.Tests.Demo;
using Seasonwright.Desk.Weeks;

namespace Seasonwright.Desk.Tests.Weeks;

/// <summary>What the engine says of the demo's weeks 16 (a match on Saturday) and 17 (none). The rules it names: heavy-lower-before-match, day-after-match-hard.</summary>
public class WeekPlansTests
{
    private static readonly DateOnly Today = new(2027, 10, 18);

    private static readonly (Season Season, Setup Setup) Demo = DemoSeasonTests.Played(DemoSeason.Make(new(2027, 7, 5)));

    private static readonly SeasonWeek Sixteen = Demo.Season.Weeks[15], Seventeen = Demo.Season.Weeks[16];

    private static readonly Session Lower = new(new("lower"), new(2027, 10, 20), DaySlot.Morning, SessionKind.LowerStrength, new Minutes(55), new Rpe(7m), Start: new(9, 30));

    [Fact]
    public void A_heavy_session_of_the_legs_may_not_lie_before_the_match()
    {
        var season = Done(Demo.Season, new SetSession(Lower));
        Assert.Contains(WeekPlans.WhyNot(season, Demo.Setup, Today, Lower with { Day = new(2027, 10, 22), Slot = DaySlot.Morning }), reason => reason.Rule == "heavy-lower-before-match");
        Assert.Empty(WeekPlans.WhyNot(season, Demo.Setup, Today, Lower with { Day = new(2027, 10, 20), Slot = DaySlot.Morning }));
    }

    [Fact]
    public void Practices_are_not_ours_to_place()
    {
        var practice = Demo.Season.SessionsIn(Sixteen).First(session => !session.IsOurs);
        Assert.Empty(WeekPlans.WhyNot(Demo.Season, Demo.Setup, Today, practice with { Day = new(2027, 10, 22), Slot = DaySlot.Morning }));
    }

    /// <summary>Monday's legs a day earlier lie on the Sunday of the week before: asked there, the day before a match.</summary>
    [Fact]
    public void Over_the_edge_of_a_week_it_is_asked_in_the_other_one()
    {
        Session monday = Lower with { Day = Seventeen.Days.First };
        var season = Done(Demo.Season, new SetSession(monday), new SetMatch(new Match(new("cup"), Seventeen.Days.First)));
        Assert.Contains(WeekPlans.WhyNot(season, Demo.Setup, Today, monday with { Day = Seventeen.Days.First.AddDays(-1) }), reason => reason.Rule == "heavy-lower-before-match");
    }

    /// <summary>On Thursday no practice of Monday is put, and one that was taken and moved to another week stays there.</summary>
    [Fact]
    public void Assumed_practices_are_never_put_into_the_past_nor_brought_back()
    {
        var week = Demo.Season.Weeks[19];
        var thursday = week.Days.First.AddDays(3);
        Assert.All(WeekPlans.Propose(Demo.Season, Demo.Setup, week, thursday).Practices, edit => Assert.True(((SetSession)edit).Session.Day >= thursday));
        var layout = WeekPlans.Propose(Demo.Season, Demo.Setup, week, Today);
        var moved = layout.Season.SessionsIn(week).Where(session => !session.IsOurs).Select(session => session with { Day = session.Day.AddDays(7) }).ToList();
        var season = Done(layout.Season, [.. moved.Select(session => new SetSession(session))]);
        var again = WeekPlans.Propose(season, Demo.Setup, week, Today);
        Assert.NotEmpty(again.Practices);
        Assert.All(moved, session => Assert.Equal(session, again.Season.Session(session.Id)));
    }

    /// <summary>Friday's activation, the day before the match, a little longer than the day bears.</summary>
    [Fact]
    public void What_is_only_too_long_becomes_shorter_where_it_is()
    {
        var activation = Demo.Season.SessionsIn(Sixteen).Single(session => session.Kind == SessionKind.Activation);
        var tooLong = Enumerable.Range(5, 20).Select(fives => activation with { Minutes = new(5 * fives) }).First(session => WeekPlans.WhyNot(Demo.Season, Demo.Setup, Today, session).Count > 0);
        var given = Assert.Single(WeekPlans.GivesWay(Done(Demo.Season, new SetSession(tooLong)), Demo.Setup, Sixteen, Today));
        Assert.Equal(tooLong with { Minutes = new(tooLong.Minutes.Value - 5) }, given.Now);
    }

    [Fact]
    public void Nothing_gives_way_in_a_locked_week() =>
        Assert.Empty(WeekPlans.GivesWay(Done(Demo.Season, new SetSession(Lower), new MoveMatch(Demo.Season.MatchesIn(Sixteen).Single().Id, new(2027, 10, 21)), new LockWeeks(Sixteen.Id, Sixteen.Id, true)), Demo.Setup, Sixteen, Today));

    [Fact]
    public void What_lies_well_stays() => Assert.All(new[] { Sixteen, Seventeen }, week => Assert.Empty(WeekPlans.GivesWay(Demo.Season, Demo.Setup, week, Today)));

    /// <summary>The match moves to Thursday: what was three days away is the day before.</summary>
    [Fact]
    public void A_match_that_moves_makes_what_is_before_it_give_way()
    {
        var season = Done(Demo.Season, new SetSession(Lower), new MoveMatch(Demo.Season.MatchesIn(Sixteen).Single().Id, new(2027, 10, 21)));
        var given = WeekPlans.GivesWay(season, Demo.Setup, Sixteen, Today);
        var legs = Assert.Single(given, one => one.Was.Id == Lower.Id);
        Assert.Contains(legs.Why, reason => reason.Rule == "heavy-lower-before-match");
        Assert.True(legs.Now.IsCancelled || Math.Abs(legs.Now.Day.DayNumber - Lower.Day.DayNumber) <= 2 && legs.Now.Day != Lower.Day);
        // Once they have, nothing has to any more, and locked sessions are left.
        Assert.Empty(WeekPlans.GivesWay(Done(season, [.. given.Select(one => new SetSession(one.Now))]), Demo.Setup, Sixteen, Today));
        Assert.DoesNotContain(WeekPlans.GivesWay(Done(season, new SetSession(Lower with { IsLocked = true })), Demo.Setup, Sixteen, Today), one => one.Was.Id == Lower.Id);
    }

    /// <summary>Heavy legs for a group on the day before the match: the group's, and nobody else's, to give way.</summary>
    [Fact]
    public void A_session_of_a_group_is_judged_for_its_own_group()
    {
        var group = new GroupLine(new("rookies"), "Rookies");
        var late = Lower with { Id = new("late"), Day = new(2027, 10, 22), Groups = new([group.Id]) };
        var season = Done(Demo.Season, new SetGroup(group), new SetSession(late));
        Assert.Contains(WeekPlans.WhyNot(season, Demo.Setup, Today, late), reason => reason.Rule == "heavy-lower-before-match");
        var given = Assert.Single(WeekPlans.GivesWay(season, Demo.Setup, Sixteen, Today));
        Assert.Equal(late, given.Was);
        Assert.Contains(given.Why, reason => reason.Rule == "heavy-lower-before-match");
        // What everyone does is as near to a group's session as the group's own.
        var all = Lower with { Id = new("all"), Day = new(2027, 10, 19) };
        season = Done(Demo.Season, new SetGroup(group), new SetSession(all));
        Assert.DoesNotContain(WeekPlans.WhyNot(season, Demo.Setup, Today, all), reason => reason.Rule == "heavy-session-spacing");
        season = Done(season, new SetSession(late with { Day = new(2027, 10, 20) }));
        Assert.Contains(WeekPlans.WhyNot(season, Demo.Setup, Today, late with { Day = new(2027, 10, 20) }), reason => reason.Rule == "heavy-session-spacing");
        Assert.DoesNotContain(WeekPlans.WhyNot(season, Demo.Setup, Today, all), reason => reason.Rule == "heavy-session-spacing");
    }

    /// <summary>Of a week whose practices nobody has put on days they are assumed, and can be taken along.</summary>
    [Fact]
    public void Practices_without_days_are_assumed_and_can_be_taken()
    {
        var week = Demo.Season.Weeks[19];
        var layout = WeekPlans.Propose(Demo.Season, Demo.Setup, week, Today);
        Assert.Equal(Demo.Season.PracticesOf(week.Id)!.Count, layout.Practices.Count);
        Assert.NotEmpty(layout.Edits);
        Assert.Equal(Demo.Season.PracticesOf(week.Id)!.Count, layout.Season.SessionsIn(week).Count(session => !session.IsOurs));
        Assert.Empty(WeekPlans.Propose(layout.Season, Demo.Setup, week, Today).Edits);
    }

    private static Season Done(Season season, params SeasonEdit[] edits) => edits.Aggregate(season, (current, edit) => current.With(Assert.IsType<Accepted>(Decider.Decide(current, edit)).Step));
}
