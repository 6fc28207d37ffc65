using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Demo;
using Seasonwright.Desk.Tests.Demo;
using Seasonwright.Desk.Weeks;

namespace Seasonwright.Desk.Tests.Weeks;

/// <summary>Weeks laid out as others were, in the demo: week 16 has a match on Saturday 23 October 2027, so has week 19, on 13 November, without sessions.</summary>
public class WeekCopiesTests
{
    private static readonly DateOnly Today = new(2027, 10, 18);

    private static readonly (Season Season, Setup Setup) Demo = DemoSeasonTests.Played(DemoSeason.Make(new(2027, 7, 5)));

    private static readonly SeasonWeek Sixteen = Demo.Season.Weeks[15], Nineteen = Demo.Season.Weeks[18];

    private static readonly TypicalWeek LikeSixteen = TypicalWeek.Of(new("y"), "One match", Demo.Season, Sixteen);

    [Fact]
    public void Every_session_falls_on_its_day_of_the_week()
    {
        var copy = WeekCopies.Of(Demo.Season, Nineteen, Today, LikeSixteen);
        var season = Decider.After(Demo.Season, copy.Edits);
        Assert.Equal(Lie(Demo.Season, Sixteen), Lie(season, Nineteen));
        Assert.Equal((6, 0, 0), (copy.Comes, copy.Goes, copy.LeftOut.Count));
        // Laid out once more nothing changes, and the same sessions come again after they went.
        Assert.Empty(WeekCopies.Of(season, Nineteen, Today, LikeSixteen).Edits);
        Assert.Equal(copy.Edits, WeekCopies.Of(Decider.After(season, season.SessionsIn(Nineteen).Select(session => new RemoveSession(session.Id))), Nineteen, Today, LikeSixteen).Edits);
    }

    [Fact]
    public void What_lies_there_goes_what_is_locked_stays_and_what_is_the_same_keeps_its_id()
    {
        Session mine = new(new("mine"), Nineteen.Days.First, DaySlot.Morning, SessionKind.Power, new Minutes(40), new Rpe(5)),
            locked = mine with { Id = new("locked"), Day = Nineteen.Days.First.AddDays(2), IsLocked = true },
            same = LikeSixteen.Sessions.First(session => session.Kind == SessionKind.UpperStrength) with { Id = new("same"), Day = Nineteen.Days.First, Minutes = new(30), IsCancelled = true };
        var season = Decider.After(Demo.Season, [new SetSession(mine), new SetSession(locked), new SetSession(same)]);
        var copy = WeekCopies.Of(season, Nineteen, Today, LikeSixteen);
        var after = Decider.After(season, copy.Edits);
        Assert.Null(after.Session(mine.Id));
        Assert.Equal(locked, after.Session(locked.Id));
        Assert.Equal((45, false), (after.Session(same.Id)!.Minutes.Value, after.Session(same.Id)!.IsCancelled));
        Assert.Equal((6, 1), (copy.Comes, copy.Goes));
    }

    /// <summary>A week of the season's with a day behind, a closed day and a match on one of three days, whatever lies there.</summary>
    [Fact]
    public void What_has_no_place_is_left_out_and_told()
    {
        var first = Nineteen.Days.First;
        var season = Decider.After(Demo.Season, [
            new SetEvent(new Event(new("shut"), EventKind.RoomClosed, "Hall closed", DaySpan.Of(first.AddDays(2)), Training: new Percent(0))),
            new SetMatch(new Match(new("cup"), first.AddDays(1), first.AddDays(3)))]);
        var copy = WeekCopies.Of(season, Nineteen, first.AddDays(1), LikeSixteen);
        Assert.Equal([DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday], copy.LeftOut.Select(session => session.Day.DayOfWeek).Distinct().Order());
        Assert.Equal(1, copy.Comes);
    }

    [Fact]
    public void Groups_of_another_season_are_left_out()
    {
        var group = new GroupLine(new("keepers"), "Keepers");
        var season = Decider.After(Demo.Season, [new SetGroup(group)]);
        var one = LikeSixteen.Sessions[0];
        var like = LikeSixteen with { Sessions = [one with { Groups = [group.Id, new("gone")] }, LikeSixteen.Sessions[1] with { Groups = [new("gone")] }] };
        var copy = WeekCopies.Of(season, Nineteen, Today, like);
        Assert.Equal([group.Id], Assert.IsType<SetSession>(Assert.Single(copy.Edits)).Session.Groups!);
        Assert.Equal(LikeSixteen.Sessions[1].Id, Assert.Single(copy.LeftOut).Id);
    }

    [Fact]
    public void A_session_that_was_moved_to_another_week_stays_there()
    {
        var season = Decider.After(Demo.Season, WeekCopies.Of(Demo.Season, Nineteen, Today, LikeSixteen).Edits);
        var moved = season.SessionsIn(Nineteen).First(session => session.IsOurs) with { Day = Nineteen.Days.Last.AddDays(2) };
        season = Decider.After(season, [new SetSession(moved)]);
        var after = Decider.After(season, WeekCopies.Of(season, Nineteen, Today, LikeSixteen).Edits);
        Assert.Equal(moved, after.Session(moved.Id));
        Assert.Equal(Lie(Demo.Season, Sixteen), Lie(after, Nineteen));
    }

    /// <summary>Of two practices one is removed and the other moved onto its day: both come again.</summary>
    [Fact]
    public void What_was_moved_inside_the_week_is_taken_for_what_it_lies_on()
    {
        var season = Decider.After(Demo.Season, WeekCopies.Of(Demo.Season, Nineteen, Today, LikeSixteen).Edits);
        var practices = season.SessionsIn(Nineteen).Where(session => !session.IsOurs).ToList();
        season = Decider.After(season, [new RemoveSession(practices[1].Id), new SetSession(practices[0] with { Day = practices[1].Day })]);
        Assert.Equal(Lie(Demo.Season, Sixteen), Lie(Decider.After(season, WeekCopies.Of(season, Nineteen, Today, LikeSixteen).Edits), Nineteen));
    }

    [Fact]
    public void What_was_moved_and_locked_or_done_stays_as_it_is()
    {
        var season = Decider.After(Demo.Season, WeekCopies.Of(Demo.Season, Nineteen, Today, LikeSixteen).Edits);
        var (first, last) = (season.SessionsIn(Nineteen).First(session => !session.IsOurs), season.SessionsIn(Nineteen).Last(session => !session.IsOurs));
        var locked = first with { Day = Nineteen.Days.Last, IsLocked = true };
        var done = last with { Day = Nineteen.Days.First };
        season = Decider.After(season, [new SetSession(locked), new SetSession(done)]);
        var after = Decider.After(season, WeekCopies.Of(season, Nineteen, Nineteen.Days.First.AddDays(1), LikeSixteen).Edits);
        Assert.Equal((locked, done), (after.Session(locked.Id), after.Session(done.Id)));
        Assert.Equal(3 + 2, after.SessionsIn(Nineteen).Count(session => !session.IsOurs));
    }

    [Fact]
    public void A_typical_week_suits_the_same_days_of_match_and_phase()
    {
        Assert.True(LikeSixteen.Suits(Demo.Season, Sixteen));
        Assert.False(LikeSixteen.Suits(Demo.Season, Demo.Season.Weeks[16]));
        Assert.False((LikeSixteen with { Phase = PhaseKind.Transition }).Suits(Demo.Season, Sixteen));
        Assert.True((LikeSixteen with { Phase = null }).Suits(Demo.Season, Sixteen));
    }

    private static IEnumerable<(DayOfWeek, DaySlot, SessionKind, int, TimeOnly?)> Lie(Season season, SeasonWeek week) =>
        season.SessionsIn(week).Select(session => (session.Day.DayOfWeek, session.Slot, session.Kind, session.Minutes.Value, session.Start));
}
