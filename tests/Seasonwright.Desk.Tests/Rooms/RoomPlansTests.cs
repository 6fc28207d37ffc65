using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk.Demo;
using Seasonwright.Desk.Rooms;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Streams;
using Seasonwright.Desk.Workouts;

namespace Seasonwright.Desk.Tests.Rooms;

/// <summary>A room of the club and two teams that share it, kept, moved and taken back as a person does it. The day is Wednesday 20 October 2027.</summary>
public class RoomPlansTests
{
    private static readonly DateOnly Monday = new(2027, 10, 18), Thursday = Monday.AddDays(3);

    private static readonly Room Gym = new(new("gym"), "Strength room", 24, 2, [.. Enumerable.Range(1, 6).Select(day => new RoomHours((DayOfWeek)day, new(16, 0), new(21, 0)))]);

    private static Session Legs(DateOnly day, int hour = 17) => new(new($"legs-{day:MM-dd}"), day, DaySlot.Afternoon, SessionKind.LowerStrength, new Minutes(60), new Rpe(7), Start: new(hour, 0), Place: Gym.Name, Room: Gym.Id);

    private static async Task<(Desk Desk, SeasonId Women, SeasonId Juniors)> SharedAsync()
    {
        var desk = await Desk.OpenAsync();
        var club = await desk.Workspace.ClubStreamAsync();
        Assert.IsType<Kept>(await club.ApplyAsync(desk.Runa, new(Guid.NewGuid(), 0, [new SetFacility(new(Gym))])));
        return (desk, await Team("Harbour Vale women"), await Team("Harbour Vale juniors"));

        async Task<SeasonId> Team(string name)
        {
            var (answer, season) = await desk.Workspace.CreateAsync(desk.Runa, Guid.NewGuid(), null, [],
            [
                new StartSeason(new DateOnly(2027, 10, 4), DayOfWeek.Monday, Desk.Weeks, new TeamCard(name)),
                new SetSession(Legs(Monday)), new SetSession(Legs(Thursday)), new SetSession(Legs(Thursday) with { Id = new("power"), Kind = SessionKind.Power, Day = Thursday.AddDays(1), Room = null, Place = null, Start = null }),
            ]);
            Assert.IsType<Kept>(answer);
            return season!.Value;
        }
    }

    private static RoomMove Move(RoomNow now, SeasonId season, string session, RoomPlace? place) => new(now.Plan.Bookings.Single(one => one.Season == season && one.Session.Id.Text == session), place);

    private static Task<RoomNow> NowAsync(Desk desk) => desk.Workspace.RoomNowAsync(Gym, Monday);

    private static async Task<List<long>> NumbersAsync(Desk desk, params SeasonId[] seasons)
    {
        List<long> numbers = [];
        foreach (var season in seasons) numbers.Add((await desk.SeasonAsync(season)).Stream.State.Number);
        return numbers;
    }

    [Fact]
    public async Task A_facility_is_kept_with_its_history_and_its_first_is_taken_back_too()
    {
        var (desk, _, _) = await SharedAsync();
        await using var _1 = desk;
        await desk.RestartAsync();
        var club = await desk.Workspace.ClubStreamAsync();
        Assert.Equal(Gym, Assert.Single((await desk.Workspace.ClubAsync()).Facilities).Room);
        Assert.Equal("Added the room Strength room", Assert.Single(await club.HistoryAsync()).Words);
        Assert.IsType<Kept>(await club.UndoAsync(desk.Runa, Guid.NewGuid()));
        Assert.Empty((await desk.Workspace.ClubAsync()).Facilities);
        Assert.IsType<Kept>(await club.RedoAsync(desk.Runa, Guid.NewGuid()));
        Assert.IsType<NotDone>(await club.ApplyAsync(desk.Runa, new(Guid.NewGuid(), club.State.Number, [new SetTeamName("Other")])));
        Assert.IsType<NotDone>(await (await desk.Workspace.SeasonAsync((await desk.Workspace.SeasonsAsync())[0].Id))!.Stream.ApplyAsync(desk.Runa, new(Guid.NewGuid(), 1, [new RemoveFacility(Gym.Id)])));
    }

    [Fact]
    public async Task The_week_is_read_from_every_season_and_the_past_stays()
    {
        var (desk, women, juniors) = await SharedAsync();
        await using var _1 = desk;
        var plan = (await NowAsync(desk)).Plan;
        Assert.Equal(["Harbour Vale juniors", "Harbour Vale women"], plan.Week.Teams.Select(team => team.Name), StringComparer.Ordinal);
        Assert.Equal(6, plan.Bookings.Count);
        Assert.Equal(2, plan.Bookings.Count(one => !one.IsHere));
        Assert.All(plan.Bookings, one => Assert.Equal(one.Session.Day == Monday, one.IsFixed));
        // Nobody is on the lists of these teams.
        Assert.All(plan.Bookings, one => Assert.Null(one.Athletes));
        var answer = await desk.Workspace.MoveAsync(desk.Runa, Guid.NewGuid(), await NowAsync(desk), [Move(await NowAsync(desk), women, "legs-10-18", new(Thursday, new(16, 0)))]);
        Assert.Equal("room-fixed", Assert.Single(Assert.IsType<NotDone>(answer).Reasons).Id);
    }

    [Fact]
    public async Task Sessions_of_two_teams_move_under_one_press_and_come_back_under_one()
    {
        var (desk, women, juniors) = await SharedAsync();
        await using var _1 = desk;
        var now = await NowAsync(desk);
        var gesture = Guid.NewGuid();
        RoomMove[] moves = [Move(now, women, "legs-10-21", new(Thursday, new(18, 30))), Move(now, juniors, "power", new(Thursday.AddDays(1), new(16, 0)))];
        var first = await desk.Workspace.MoveAsync(desk.Runa, gesture, now, moves);
        Assert.IsType<Kept>(first);
        Assert.Equal(first, await desk.Workspace.MoveAsync(desk.Runa, gesture, now, moves));
        await desk.RestartAsync();
        Assert.Equal(first, await desk.Workspace.MoveAsync(desk.Runa, gesture, now, moves));
        Assert.Equal([2L, 2L], (await NumbersAsync(desk, women, juniors)).Select(number => number - 3));
        Assert.Equal((new TimeOnly(18, 30), DaySlot.Evening), ((await desk.SeasonAsync(women)).Season.Session(new("legs-10-21"))!.Start!.Value, (await desk.SeasonAsync(women)).Season.Session(new("legs-10-21"))!.Slot));
        Assert.Equal(("Strength room", Gym.Id), ((await desk.SeasonAsync(juniors)).Season.Session(new("power"))!.Place, (await desk.SeasonAsync(juniors)).Season.Session(new("power"))!.Room));

        var last = await desk.Workspace.LastMoveAsync(desk.Runa);
        Assert.Equal(gesture, last!.Gesture);
        Assert.IsType<Kept>(await desk.Workspace.TakeBackAsync(desk.Runa, Guid.NewGuid(), gesture));
        Assert.Equal(now.Plan, (await NowAsync(desk)).Plan);
        Assert.Equal("undo-none", Assert.Single(Assert.IsType<NotDone>(await desk.Workspace.TakeBackAsync(desk.Tove, Guid.NewGuid(), Guid.NewGuid())).Reasons).Id);
    }

    [Fact]
    public async Task Where_one_season_refuses_none_is_changed()
    {
        var (desk, women, juniors) = await SharedAsync();
        await using var _1 = desk;
        var season = await desk.SeasonAsync(juniors);
        // Three of ours stand on Saturday already, and a day holds no more.
        foreach (var n in Enumerable.Range(1, 3)) Assert.IsType<Kept>(await season.Stream.ApplyAsync(desk.Tove, Desk.Gesture(season, new SetSession(new(new($"full-{n}"), Thursday.AddDays(2), DaySlot.Morning, SessionKind.Recovery, new Minutes(20), new Rpe(2))))));
        var (now, before) = (await NowAsync(desk), await NumbersAsync(desk, women, juniors));
        RoomMove[] moves = [Move(now, women, "legs-10-21", new(Thursday, new(18, 30))), Move(now, juniors, "power", new(Thursday.AddDays(2), new(16, 0)))];
        Assert.Equal("session-day-full", Assert.Single(Assert.IsType<NotDone>(await desk.Workspace.MoveAsync(desk.Runa, Guid.NewGuid(), now, moves)).Reasons).Id);
        Assert.Equal(before, await NumbersAsync(desk, women, juniors));
        await desk.RestartAsync();
        Assert.Equal(before, await NumbersAsync(desk, women, juniors));
        Assert.Equal(now.Plan, (await NowAsync(desk)).Plan);
    }

    [Fact]
    public async Task What_somebody_else_moved_meanwhile_is_not_overwritten_and_is_named()
    {
        var (desk, women, juniors) = await SharedAsync();
        await using var _1 = desk;
        var now = await NowAsync(desk);
        var season = await desk.SeasonAsync(juniors);
        Assert.IsType<Kept>(await season.Stream.ApplyAsync(desk.Tove, Desk.Gesture(season, new SetSession(Legs(Thursday, 19)))));
        RoomMove[] moves = [Move(now, women, "legs-10-21", new(Thursday, new(18, 30))), Move(now, juniors, "legs-10-21", new(Thursday, new(16, 0)))];
        var reason = Assert.Single(Assert.IsType<NotDone>(await desk.Workspace.MoveAsync(desk.Runa, Guid.NewGuid(), now, moves)).Reasons);
        Assert.Equal("changed-meanwhile", reason.Id);
        Assert.Contains("Tove Marrin", reason.Sentence, StringComparison.Ordinal);
        // Another session of that season is no conflict.
        Assert.IsType<Kept>(await desk.Workspace.MoveAsync(desk.Runa, Guid.NewGuid(), now, [moves[0], Move(now, juniors, "power", new(Thursday.AddDays(1), new(16, 0)))]));
    }

    [Fact]
    public async Task What_one_season_has_changed_since_stops_the_whole_undo()
    {
        var (desk, women, juniors) = await SharedAsync();
        await using var _1 = desk;
        var (now, gesture) = (await NowAsync(desk), Guid.NewGuid());
        Assert.IsType<Kept>(await desk.Workspace.MoveAsync(desk.Runa, gesture, now, [Move(now, women, "legs-10-21", new(Thursday, new(18, 30))), Move(now, juniors, "legs-10-21", new(Thursday, new(16, 0)))]));
        var season = await desk.SeasonAsync(juniors);
        await season.Stream.ApplyAsync(desk.Tove, Desk.Gesture(season, new SetSession(Legs(Thursday, 20))));
        var before = await NumbersAsync(desk, women, juniors);
        Assert.Equal("undo-overtaken", Assert.Single(Assert.IsType<NotDone>(await desk.Workspace.TakeBackAsync(desk.Runa, Guid.NewGuid(), gesture)).Reasons).Id);
        Assert.Equal(before, await NumbersAsync(desk, women, juniors));
        desk.Clock.Advance(TimeSpan.FromMinutes(1));
        await season.Stream.ApplyAsync(desk.Runa, Desk.Gesture(season, Desk.Load(9, 900)));
        Assert.Equal("undo-apart", Assert.Single(Assert.IsType<NotDone>(await desk.Workspace.TakeBackAsync(desk.Runa, Guid.NewGuid(), gesture)).Reasons).Id);
        // What was done last is no move, so it is not offered as one.
        Assert.Null(await desk.Workspace.LastMoveAsync(desk.Runa));
    }

    [Fact]
    public async Task Several_gestures_over_the_same_seasons_at_once_wait_for_each_other()
    {
        var (desk, women, juniors) = await SharedAsync();
        await using var _1 = desk;
        var now = await NowAsync(desk);
        var answers = await Task.WhenAll(Enumerable.Range(0, 6).Select(n => Task.Run(() => desk.Workspace.MoveAsync(desk.Runa, Guid.NewGuid(), now,
            n % 2 == 0 ? [Move(now, women, "legs-10-21", new(Thursday, new(18, 0))), Move(now, juniors, "power", new(Thursday.AddDays(1), new(16, 0)))]
            : [Move(now, juniors, "power", new(Thursday.AddDays(1), new(18, 0))), Move(now, women, "legs-10-21", new(Thursday, new(16, 0)))]))));
        // One is first; the others saw a week that is no more, or ask for what is there.
        Assert.Contains(answers, answer => answer is Kept);
        Assert.All(answers, answer => Assert.True(answer is Kept or NotDone));
        var (one, other) = ((await desk.SeasonAsync(women)).Season.Session(new("legs-10-21"))!.Start, (await desk.SeasonAsync(juniors)).Season.Session(new("power"))!.Start);
        Assert.Contains((one, other), new (TimeOnly?, TimeOnly?)[] { (new(18, 0), new(16, 0)), (new(16, 0), new(18, 0)) });
    }

    [Fact]
    public async Task A_proposal_moves_what_is_too_much_and_clashes_with_nothing()
    {
        var (desk, women, juniors) = await SharedAsync();
        await using var _1 = desk;
        await (await desk.Workspace.ClubStreamAsync()).ApplyAsync(desk.Runa, new(Guid.NewGuid(), 1, [new SetFacility(new(Gym with { Coaches = 1 }))]));
        var now = await desk.Workspace.RoomNowAsync((await desk.Workspace.ClubAsync()).Facility(Gym.Id)!.Room, Monday);
        // Monday is past: what clashes there stays.
        Assert.Equal([Monday, Thursday], RoomClash.Of(now.Plan.Week).Select(clash => clash.Day).Distinct().Order());
        var proposed = RoomPlans.Propose(now.Plan);
        Assert.All(RoomClash.Of(proposed.Week), clash => Assert.Equal(Monday, clash.Day));
        Assert.Empty(proposed.Proposal.Unplaced);
        Assert.DoesNotContain(proposed.Moves, move => move.Booking.IsFixed);
        Assert.IsType<Kept>(await desk.Workspace.MoveAsync(desk.Runa, Guid.NewGuid(), now, proposed.Moves));
        var after = await desk.Workspace.RoomNowAsync(now.Plan.Week.Room, Monday);
        Assert.Equal(proposed.Week, after.Plan.Week with { Teams = after.Plan.Week.Teams.Select((team, at) => team with { Sessions = proposed.Week.Teams[at].Sessions.Select(ask => ask with { Place = after.Plan.Ask(ask.Id)!.Place }).ToValueList() }).ToValueList() });
        Assert.Empty(RoomPlans.Propose(after.Plan).Moves);
    }

    /// <summary>Kilos as the team's plates make them, until the session is in a room that says itself what it has.</summary>
    [Fact]
    public async Task Cards_are_made_with_what_the_room_has()
    {
        await using var desk = await Desk.OpenAsync();
        await desk.Workspace.AddDemoAsync(desk.Runa, new(2027, 10, 20));
        var open = await desk.SeasonAsync(DemoBirth.Id);
        var legs = open.Season.Sessions.First(session => session is { Kind: SessionKind.LowerStrength, Workout: not null } && session.Day > Thursday);
        async Task<List<string>> WeightsAsync() => [.. (await desk.Workspace.CardsAsync(open, legs.Id))!.Cards.SelectMany(card => card.Lines).Select(line => line.Weight)];
        var room = (await desk.Workspace.ClubAsync()).Facilities.Single().Room;
        var own = await WeightsAsync();
        Assert.Contains(own, weight => weight.Contains("kg", StringComparison.Ordinal));

        var now = await desk.Workspace.RoomNowAsync(room, Monday.AddDays(7));
        Assert.IsType<Kept>(await desk.Workspace.MoveAsync(desk.Runa, Guid.NewGuid(), now, [new(now.Plan.Bookings.Single(one => one.Session.Id == legs.Id), new(legs.Day, new(9, 30)))]));
        Assert.Equal(own, await WeightsAsync());
        var club = await desk.Workspace.ClubStreamAsync();
        Assert.IsType<Kept>(await club.ApplyAsync(desk.Runa, new(Guid.NewGuid(), club.State.Number, [new SetFacility(new(room, Core.Setups.Gym.Usual(MassUnit.Pound)))])));
        Assert.Contains(await WeightsAsync(), weight => weight.Contains("lb", StringComparison.Ordinal));
    }
}
