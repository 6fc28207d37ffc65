using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Solver.Tests;

/// <summary>The team's figures of the rulebook shape emphasis and tests: with another figure the plan is another.</summary>
public class FigureTests
{
    private const int Hypertrophy = (int)QualityKind.Hypertrophy, Strength = (int)QualityKind.MaximumStrength, Power = (int)QualityKind.Power;

    private static (Problem Problem, EmphasisPlan Plan) Planned(StartLevel start, params (string, string, string)[] figures)
    {
        var problem = Problem.Of(Plans.Of("-x14 -/6x11 -/6! -x2"), Plans.Team(figures), new Wishes { Start = start });
        var structure = Structures.Best(problem)!;
        return (problem, EmphasisPlans.Best(problem, structure, LoadPlans.Best(problem, structure)));
    }

    private static int WeeksThatDevelop(EmphasisPlan plan, int quality) => plan.Levels.Take(14).Count(week => week[quality] >= 2);

    [Theory]
    [InlineData("min_strength_weeks", Power)]
    [InlineData("min_base_weeks", Strength)]
    public void What_stands_on_no_ground_is_not_developed(string figure, int quality)
    {
        Assert.NotEqual(0, WeeksThatDevelop(Planned(StartLevel.Off).Plan, quality));
        Assert.Equal(0, WeeksThatDevelop(Planned(StartLevel.Off, ("quality-order", figure, "60")).Plan, quality));
    }

    [Fact]
    public void Who_kept_training_needs_a_base_only_where_the_team_says_so()
    {
        (string, string, string) wide = ("quality-order", "min_base_weeks", "60");
        Assert.NotEqual(0, WeeksThatDevelop(Planned(StartLevel.Kept, wide).Plan, Strength));
        Assert.Equal(0, WeeksThatDevelop(Planned(StartLevel.Kept, wide, ("quality-order", "layoff_days", "0")).Plan, Strength));
    }

    [Fact]
    public void Muscle_is_not_developed_near_a_key_match()
    {
        Assert.NotEqual(0, WeeksThatDevelop(Planned(StartLevel.Off).Plan, Hypertrophy));
        Assert.Equal(0, WeeksThatDevelop(Planned(StartLevel.Off, ("hypertrophy-late", "min_gap_days", "300")).Plan, Hypertrophy));
    }

    /// <summary>No taper holds five times the exposures of the weeks before it: that is said, and said to be certain.</summary>
    [Fact]
    public void A_taper_that_cannot_be_as_frequent_as_the_team_says_is_told()
    {
        Assert.Empty(Planned(StartLevel.Home).Plan.Short);
        var breach = Assert.Single(Planned(StartLevel.Home, ("taper-intensity-frequency", "min_frequency", "3")).Plan.Short);
        Assert.Equal((Condition.TaperFrequency, true), (breach.Condition, breach.IsForced));
    }

    [Theory]
    [InlineData("decisive_days", "100")]
    [InlineData("before_match_h", "150")]
    [InlineData("after_match_h", "150")]
    [InlineData("heavy_ratio", "0.5")]
    public void Tests_keep_the_teams_distance(string figure, string value)
    {
        var (problem, plan) = Planned(StartLevel.Home);
        var (_, changed) = Planned(StartLevel.Home, ("test-timing", figure, value));
        var official = problem.Weeks.SelectMany(week => week.Matches).ToList();
        Assert.NotEqual(plan.Tests, changed.Tests);
        Assert.All(changed.Tests, test => Assert.True(figure switch
        {
            "decisive_days" => official.TrueForAll(match => !match.IsKey || match.Date.DayNumber - test.DayNumber > 100 || match.Date < test),
            "before_match_h" => official.TrueForAll(match => match.Date < test || match.Date.DayNumber - test.DayNumber >= 7),
            "after_match_h" => official.TrueForAll(match => match.Date >= test || test.DayNumber - match.Date.DayNumber >= 7),
            _ => true,
        }));
    }

    /// <summary>A fixed load after a fixed load cannot keep the rise; between two a free week can keep either of its two, if not both.</summary>
    [Theory]
    [InlineData("3=66 4=66 5=90", true)]
    [InlineData("3=66 5=95", false)]
    public void Only_what_no_loads_keep_is_forced(string wishes, bool isForced)
    {
        var points = new Points(Seasons.Team.ReferenceWeek);
        var said = wishes.Split(' ').Select(wish => wish.Split('=')).Select(wish => new WeekWish(new($"w{wish[0]}"), Load: points.ToLoad(int.Parse(wish[1], System.Globalization.CultureInfo.InvariantCulture))));
        var problem = Problem.Of(Plans.Of("-x8 -/6x8"), Seasons.Team, new Wishes { Weeks = [.. said] });
        var structure = Structures.LeastBroken(problem)!;
        var rises = LoadPlans.Best(problem, structure).Short.Where(one => one.Condition == Condition.Ramp).ToList();
        Assert.NotEmpty(rises);
        Assert.All(rises, one => Assert.Equal(isForced, one.IsForced));
    }
}
