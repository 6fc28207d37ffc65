using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Solver.Tests;

/// <summary>What has happened to a plan, and which weeks a repair opens for it.</summary>
public class DisruptionTests
{
    private static readonly Season Season = Seasons.Drawn(11);

    private static readonly Match Match = Season.Matches.First(match => match.IsOfficial);

    private static int WeekOf(DateOnly day) => Season.WeekOf(day)!.Number;

    [Fact]
    public void A_match_that_moves_disturbs_the_week_it_leaves_and_the_one_it_comes_to()
    {
        var now = Plans.After(Season, [new MoveMatch(Match.Id, Match.Day!.Value.AddDays(14))]);
        Assert.Equal([WeekOf(Match.Day.Value), WeekOf(Match.Day.Value) + 2], Numbers(now));
    }

    [Fact]
    public void A_match_called_off_and_a_week_lost_disturb_their_weeks()
    {
        Assert.Equal([WeekOf(Match.Day!.Value)], Numbers(Plans.After(Season, [new SetMatch(Match with { Status = MatchStatus.Cancelled })])));
        Assert.Equal([3], Numbers(Plans.After(Season, [new SetEvent(new Event(new("lost"), EventKind.Other, "Week lost", Season.Weeks[2].Days, Training: new Percent(0)))])));
    }

    [Fact]
    public void Kick_off_opponent_and_an_event_that_leaves_training_alone_disturb_nothing()
    {
        var now = Plans.After(Season, [
            new SetMatch(Match with { KickOff = new TimeOnly(20, 15), Opponent = "Turnes" }),
            new SetEvent(new Event(new("talk"), EventKind.Other, "Sponsors' evening", DaySpan.Of(Match.Day!.Value)))]);
        Assert.Empty(Disruption.Weeks(Season, now));
    }

    /// <summary>Only weeks within reach of what happened change; a repair of nothing changes nothing, whoever drew the plan.</summary>
    [Theory]
    [InlineData(3000, 2)]
    [InlineData(1000, 4)]
    [InlineData(300, 8)]
    public void A_repair_changes_no_week_beyond_its_reach(int keep, int reach)
    {
        var planned = Plans.After(Season, Proposals.Of(Season, Seasons.Team, new Wishes(), 1, Id)[0].Edits);
        var now = Plans.After(planned, [new MoveMatch(Match.Id, Match.Day!.Value.AddDays(14))]);
        var proposal = Proposals.Of(now, Seasons.Team, new Wishes().Repairing(planned, now, Season.Weeks[0].Days.First, keep), 1, Id)[0];
        Assert.True(proposal.Wishes.Reach!.Value.IsWithin(Reach.Around(reach)));
        var repaired = Plans.After(now, proposal.Edits);
        var changed = repaired.Weeks.Where(week => repaired.KindOf(week.Id) != now.KindOf(week.Id) || repaired.TargetOf(week.Id) != now.TargetOf(week.Id)).Select(week => week.Number).ToList();
        Assert.NotEmpty(changed);
        Assert.All(changed, week => Assert.InRange(week, WeekOf(Match.Day.Value) - reach, WeekOf(Match.Day.Value) + 2 + reach));
        // The week that the match comes to cannot stay, and no week is named that stays.
        var unavoidable = Proposals.Unavoidable(now, Seasons.Team, proposal);
        Assert.Contains(WeekOf(Match.Day.Value) + 1, unavoidable);
        Assert.All(unavoidable, week => Assert.Contains(week + 1, changed));
        Assert.Empty(Proposals.Of(planned, Seasons.Team, new Wishes().Repairing(planned, planned, Season.Weeks[0].Days.First, keep), 1, Id)[0].Edits);
    }

    /// <summary>The least change is the one that a coach would make: a match that moves by a day within its week leaves everything as it is, emphasis too.</summary>
    [Fact]
    public void A_match_that_moves_by_a_day_changes_nothing()
    {
        var planned = Plans.After(Season, Proposals.Of(Season, Seasons.Team, new Wishes(), 1, Id)[0].Edits);
        var moved = Season.Matches.First(match => match.IsOfficial && match.Importance == Importance.Regular && match.Day!.Value.DayOfWeek != DayOfWeek.Sunday && Season.MatchesIn(Season.WeekOf(match.Day.Value)!).Count() == 1);
        var now = Plans.After(planned, [new MoveMatch(moved.Id, moved.Day!.Value.AddDays(1))]);
        Assert.Empty(Proposals.Of(now, Seasons.Team, new Wishes().Repairing(planned, now, Season.Weeks[0].Days.First), 1, Id)[0].Edits);
    }

    /// <summary>Emphasis of weeks that are not lost is not made better on the way.</summary>
    [Fact]
    public void A_lost_week_holds_its_matches_alone_and_leaves_the_emphasis_of_others()
    {
        var planned = Plans.After(Season, Proposals.Of(Season, Seasons.Team, new Wishes(), 1, Id)[0].Edits);
        foreach (var week in planned.Weeks.Where(week => planned.KindOf(week.Id) is WeekKind.Taper or WeekKind.Competition && planned.MatchesIn(week).Count() == 1).TakeLast(3))
        {
            var now = Plans.After(planned, [new SetEvent(new Event(new("lost"), EventKind.Other, "Week lost", week.Days, Training: new Percent(0)))]);
            var repaired = Plans.After(now, Proposals.Of(now, Seasons.Team, new Wishes().Repairing(planned, now, Season.Weeks[0].Days.First), 1, Id)[0].Edits);
            var problem = Problem.Of(now, Seasons.Team, new Wishes());
            Assert.InRange(problem.Points.Of(repaired.TargetOf(week.Id)!.Value), problem.Weeks[week.Number - 1].MatchPoints, problem.Weeks[week.Number - 1].MatchPoints + 4);
            Assert.All(Seasons.Team.Qualities, quality => Assert.Equal(Emphasis.None, repaired.EmphasisOf(week.Id, quality.Id)));
            Assert.All(repaired.Weeks.Where(other => Math.Abs(other.Number - week.Number) > 4), other => Assert.All(Seasons.Team.Qualities, quality => Assert.Equal(now.EmphasisOf(other.Id, quality.Id), repaired.EmphasisOf(other.Id, quality.Id))));
        }
    }

    private static string Id(string kind, string key) => $"{kind}-{key}";

    private static IEnumerable<int> Numbers(Season now) => Disruption.Weeks(Season, now).Select(week => now.Week(week)!.Number);
}
