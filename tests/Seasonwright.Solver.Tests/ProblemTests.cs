using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Solver.Tests;

/// <summary>What the engine reads of a season.</summary>
public class ProblemTests
{
    private static Problem Read(string plan, params SeasonEdit[] more) => Problem.Of(Plans.Of(plan, more), Plans.Team(), new Wishes());

    [Fact]
    public void Matches_lie_on_their_days_and_load_what_the_team_says()
    {
        var problem = Read("- -/6~ -/2/6! -");
        Assert.Equal([0, 10, 20, 0], problem.Weeks.Select(week => week.MatchPoints));
        Assert.Equal([5, 1, 5], problem.Weeks.SelectMany(week => week.Matches).Select(match => match.Day));
        Assert.Equal([Importance.Friendly, Importance.Regular, Importance.Key], problem.Weeks.SelectMany(week => week.Matches).Select(match => match.Kind));
        Assert.Equal(new Cycle(0, 2, 2), Assert.Single(problem.Cycles));
    }

    /// <summary>The default match is 110 min at 7.5, 825 AU of 3,195: 25.8 points; three in a week are rounded once, 77 and not 78.</summary>
    [Fact]
    public void Points_are_rounded_once()
    {
        var problem = Problem.Of(Plans.Of("-/1/4/7"), Setup.Empty(new("team")), new Wishes());
        Assert.Equal(77, problem.Weeks[0].MatchPoints);
        Assert.Equal(46, problem.UsualPractice);
        Assert.Equal(3195, problem.Points.ToLoad(100).Au);
        for (var points = 0; points <= 300; points++) Assert.Equal(points, problem.Points.Of(problem.Points.ToLoad(points)));
    }

    [Fact]
    public void What_is_off_loads_nothing_and_a_window_over_two_weeks_is_a_match_without_a_load()
    {
        var window = new SetMatch(new Match(new("w"), Plans.Day(2, 5), Plans.Day(3, 2), Status: MatchStatus.Window));
        var off = new SetMatch(new Match(new("o"), Plans.Day(2, 3), Status: MatchStatus.Cancelled));
        var week = Read("-x3", window, off).Weeks[1];
        Assert.Equal((1, 0), (week.Matches.Count, week.MatchPoints));
    }

    [Fact]
    public void Events_leave_breaks_and_reduced_weeks_and_one_day_lost_leaves_a_normal_one()
    {
        var problem = Read("-x6 *Holiday,2.1-3.7,0% *Exams,4.1-4.7,60% *Holiday,5.3,0%");
        Assert.Equal([false, true, true, false, false, false], problem.Weeks.Select(week => week.IsBreak));
        Assert.Equal([false, false, false, true, false, false], problem.Weeks.Select(week => week.IsReduced));
        Assert.Equal([0, 0, 7, 14, 0, 0], problem.Weeks.Select(week => week.DaysOff));
        Assert.Equal([100, 0, 0, 60, 85, 100], problem.Weeks.Select(week => week.Availability));
    }

    [Fact]
    public void Competition_periods_are_parted_by_four_weeks_without_an_official_match()
    {
        Assert.Equal([new Cycle(0, 1, 5)], Read("- -/6 -x3 -/6 -").Cycles);
        Assert.Equal([new Cycle(0, 1, 1), new Cycle(2, 6, 6)], Read("- -/6 - -/3~ -x2 -/6").Cycles);
        Assert.Equal([new Cycle(0, 3, 2)], Read("-x3").Cycles);
    }

    [Fact]
    public void Locked_weeks_and_wishes_are_fixed_and_the_wish_goes_before()
    {
        var lockThird = new LockWeeks(Plans.Week(3), Plans.Week(3), Locked: true);
        var season = Plans.Of("GP: I50 B60 PK: B70", lockThird);
        var wishes = new Wishes { Weeks = [new WeekWish(Plans.Week(3), Load: new Load(655)), new WeekWish(Plans.Week(1), Kind: WeekKind.Unloading)] };
        var weeks = Problem.Of(season, Plans.Team(), wishes).Weeks;
        Assert.Equal([new WeekLock(null, WeekKind.Unloading, null), null, new WeekLock(PhaseKind.Competition, WeekKind.Building, 66)], weeks.Select(week => week.Lock));
    }

    [Theory]
    [InlineData("off", StartLevel.Off)]
    [InlineData("kept", StartLevel.Kept)]
    [InlineData("nonsense", StartLevel.Home)]
    public void The_start_is_the_teams_figure(string said, StartLevel start) =>
        Assert.Equal(start, Problem.Of(Plans.Of("-"), Plans.Team(("return-after-break-volume", "season_start", said)), new Wishes()).Start);

    [Fact]
    public void Practices_entered_are_facts()
    {
        var entered = new SetPractices(Plans.Week(2), Plans.Week(2), new Practices(2));
        Assert.Equal([null, 99], Read("-x2", entered).Weeks.Select(week => week.PracticePoints));
    }

    [Fact]
    public void Goals_weigh_by_their_rank()
    {
        SetGoal Goal(int rank, string quality) => new SetGoal(new Goal(new($"g{rank}"), rank, "measure", Quality: new(quality)));
        Assert.Equal([new PlannedGoal(QualityKind.Power, 60), new PlannedGoal(QualityKind.Speed, 40)], Read("-", Goal(2, "speed"), Goal(1, "power"), Goal(3, "prevention")).Goals);
        Assert.Equal([QualityKind.MaximumStrength, QualityKind.Power, QualityKind.HighIntensityConditioning], Read("-").Goals.Select(goal => goal.Quality));
    }

    /// <summary>Source: the rulebook's own figures, which the engine keeps to without seeing them.</summary>
    [Fact]
    public void Limits_are_the_rulebooks_defaults_and_follow_the_team()
    {
        Assert.Equal(Limits.Of(Plans.Team()), new Limits());
        (string, string, string)[] spelled = [.. Rulebook.All.SelectMany(rule => rule.Figures.Where(figure => figure.Default.Length > 0).Select(figure => (rule.Id, figure.Name, figure.Default)))];
        Assert.Equal(new Limits(), Limits.Of(Plans.Team(spelled)));
        var own = Limits.Of(Plans.Team(("weekly-ramp", "caution_points", "7"), ("unloading-size", "max_drop", "0.45"), ("return-after-break-volume", "cut_short", "0.4 0.2"), ("taper-volume", "min_drop", "much")));
        Assert.Equal(new Limits { RampPoints = 7, Unloading = new(550, 700), ReturnShares = (600, 800) }, own);
    }

    [Fact]
    public void A_season_that_is_not_started_is_a_problem_without_weeks() =>
        Assert.Empty(Problem.Of(Season.Empty(new("s")), Setup.Empty(new("team")), new Wishes()).Weeks);

    [Fact]
    public void The_same_season_is_the_same_problem() => Assert.Equal(Read("I50 -/6! *Exams,1.1-1.7,60%"), Read("I50 -/6! *Exams,1.1-1.7,60%"));
}
