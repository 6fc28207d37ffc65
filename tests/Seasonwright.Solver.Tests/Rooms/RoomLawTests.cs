using System.Text.RegularExpressions;
using System.Xml.Linq;
using Seasonwright.Core;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver.Tests;

/// <summary>What holds of every answer of the room stage, and what it says.</summary>
public class RoomLawTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static RoomTeam Team(string name, params RoomAsk[] asks) => new(new(name.Replace(' ', '-')), name, asks.ToValueList());

    private static RoomAsk Ask(string id, int day = 0, int hour = 17, int athletes = 10, bool isHeavy = false) =>
        new(new(id), id, athletes, new Minutes(60), isHeavy, RoomWeeks.Monday.AddDays(day), new(hour, 0));

    private static RoomWeek Week(int places, int coaches, params RoomTeam[] teams) => new(RoomWeeks.Monday, RoomWeeks.Room(places, coaches, (DayOfWeek.Monday, 16, 19), (DayOfWeek.Tuesday, 16, 19)), teams.ToValueList());

    [Fact]
    public void The_same_week_gives_the_same_answer()
    {
        var week = RoomWeeks.Club(4, 14, 3, RoomWeeks.Usual(40, 2), isTight: true);
        var first = RoomProposals.Of(week, Cancel);
        Assert.Equal(first, RoomProposals.Of(week, Cancel));
    }

    [Theory]
    [InlineData(8, 3, false)]
    [InlineData(16, 1, true)]
    public void Asked_again_of_its_own_answer_it_moves_nothing(int teams, int coaches, bool isTooMuch)
    {
        for (var seed = 1; seed <= 3; seed++)
        {
            var first = RoomProposals.Of(RoomWeeks.Club(seed, teams, 3, RoomWeeks.Usual(40, coaches), isTooMuch), Cancel);
            Assert.True(first.IsFewest && first.IsProven);
            Assert.Equal(isTooMuch, first.Unplaced.Count > 0);
            Assert.Equal(first.Week, RoomProposals.Of(first.Week, Cancel).Week);
        }
    }

    /// <summary>Groups that share nobody can do what a team cannot: a week parted into groups places as many, and clashes with nothing.</summary>
    [Fact]
    public void Groups_of_a_team_are_apart_and_everyone_is_in_each()
    {
        var gained = 0;
        for (var seed = 1; seed <= 60; seed++)
        {
            var random = new Random(seed);
            var week = RoomWeeks.Small(seed);
            week = week with { Teams = week.Teams.Select(team => team with { Sessions = team.Sessions.Select(ask => ask with { Place = null }).ToValueList() }).ToValueList() };
            var parted = week with
            {
                Teams = week.Teams.Select(team => team with
                {
                    Sessions = team.Sessions.Select(ask => ask with { Groups = Whom(random) }).ToValueList(),
                    Practices = team.Practices?.Select(practice => practice with { Groups = Whom(random) }).ToValueList(),
                }).ToValueList(),
            };
            var (whole, apart) = (RoomProposals.Of(week, Cancel), RoomProposals.Of(parted, Cancel));
            Assert.Empty(RoomClash.Of(apart.Week));
            Assert.True(apart.Unplaced.Count <= whole.Unplaced.Count, $"seed {seed}");
            gained += whole.Unplaced.Count - apart.Unplaced.Count;
        }
        Assert.True(gained > 0, "No group ever was where its team could not be.");

        static ValueList<GroupId>? Whom(Random random) => random.Next(3) switch { 0 => null, 1 => [new("backs")], _ => [new("line")] };
    }

    /// <summary>What is locked stays even where it clashes; nothing else is put on top of it.</summary>
    [Fact]
    public void Nothing_locked_moves()
    {
        var locked = new RoomPlace(RoomWeeks.Monday, new(17, 0), IsLocked: true);
        var week = Week(15, 3, Team("Harbour Vale women", Ask("a") with { Place = locked }), Team("Turnes", Ask("b") with { Place = locked }), Team("Kalnes", Ask("c", athletes: 5)));
        var proposal = RoomProposals.Of(week, Cancel);
        Assert.Equal([locked, locked], proposal.Week.Placed.Take(2).Select(one => one.At));
        // An hour before or after: both cost the same.
        Assert.Contains(proposal.Week.Placed.Last().At.Start.Hour, new[] { 16, 18 });
        Assert.Equal([RoomClashKind.Places], RoomClash.Of(proposal.Week).Select(clash => clash.Kind));
    }

    /// <summary>Six hours, one team at a time: the two sessions too many are missed by the teams that ask for most.</summary>
    [Fact]
    public void A_team_with_one_session_does_not_lose_it_to_one_with_three()
    {
        var week = Week(20, 1,
            Team("Turnes", Ask("t1"), Ask("t2", 1)), Team("Kalnes", Ask("k1"), Ask("k2", 1)), Team("Morby", Ask("m1"), Ask("m2", 1)),
            Team("Harbour Vale women", Ask("h1")), Team("Harbour Vale juniors", Ask("j1")));
        var proposal = RoomProposals.Of(week, Cancel);
        Assert.Equal(2, proposal.Unplaced.Count);
        Assert.DoesNotContain(proposal.Unplaced, one => one.Session.Text is "h1" or "j1");
        Assert.Equal(2, proposal.Unplaced.Select(one => one.Session.Text[0]).Distinct().Count());
    }

    [Fact]
    public void What_has_no_place_is_told_with_the_half_hours_that_are_too_small()
    {
        var week = new RoomWeek(RoomWeeks.Monday, RoomWeeks.Room(20, 1, (DayOfWeek.Monday, 17, 18)), [Team("Turnes", Ask("Legs")), Team("Harbour Vale women", Ask("Power"))]);
        var proposal = RoomProposals.Of(week, Cancel);
        Assert.Equal(1, proposal.Fewest);
        Assert.Contains("no free half hour: no coach is free (Mon 17:00-18:00).", Assert.Single(proposal.Unplaced).Sentence, StringComparison.Ordinal);
        Assert.Equal("Where the room is too small for all: no coach is free (Mon 17:00-18:00).", Assert.Single(proposal.Binding));
    }

    [Theory]
    [InlineData(21, 60, "the session has more athletes than the room has places")]
    [InlineData(10, 200, "the room is never open for so long")]
    public void What_the_room_cannot_hold_at_all_is_told_so(int athletes, int minutes, string why)
    {
        var proposal = RoomProposals.Of(Week(20, 1, Team("Turnes", Ask("Legs", athletes: athletes) with { Minutes = new(minutes) })), Cancel);
        Assert.Equal($"Turnes, Legs: no half hour of the week is possible: {why}.", Assert.Single(proposal.Unplaced).Sentence);
    }

    [Fact]
    public void What_a_locked_session_keeps_out_is_told_so()
    {
        var locked = Ask("Legs") with { Place = new(RoomWeeks.Monday, new(17, 0), IsLocked: true) };
        var week = Week(20, 1, Team("Turnes", locked, Ask("Power"))) with { Room = RoomWeeks.Room(20, 1, (DayOfWeek.Monday, 16, 19)) };
        Assert.Equal("Turnes, Power: no half hour of the week is possible: the team is in the room already that day.", Assert.Single(RoomProposals.Of(week, Cancel).Unplaced).Sentence);
    }

    [Fact]
    public void What_can_never_have_a_place_is_told_so()
    {
        var women = Team("Harbour Vale women", Ask("Legs", isHeavy: true) with { Minutes = new(60) }) with { Matches = [RoomWeeks.Monday.AddDays(2)] };
        var proposal = RoomProposals.Of(Week(20, 1, women), Cancel);
        Assert.Equal("Harbour Vale women, Legs: no half hour of the week is possible: heavy work for the legs keeps three days to the next match.", Assert.Single(proposal.Unplaced).Sentence);
        Assert.Empty(proposal.Binding);
        Assert.Equal("heavy-lower-before-match", Assert.Single(proposal.Unplaced[0].Reasons).Rule);
    }

    /// <summary>A fourth of an hour to change over is a wish, not a must.</summary>
    [Fact]
    public void Practice_leaves_time_to_change_over_where_the_room_does()
    {
        var team = Team("Harbour Vale women", Ask("Power", hour: 17)) with { Practices = [new(RoomWeeks.Monday, new(18, 0), new Minutes(90))] };
        Assert.Equal(new TimeOnly(16, 30), RoomProposals.Of(Week(20, 1, team), Cancel).Week.Placed.Single().At.Start);
        var late = Week(20, 1, team) with { Room = RoomWeeks.Room(20, 1, (DayOfWeek.Monday, 17, 19)) };
        var proposal = RoomProposals.Of(late, Cancel);
        Assert.Equal((new TimeOnly(17, 0), 2L), (proposal.Week.Placed.Single().At.Start, proposal.Cost));
    }

    /// <summary>"Why not there?" and Core's clashes are two readings of the same conditions: they agree at every start of drawn weeks.</summary>
    [Fact]
    public void Why_not_there_says_no_where_a_clash_would_be()
    {
        int free = 0, not = 0;
        for (var seed = 1; seed <= 40; seed++)
        {
            var week = RoomProposals.Of(RoomWeeks.Small(seed), Cancel).Week;
            foreach (var (_, ask) in week.Asks)
                for (var half = 30; half < 46; half++)
                    for (var day = 0; day < 3; day++)
                    {
                        var place = new RoomPlace(RoomWeeks.Monday.AddDays(day), Clock.Time(30 * half));
                        var clashes = RoomClash.Of(week.With(ask.Id, place)).Where(clash => clash.Sessions.Contains(ask.Id)).ToList();
                        var reasons = RoomProposals.WhyNot(week, ask.Id, place.Day, place.Start);
                        Assert.True(clashes.Count == 0 == (reasons.Count == 0), $"seed {seed}, {ask.Id} {place}: {string.Join(" ", clashes.Select(clash => clash.Sentence))} / {string.Join(" ", reasons.Select(reason => reason.Sentence))}");
                        if (reasons.Count == 0) free++;
                        else not++;
                    }
        }
        Assert.True(free > 200 && not > 2000, $"{free} free, {not} not");
    }

    [Fact]
    public void A_run_that_is_called_off_ends()
    {
        using var off = new CancellationTokenSource();
        off.Cancel();
        Assert.Throws<OperationCanceledException>(() => RoomProposals.Of(RoomWeeks.Club(1, 4, 2, RoomWeeks.Usual(40, 2)), off.Token));
    }

    /// <summary>Every sentence exists, and every one that exists is said.</summary>
    [Fact]
    public void Words_and_conditions_match()
    {
        var root = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(System.IO.Path.Combine(root.FullName, "Seasonwright.slnx"))) root = root.Parent!;
        var folder = System.IO.Path.Combine(root.FullName, "src", "Seasonwright.Solver");
        var words = XDocument.Load(System.IO.Path.Combine(folder, "PlanWords.resx")).Root!.Elements("data").Select(data => data.Attribute("name")!.Value).Where(name => name.StartsWith("room", StringComparison.Ordinal)).ToList();
        var source = string.Join('\n', Directory.GetFiles(System.IO.Path.Combine(folder, "Rooms"), "*.cs").Select(File.ReadAllText));
        var conditions = Regex.Matches(source, "new\\(\"(?<name>[a-z-]+)\"", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)).Select(match => $"room.{match.Groups["name"].Value}").ToList();
        Assert.Equal(11, conditions.Count);
        Assert.All(conditions, name => Assert.Contains(name, words, StringComparer.Ordinal));
        Assert.All(words, name => Assert.True(conditions.Contains(name, StringComparer.Ordinal) || source.Contains($"\"{name}\"", StringComparison.Ordinal), name));
    }
}
