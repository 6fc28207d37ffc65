using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver.Tests;

/// <summary>What a season's brief asks for shows in the plan.</summary>
public class BriefTests
{
    private static readonly Season Season = Seasons.Drawn(11);

    [Fact]
    public void Hours_bound_the_training_of_their_phase()
    {
        var hours = Planned(Brief.Default with { Time = [new PhaseTime(PhaseKind.GeneralPreparation, Hours: 4)] });
        // 4 of the usual 9 hours at their mean effort: 44.4 points.
        Assert.Equal(44, hours.Problem.MostTraining(PhaseKind.GeneralPreparation));
        var general = hours.Proposal.Structure.Weeks.Where(week => week.Phase == PhaseKind.GeneralPreparation).ToList();
        Assert.NotEmpty(general);
        Assert.All(general, week => Assert.InRange(hours.Proposal.Loads.Points[week.Index] - hours.Problem.Weeks[week.Index].MatchPoints, 0, 44));
        Assert.Contains(Planned(Brief.Default).Proposal.Loads.Points.Select((points, week) => (points, week)), one => general.Exists(week => week.Index == one.week) && one.points > 44);
    }

    [Fact]
    public void Days_bound_the_exposures_of_their_phase()
    {
        var days = Planned(Brief.Default with { Time = [new PhaseTime(PhaseKind.GeneralPreparation, Days: 2)] });
        Assert.All(days.Proposal.Structure.Weeks.Where(week => week.Phase == PhaseKind.GeneralPreparation), week => Assert.InRange(days.Proposal.Emphasis.Levels[week.Index].Sum(), 0, 6));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void Test_days_are_no_more_than_asked_for(int tests)
    {
        Assert.InRange(Planned(Brief.Default).Proposal.Emphasis.Tests.Count, 3, 30);
        Assert.Equal(tests, Planned(Brief.Default with { Tests = tests }).Proposal.Emphasis.Tests.Count);
    }

    [Fact]
    public void The_largest_week_is_no_larger()
    {
        Assert.All(Planned(Brief.Default with { LargestWeek = new Percent(72) }).Proposal.Loads.Points, points => Assert.InRange(points, 0, 72));
        Assert.Contains(Planned(Brief.Default).Proposal.Loads.Points, points => points > 72);
    }

    [Fact]
    public void What_is_left_out_binds_no_week()
    {
        var season = Season.With(((Accepted)Decider.Decide(Season, new SetBrief(Brief.Default with { LargestWeek = new Percent(72) }))).Step);
        var wishes = Wishes.Of(season) with { LeftOut = Relaxed.None.With(Condition.LargestWeek) };
        Assert.Contains(Proposals.Of(season, Seasons.Team, wishes, 1, (kind, key) => $"{kind}-{key}")[0].Loads.Points, points => points > 72);
    }

    [Theory]
    [InlineData(SeasonProfile.WeekendLeague)]
    [InlineData(SeasonProfile.TwoMatchLeague)]
    [InlineData(SeasonProfile.Tournaments)]
    [InlineData(SeasonProfile.School)]
    [InlineData(SeasonProfile.ShortSeason)]
    public void Every_profile_is_a_brief_that_has_a_plan(SeasonProfile profile) => Assert.Null(Planned(profile.Brief()).Proposal.Clash);

    private static (Problem Problem, Proposal Proposal) Planned(Brief brief)
    {
        var season = Season.With(((Accepted)Decider.Decide(Season, new SetBrief(brief))).Step);
        return (Problem.Of(season, Seasons.Team, Wishes.Of(season)), Proposals.Of(season, Seasons.Team, Wishes.Of(season), 1, (kind, key) => $"{kind}-{key}")[0]);
    }
}
