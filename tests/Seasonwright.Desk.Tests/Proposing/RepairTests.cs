using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Demo;
using Seasonwright.Desk.Proposing;
using Seasonwright.Desk.Tests.Demo;
using Seasonwright.Solver;

namespace Seasonwright.Desk.Tests.Proposing;

/// <summary>What the demo's coach would say of a repair of her own hand-drawn year: as much as must change, and not a week more. The counts are a reviewer's, common practice, no source.</summary>
public class RepairTests
{
    private static readonly DateOnly Today = new(2027, 10, 18);

    private static readonly (Season Season, Setup Setup) Demo = DemoSeasonTests.Played(DemoSeason.Make(new(2027, 7, 5)));

    [Fact]
    public void A_league_match_called_off_changes_its_own_week_at_most()
    {
        var match = MatchOn(new(2028, 2, 5));
        Assert.Equal([31], Changed(Repaired(new SetMatch(match with { Status = MatchStatus.Cancelled }))));
    }

    [Fact]
    public void A_match_moved_by_four_days_changes_the_two_weeks_it_leaves_and_comes_to() =>
        Assert.Equal([30, 31], Changed(Repaired(new MoveMatch(MatchOn(new(2028, 1, 29)).Id, new(2028, 2, 2)))));

    /// <summary>The plan as agreed has a taper of one week; a fortnight of rest before the match is none that anybody asked for.</summary>
    [Fact]
    public void A_key_match_that_moves_keeps_the_style_of_its_taper()
    {
        var repaired = Repaired(new MoveMatch(MatchOn(new(2028, 2, 12)).Id, new(2028, 2, 19)));
        Assert.Equal([33], Numbers(repaired, WeekKind.Taper).Where(week => week is > 28 and < 36));
    }

    /// <summary>Nothing before a lost fortnight changes; after it the squad comes back as from a break, the match in its first week or not.</summary>
    [Fact]
    public void After_a_lost_fortnight_the_squad_comes_back_step_by_step_and_nothing_before_it_changes()
    {
        var repaired = Repaired(Lost(30), Lost(31));
        Assert.All(Changed(repaired), week => Assert.True(week >= 30, $"week {week}"));
        Assert.Equal([32, 33], Numbers(repaired, WeekKind.ReEntry).Where(week => week > 31));
        Assert.True(LoadOf(repaired, 32) < LoadOf(repaired, 33) && LoadOf(repaired, 33) < LoadOf(repaired, 34));
    }

    [Fact]
    public void After_a_lost_week_with_a_match_the_next_one_is_a_week_back() => Assert.Contains(20, Numbers(Repaired(Lost(19)), WeekKind.ReEntry));

    /// <summary>Lost on Wednesday, a week that has begun has trained nothing: it says so, and the next one is a week back.</summary>
    [Fact]
    public void A_week_that_is_lost_after_it_began_is_a_week_off()
    {
        var repaired = Repaired(Today.AddDays(2), Lost(16));
        Assert.Equal(WeekKind.Reduced, repaired.KindOf(repaired.Weeks[15].Id));
        Assert.InRange(LoadOf(repaired, 16), 1, 900);
        Assert.All(Demo.Setup.Qualities, quality => Assert.Equal(Emphasis.None, repaired.EmphasisOf(repaired.Weeks[15].Id, quality.Id)));
        Assert.Contains(17, Numbers(repaired, WeekKind.ReEntry));
    }

    /// <summary>A season that is over has nothing left to plan.</summary>
    [Fact]
    public void After_its_last_day_a_season_is_not_painted_over()
    {
        var asked = Asked.ForPlan(Demo.Season, Demo.Setup, Demo.Season.Days!.Value.Last.AddDays(3), 1);
        Assert.Empty(Proposals.Of(asked.Season, asked.Setup, asked.Wishes, 1, (kind, key) => new NaturalIds(asked.Season.Id).Of(kind, key))[0].Edits);
    }

    /// <summary>What was changed by hand since the plan was published is as good as agreed.</summary>
    [Fact]
    public void A_load_set_by_hand_since_stays()
    {
        var week = Demo.Season.Weeks[18];
        var repaired = Repaired(new SetWeekLoad(week.Id, week.Id, new Load(2570)), Lost(30), Lost(31));
        Assert.Equal(2570, LoadOf(repaired, 19));
    }

    /// <summary>Tests that tire keep 72 hours before a match and 48 after one (rule test-timing); nothing but their day changes.</summary>
    [Fact]
    public void A_test_day_gives_way_to_a_match_that_comes_to_it()
    {
        var test = Coming();
        var repaired = Repaired(Moved(test));
        var (now, match) = (repaired.AllTestDays.Single(one => one.Id == test.Id), repaired.Match(Next(test).Id)!);
        Assert.NotEqual(test.Day, now.Day);
        Assert.Equal(test with { Day = now.Day }, now);
        Assert.InRange(Math.Abs(now.Day.DayNumber - test.Day.DayNumber), 1, 14);
        Assert.All(repaired.Matches.Where(one => one.IsOfficial), one => Assert.False(now.Day.DayNumber - one.Day!.Value.DayNumber is > -3 and < 2, $"{now.Day} beside the match on {one.Day}"));
        Assert.Equal(Demo.Season.AllTestDays.Where(one => one.Id != test.Id), repaired.AllTestDays.Where(one => one.Id != test.Id && Demo.Season.AllTestDays.Any(known => known.Id == one.Id)));
    }

    [Fact]
    public void A_test_day_of_a_locked_week_stays_and_is_told()
    {
        var test = Coming();
        var week = Demo.Season.WeekOf(test.Day)!;
        var now = Done(Demo.Season, [new LockWeeks(week.Id, week.Id, true), Moved(test)]);
        var repair = Proposals.Of(now, Demo.Setup, Asked.ForRepair(now, Demo.Setup, Demo.Season, Today, 1000).Wishes, 1, (kind, key) => $"{kind}-{key}")[0];
        Assert.Contains(repair.ByFacts, sentence => sentence.Contains(test.Battery, StringComparison.Ordinal));
        Assert.DoesNotContain(repair.Edits, edit => edit is SetTestDay { TestDay.Id: var id } && id == test.Id);
    }

    /// <summary>A test day that was too near to a match when the plan was agreed is the coach's own wish.</summary>
    [Fact]
    public void What_stood_too_near_before_stays()
    {
        var test = Coming();
        var stood = Done(Demo.Season, [Moved(test)]);
        var now = Done(stood, [Lost(30)]);
        var repair = Proposals.Of(now, Demo.Setup, Asked.ForRepair(now, Demo.Setup, stood, Today, 1000).Wishes, 1, (kind, key) => $"{kind}-{key}")[0];
        Assert.DoesNotContain(repair.Edits, edit => edit is SetTestDay { TestDay.Id: var id } && id == test.Id);
    }

    /// <summary>The first plan that is whole can be kept; what comes after it is only better.</summary>
    [Fact]
    public void A_repair_can_be_kept_early()
    {
        var now = Done(Demo.Season, [new MoveMatch(MatchOn(new(2028, 2, 12)).Id, new(2028, 2, 19))]);
        var wishes = Asked.ForRepair(now, Demo.Setup, Demo.Season, Today, 1000).Wishes;
        List<(Reach? Reach, bool IsWhole)> told = [];
        var whole = Proposals.Of(now, Demo.Setup, wishes, 1, (kind, key) => $"{kind}-{key}", new Watch((_, plans) => told.Add((Assert.Single(plans).Wishes.Reach, plans[0].Emphasis.Levels.Any(week => week.Any(level => level > 0)))), default));
        Assert.NotEqual(new Reach(0, 0), whole[0].Wishes.Reach);
        Assert.Contains(told, one => one.IsWhole && one.Reach == new Reach(0, 0));
        using var enough = new CancellationTokenSource();
        var kept = Proposals.Of(now, Demo.Setup, wishes, 1, (kind, key) => $"{kind}-{key}", new Watch((_, _) => enough.Cancel(), enough.Token));
        Assert.Equal(new Reach(0, 0), Assert.Single(kept).Wishes.Reach);
    }

    /// <summary>No warning that was not there before, but where the matches and the practices that are entered go beyond a limit by themselves.</summary>
    [Fact]
    public void No_repair_adds_a_warning_that_the_plan_could_help()
    {
        SeasonEdit[][] happenings = [[Lost(19)], [Lost(17)], [Lost(30), Lost(31)], [new MoveMatch(MatchOn(new(2028, 1, 29)).Id, new(2028, 2, 2))], [new MoveMatch(MatchOn(new(2028, 2, 12)).Id, new(2028, 2, 19))]];
        Assert.All(happenings, happened =>
        {
            var repaired = Repaired(happened);
            var problem = Problem.Of(repaired, Demo.Setup, new Wishes());
            var warnings = Rulebook.Check(repaired, Demo.Setup).Findings.Where(finding => finding is { IsForced: false, Severity: > Severity.Caution });
            Assert.All(warnings.SelectMany(finding => Enumerable.Range(finding.Place.First, finding.Place.Last - finding.Place.First + 1).Select(week => (Finding: finding, Week: week))), at =>
                Assert.True(problem.Points.Of(repaired.TargetOf(repaired.Weeks[at.Week - 1].Id)!.Value) <= problem.Weeks[at.Week - 1].MatchPoints + problem.Weeks[at.Week - 1].PracticePoints + 3, $"{at.Finding.Rule.Id} in week {at.Week}: {at.Finding.Sentence}"));
        });
    }

    private static SetEvent Lost(int week) => new(new Event(new($"lost{week}"), EventKind.Other, "Week lost", Demo.Season.Weeks[week - 1].Days, Training: new Percent(0)));

    private static TestDay Coming() => Demo.Season.TestDays.First(test => test.Day > Today.AddDays(14) && TestDaysLeft(test));

    private static bool TestDaysLeft(TestDay test) => Demo.Season.Matches.Where(match => match.IsOfficial).All(match => !(test.Day.DayNumber - match.Day!.Value.DayNumber is > -3 and < 2));

    private static Match Next(TestDay test) => Demo.Season.Matches.First(match => match.IsOfficial && match.Day > test.Day);

    private static MoveMatch Moved(TestDay test) => new(Next(test).Id, test.Day.AddDays(1));

    private static Match MatchOn(DateOnly day) => Demo.Season.AllMatches.Single(match => match.Day == day);

    private static Season Repaired(params SeasonEdit[] happened) => Repaired(Today, happened);

    private static Season Repaired(DateOnly from, params SeasonEdit[] happened)
    {
        var now = Done(Demo.Season, happened);
        return Done(now, Proposals.Of(now, Demo.Setup, Asked.ForRepair(now, Demo.Setup, Demo.Season, from, 1000).Wishes, 1, (kind, key) => new NaturalIds(now.Id).Of(kind, key))[0].Edits);
    }

    private static Season Done(Season season, IEnumerable<SeasonEdit> edits) => edits.Aggregate(season, (current, edit) => current.With(Assert.IsType<Accepted>(Decider.Decide(current, edit)).Step));

    private static int LoadOf(Season season, int week) => season.TargetOf(season.Weeks[week - 1].Id)!.Value.Au;

    private static IEnumerable<int> Numbers(Season season, WeekKind kind) => season.Weeks.Where(week => season.KindOf(week.Id) == kind).Select(week => week.Number);

    /// <summary>Weeks whose phase, kind, load or emphasis is otherwise than the demo's.</summary>
    private static List<int> Changed(Season season) => [.. season.Weeks.Where(week => IsOther(season, week)).Select(week => week.Number)];

    private static bool IsOther(Season season, SeasonWeek week) => season.PhaseOf(week)?.Phase.Kind != Demo.Season.PhaseOf(week)?.Phase.Kind || season.KindOf(week.Id) != Demo.Season.KindOf(week.Id) || season.TargetOf(week.Id) != Demo.Season.TargetOf(week.Id)
        || Demo.Setup.Qualities.Any(quality => season.EmphasisOf(week.Id, quality.Id) != Demo.Season.EmphasisOf(week.Id, quality.Id));
}
