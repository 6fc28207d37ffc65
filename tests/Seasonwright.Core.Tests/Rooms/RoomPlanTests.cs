using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Tests.Drawn;

namespace Seasonwright.Core.Tests.Rooms;

/// <summary>A room's week worked out from the seasons that use it.</summary>
public class RoomPlanTests
{
    private static readonly DateOnly Monday = new(2027, 8, 2);

    private static readonly Room Gym = new(new("gym"), "Strength room", 40, 2, [.. Enumerable.Range(1, 5).Select(day => new RoomHours((DayOfWeek)day, new(7, 0), new(21, 30)))]);

    private static readonly Club House = Club.Empty.With(Assert.IsType<Accepted>(Decider.Decide(Club.Empty, new SetFacility(new(Gym)))).Step);

    private static readonly Session Legs = new(new("legs"), Monday, DaySlot.Afternoon, SessionKind.LowerStrength, new Minutes(60), new Rpe(7), Start: new(17, 0), Room: Gym.Id);

    private static readonly Session Power = new(new("power"), Monday.AddDays(2), DaySlot.Evening, SessionKind.Power, new Minutes(40), new Rpe(5));

    private static readonly Session Practice = new(new("practice"), Monday, DaySlot.Evening, SessionKind.Practice, new Minutes(90), new Rpe(6), Start: new(18, 30));

    private static Setup Team(string name) => Setup.Empty(new(name.Replace(' ', '-'))).With(Assert.IsType<Accepted>(Decider.Decide(Setup.Empty(new("x")), new SetTeamName(name))).Step);

    private static RoomUser User(string name, string season, params SeasonEdit[] edits) => new(
        edits.Aggregate(Season.Empty(new(season)), (now, edit) => now.With(Assert.IsType<Accepted>(Decider.Decide(now, edit)).Step)), Team(name), _ => 18);

    private static SeasonEdit[] Started(params Session[] sessions) =>
        [new StartSeason(new(2027, 7, 5), DayOfWeek.Monday, Enumerable.Range(1, 10).Select(n => new WeekId($"w{n}")).ToValueList(), new("Harbour Vale")), new SetGroup(new(new("backs"), "Backs")), new SetGroup(new(new("line"), "Line")), .. sessions.Select(session => new SetSession(session))];

    private static RoomPlan Plan(DateOnly today, params RoomUser[] users) => RoomPlan.Of(House, Gym, Monday, users, today);

    [Fact]
    public void What_is_in_the_room_has_its_place_what_needs_one_has_none_and_the_rest_is_elsewhere()
    {
        var plan = Plan(Monday, User("Harbour Vale women", "s1", Started(Legs, Power, Practice, Practice with { Id = new("later"), Day = Monday.AddDays(3), Start = null })));
        var team = Assert.Single(plan.Week.Teams);
        Assert.Equal([("legs", true), ("power", false)], plan.Bookings.Select(one => (one.Id.Text, one.IsHere)));
        Assert.Equal((new RoomPlace(Monday, new(17, 0)), (RoomPlace?)null), (plan.Ask(new("legs"))!.Place, plan.Ask(new("power"))!.Place));
        Assert.Equal((18, true, false), (plan.Ask(new("legs"))!.Athletes, plan.Ask(new("legs"))!.IsHeavy, plan.Ask(new("power"))!.IsHeavy));
        // Where no time is known, the usual one of its part of the day is wished.
        Assert.Equal((Monday.AddDays(2), new TimeOnly(18, 0)), (plan.Ask(new("power"))!.Day, plan.Ask(new("power"))!.Start));
        Assert.Equal([new RoomPractice(Monday, new(18, 30), new(90))], team.Practices!);
        Assert.Equal([("Harbour Vale women", Monday.AddDays(3))], plan.Untimed);
    }

    [Fact]
    public void Cancelled_sessions_other_rooms_and_what_needs_no_gym_are_not_in_it()
    {
        var other = new Room(new("annexe"), "Annexe", 10, 1, Gym.Open);
        var house = House.With(Assert.IsType<Accepted>(Decider.Decide(House, new SetFacility(new(other)))).Step);
        var user = User("Harbour Vale women", "s1", Started(Legs with { IsCancelled = true }, Power with { Room = other.Id, Start = new(9, 0) }, Power with { Id = new("gone"), Room = new("sold") }, Power with { Id = new("sprints"), Kind = SessionKind.Speed }));
        var plan = RoomPlan.Of(house, Gym, Monday, [user], Monday);
        // A room that is no more is none; what is in another one keeps its team from this one.
        Assert.Equal(["gone"], plan.Bookings.Select(one => one.Id.Text), StringComparer.Ordinal);
        Assert.Equal([new RoomPractice(Monday.AddDays(2), new(9, 0), new(40))], plan.Week.Teams[0].Practices!);
        Assert.Equal(["power", "gone"], RoomPlan.Of(house, other, Monday, [user], Monday).Bookings.Select(one => one.Id.Text), StringComparer.Ordinal);
    }

    [Fact]
    public void The_past_what_is_locked_and_locked_weeks_stay()
    {
        var edits = Started(Legs, Power with { IsLocked = true }, Legs with { Id = new("friday"), Day = Monday.AddDays(4) });
        Assert.Equal([true, true, false], Plan(Monday.AddDays(1), User("Harbour Vale women", "s1", edits)).Bookings.Select(one => one.IsFixed));
        var locked = Plan(Monday, User("Harbour Vale women", "s1", [.. edits, new LockWeeks(new("w5"), new("w5"), true)]));
        Assert.All(locked.Bookings, one => Assert.True(one.IsFixed));
        Assert.All(locked.Week.Placed, one => Assert.True(one.At.IsLocked));
    }

    [Fact]
    public void What_is_not_fixed_can_be_on_open_days_of_its_own_week_from_today_on()
    {
        var closed = new SetEvent(new Event(new("e"), EventKind.Holiday, "Closed", new DaySpan(Monday.AddDays(3), Monday.AddDays(4)), Training: new Percent(0)));
        var plan = Plan(Monday.AddDays(1), User("Harbour Vale women", "s1", [.. Started(Power), closed]));
        Assert.Equal([1, 2, 5, 6], plan.Ask(new("power"))!.Windows!.Select(window => window.Day.DayNumber - Monday.DayNumber));
    }

    [Fact]
    public void Two_teams_in_one_room_clash_as_the_room_says()
    {
        var plan = Plan(Monday, User("Harbour Vale women", "s1", Started(Legs)), User("Harbour Vale juniors", "s2", Started(Legs with { Start = new(17, 30) })), User("Turnes", "s3", Started(Legs with { Start = new(17, 30) })));
        // Seasons that were brought from one file have sessions of the same ids.
        Assert.Equal(["legs", "legs.2", "legs.3"], plan.Bookings.Select(one => one.Id.Text).Order(StringComparer.Ordinal), StringComparer.Ordinal);
        Assert.Equal(["The room is full: Mon 17:30-18:00, 54 of 40 places.", "More teams than coaches: Mon 17:30-18:00, 3 at one time where 2 can be supervised."],
            plan.Clashes(plan.Bookings.First(one => one.TeamName == "Turnes").Id).Select(clash => clash.Sentence).Where(said => said.Contains("17:30-18:00", StringComparison.Ordinal)), StringComparer.Ordinal);
    }

    [Fact]
    public void Groups_that_share_nobody_can_be_in_the_room_on_one_day_and_at_the_others_practice()
    {
        ValueList<GroupId> backs = [new("backs")], line = [new("line")];
        var user = User("Harbour Vale women", "s1", Started(Legs with { Groups = backs }, Power with { Day = Monday, Start = new(18, 30), Room = Gym.Id, Groups = line }, Practice with { Groups = backs }));
        Assert.Empty(RoomClash.Of(Plan(Monday, user).Week));
        var everyone = User("Harbour Vale women", "s1", Started(Legs with { Groups = backs }, Power with { Day = Monday, Start = new(18, 30), Room = Gym.Id }, Practice with { Groups = backs }));
        Assert.Equal([RoomClashKind.Practice, RoomClashKind.TwiceADay], RoomClash.Of(Plan(Monday, everyone).Week).Select(clash => clash.Kind));
    }

    [Fact]
    public void Two_seasons_of_one_team_are_one_team()
    {
        var plan = Plan(Monday, User("Harbour Vale women", "s1", Started(Legs)), User("Harbour Vale women", "s2", Started(Power)));
        Assert.Equal(2, Assert.Single(plan.Week.Teams).Sessions.Count);
    }

    [Fact]
    public void Waves_are_in_the_room_from_the_first_to_the_last_and_move_together()
    {
        var waves = Legs with { Start = null, Waves = [new("Main", new(18, 15)), new("Early", new(17, 0))] };
        var plan = Plan(Monday, User("Harbour Vale women", "s1", Started(waves)));
        Assert.Equal((new RoomPlace(Monday, new(17, 0)), 135), (plan.Ask(waves.Id)!.Place, plan.Ask(waves.Id)!.Minutes.Value));
        var moved = plan.Bookings[0].PutIn(Gym, new(Monday.AddDays(1), new(9, 30)));
        Assert.Equal((Monday.AddDays(1), DaySlot.Morning, "Strength room", "10:45 09:30"), (moved.Day, moved.Slot, moved.Place, string.Join(' ', moved.Waves!.Select(wave => $"{wave.Start:HH:mm}"))));
    }

    [Fact]
    public void Who_is_put_in_the_room_and_taken_out_again_is_where_it_was()
    {
        var booking = Plan(Monday, User("Harbour Vale women", "s1", Started(Power))).Bookings[0];
        var put = booking.PutIn(Gym, new(Monday.AddDays(2), new(16, 30)));
        Assert.Equal((Gym.Id, "Strength room", new TimeOnly(16, 30), DaySlot.Afternoon), (put.Room!.Value, put.Place, put.Start!.Value, put.Slot));
        Assert.Equal(Power with { Start = new(16, 30), Slot = DaySlot.Afternoon }, (booking with { Session = put }).TakenFrom(Gym));
    }

    [Theory]
    [InlineData(17, 45, 60, 17, 30, 75)]
    [InlineData(17, 30, 60, 17, 30, 60)]
    public void For_the_engine_a_session_begins_on_the_half_hour_and_touches_what_it_touched(int hour, int minute, int minutes, int gridHour, int gridMinute, int gridMinutes)
    {
        var plan = Plan(Monday, User("Harbour Vale women", "s1", Started(Legs with { Start = new(hour, minute), Minutes = new(minutes) })));
        var ask = plan.OnGrid.Asks.Single().Ask;
        Assert.Equal((new RoomPlace(Monday, new(gridHour, gridMinute)), gridMinutes), (ask.Place, ask.Minutes.Value));
        Assert.Equal(RoomUse.Of(plan.Week).Select(half => (half.Day, half.From, half.Athletes)), RoomUse.Of(plan.OnGrid).Select(half => (half.Day, half.From, half.Athletes)));
        Assert.Equal(new RoomPlace(Monday.AddDays(1), new(9, minute % 30)), plan.OffGrid(ask.Id, new(Monday.AddDays(1), new(9, 0))));
    }

    /// <summary>Whatever a season holds: every id once, each booking with its ask, nothing of another week, and nothing that is fixed can be anywhere else.</summary>
    [Fact]
    public void Any_season_gives_a_week() => CsCheck.Check.Sample(CsCheck.Gen.Select(AnySeason.Season, AnySeason.Setup, CsCheck.Gen.Int[-3, 9]), drawn =>
    {
        var (season, setup, today) = drawn;
        var plan = RoomPlan.Of(House, Gym, Monday, [new(season, setup, _ => null), new(season, setup, _ => 12)], Monday.AddDays(today));
        Assert.Equal(plan.Bookings.Select(one => one.Id.Text).Order(StringComparer.Ordinal), plan.Week.Asks.Select(one => one.Ask.Id.Text).Order(StringComparer.Ordinal));
        Assert.Equal(plan.Bookings.Count, plan.Bookings.Select(one => one.Id).Distinct().Count());
        Assert.All(plan.Bookings, one => Assert.True(plan.Week.Span.Contains(one.Session.Day) && !one.Session.IsCancelled));
        Assert.All(plan.Week.Placed, one => Assert.Equal(plan.Booking(one.Ask.Id)!.IsFixed, one.At.IsLocked));
        _ = RoomClash.Of(plan.Week);
        _ = RoomUse.Of(plan.OnGrid);
    }, iter: 200);

    [Fact]
    public void What_a_session_has_to_lift_with_is_what_its_room_says()
    {
        var (team, pounds) = (Team("Harbour Vale women"), Core.Setups.Gym.Usual(MassUnit.Pound));
        var house = House.With(Assert.IsType<Accepted>(Decider.Decide(House, new SetFacility(new(Gym, pounds)))).Step);
        Assert.Equal(pounds, house.SetupFor(team, Legs).Gym);
        Assert.Same(team, house.SetupFor(team, Power));
        Assert.Same(team, House.SetupFor(team, Legs));
    }
}
