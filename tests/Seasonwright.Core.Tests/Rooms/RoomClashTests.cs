using Seasonwright.Core.Calendar;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Rooms;

namespace Seasonwright.Core.Tests.Rooms;

/// <summary>A room's week judged where it stands, each clash brought about by one session that is put there.</summary>
public class RoomClashTests
{
    private static readonly DateOnly Monday = new(2027, 9, 6);

    private static readonly Room Gym = new(new("gym"), "Strength room", 40, 2,
        [.. Enumerable.Range(1, 5).Select(day => new RoomHours((DayOfWeek)day, new(7, 0), new(21, 30)))], [DaySpan.Of(Monday.AddDays(4))]);

    private static RoomTeam Team(string name, params RoomAsk[] asks) => new(new(name.Replace(' ', '-')), name, asks.ToValueList());

    private static RoomAsk Ask(string name, int day, int hour, int minute = 0, int athletes = 20, int minutes = 60, bool isHeavy = false) =>
        new(new(name.Replace(' ', '-')), name, athletes, new Minutes(minutes), isHeavy, Place: new(Monday.AddDays(day), new(hour, minute)));

    private static List<string> Said(params RoomTeam[] teams) => [.. RoomClash.Of(new(Monday, Gym, teams.ToValueList())).Select(clash => clash.Sentence)];

    [Fact]
    public void What_fits_clashes_with_nothing() =>
        Assert.Empty(Said(Team("Harbour Vale women", Ask("Legs", 0, 18, isHeavy: true), Ask("Power", 2, 18, isHeavy: true)), Team("Turnes", Ask("Upper body", 0, 18), Ask("Speed", 3, 7))));

    [Fact]
    public void A_full_room_is_one_clash_for_as_long_as_it_is_as_full() => Assert.Equal(
        ["The room is full: Tue 18:00-19:00, 52 of 40 places.", "The room is full: Tue 19:00-19:30, 42 of 40 places."],
        Said(Team("Harbour Vale women", Ask("Legs", 1, 18, athletes: 26, minutes: 90)), Team("Turnes", Ask("Power", 1, 18, athletes: 26), Ask("Late", 3, 19)), Team("Kalnes", Ask("Upper body", 1, 19, athletes: 16, minutes: 20))));

    [Fact]
    public void A_session_counts_in_every_half_hour_that_it_touches()
    {
        var use = RoomUse.Of(new(Monday, Gym, [Team("Turnes", Ask("Legs", 0, 18, minutes: 45)), Team("Kalnes", Ask("Power", 0, 18, 30, athletes: 5, minutes: 30))]));
        Assert.Equal([(18 * 60, 20, 1), (18 * 60 + 30, 25, 2)], use.Select(half => (half.From, half.Athletes, half.Teams.Count)));
    }

    [Fact]
    public void Each_team_needs_a_coach() => Assert.Equal(
        ["More teams than coaches: Mon 18:30-19:00, 3 at one time where 2 can be supervised."],
        Said(Team("Harbour Vale women", Ask("Legs", 0, 18, athletes: 5)), Team("Turnes", Ask("Power", 0, 18, athletes: 5)), Team("Kalnes", Ask("Upper body", 0, 18, 30, athletes: 5))));

    [Theory]
    [InlineData(0, 6, "the room is not open Mon 06:00-07:00.")]
    [InlineData(0, 21, "the room is not open Mon 21:00-22:00.")]
    [InlineData(4, 18, "the room is not open Fri 18:00-19:00.")]
    [InlineData(2, 18, "the team is at practice, Wed 18:00-19:00.")]
    [InlineData(3, 18, "the team has a match that day, Thu 18:00-19:00.")]
    [InlineData(0, 18, "Mon 18:00-19:00 is not within the times it can be at.")]
    public void A_place_that_cannot_be_is_told(int day, int hour, string said)
    {
        var ask = Ask("Power", day, hour) with { Windows = [.. Enumerable.Range(1, 4).Select(one => new RoomWindow(Monday.AddDays(one))), new(Monday, new(20, 0)), new(Monday, null, new(7, 0))] };
        var team = Team("Harbour Vale women", ask) with { Practices = [new(Monday.AddDays(2), new(18, 45), new Minutes(90))], Matches = [Monday.AddDays(3)] };
        Assert.Contains(said, string.Join('\n', Said(team)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_of_another_week_is_told() => Assert.Equal(["Harbour Vale women, Power: Mon 18:00-19:00 is not in this week."], Said(Team("Harbour Vale women", Ask("Power", 7, 18))));

    [Theory]
    [InlineData(0, true, "")]
    [InlineData(1, true, "keeps three days to the next match")]
    [InlineData(2, true, "keeps three days to the next match")]
    [InlineData(2, false, "")]
    [InlineData(4, true, "day after a match")]
    [InlineData(4, false, "")]
    public void Heavy_work_keeps_its_distance_from_a_match(int day, bool isHeavy, string said)
    {
        var team = Team("Harbour Vale women", Ask("Legs", day, 18, isHeavy: isHeavy)) with { Matches = [Monday.AddDays(3)] };
        var clashes = RoomClash.Of(new(Monday, Gym with { Closed = null }, [team]));
        if (said.Length == 0) Assert.Empty(clashes);
        else Assert.Contains(said, Assert.Single(clashes).Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(18, 0, 0)]
    [InlineData(17, 30, 1)]
    public void Heavy_sessions_begin_48_hours_apart(int hour, int minute, int clashes)
    {
        var said = Said(Team("Harbour Vale women", Ask("Legs", 0, 18, isHeavy: true), Ask("Power", 2, hour, minute, isHeavy: true)));
        Assert.Equal(clashes, said.Count);
        Assert.All(said, sentence => Assert.Equal("Harbour Vale women: heavy sessions begin 48 hours apart, Legs (Mon 18:00) and Power (Wed 17:30) do not.", sentence));
    }

    [Fact]
    public void A_team_is_in_the_room_once_a_day() => Assert.Equal(
        ["Harbour Vale women: two sessions in the room on one day, Power (Mon 07:00) and Legs (Mon 18:00)."], Said(Team("Harbour Vale women", Ask("Legs", 0, 18), Ask("Power", 0, 7))));
}
