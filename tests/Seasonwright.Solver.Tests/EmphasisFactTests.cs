using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Solver.Tests;

/// <summary>What the coach has entered in weeks that have begun is a fact, and what follows is planned by it. Source: the rulebook's quality-order.</summary>
public class EmphasisFactTests(ITestOutputHelper output)
{
    /// <summary>Seven weeks of preparation that have begun, three that have not, and a league of eight.</summary>
    private static Season Begun(string emphasis) =>
        Plans.Of($"GP: I50+{emphasis} I60+{emphasis} B66+{emphasis} SP: B70+{emphasis} U50+{emphasis} B76+{emphasis} B80+{emphasis} -x3 -/6x8");

    private EmphasisPlan Planned(Season season, out Season planned)
    {
        var team = Plans.Team();
        var problem = Problem.Of(season, team, new Wishes { From = Plans.Monday.AddDays(49) });
        var structure = Structures.LeastBroken(problem)!;
        var loads = LoadPlans.Best(problem, structure);
        var emphasis = EmphasisPlans.Best(problem, structure, loads);
        foreach (var week in structure.Weeks) output.WriteLine($"{week.Index + 1} {week.Phase} {week.Kind} {string.Concat(emphasis.Levels[week.Index])}");
        planned = Plans.After(season, ProposedEdits.Of(season, team, problem, structure, loads, emphasis, _ => true, (kind, key) => $"{kind}-{key}"));
        return emphasis;
    }

    [Fact]
    public void Weeks_that_have_begun_keep_what_was_entered()
    {
        var season = Begun("a2h1");
        var emphasis = Planned(season, out var planned);
        Assert.All(season.Weeks.Take(7), week =>
        {
            Assert.Equal([0, 0, 0, 0, 0, 1, 2], emphasis.Levels[week.Number - 1]);
            Assert.All(Plans.Team().Qualities, quality => Assert.Equal(season.EmphasisOf(week.Id, quality.Id), planned.EmphasisOf(week.Id, quality.Id)));
        });
    }

    /// <summary>Power is developed on three weeks of strength, and strength after the summer on two that build muscle.</summary>
    [Theory]
    [InlineData("a2h1", false)]
    [InlineData("s2y2", true)]
    public void Power_is_developed_where_the_ground_was_laid(string emphasis, bool isLaid)
    {
        var levels = Planned(Begun(emphasis), out var planned).Levels;
        Assert.Equal(isLaid, levels.Skip(7).Take(3).Any(week => week[(int)QualityKind.Power] >= (int)Emphasis.Develop));
        // "s2y2" from the first week on develops strength on no ground: that is the coach's and stays.
        if (!isLaid) Assert.DoesNotContain(Rulebook.Check(planned, Plans.Team()).Findings, finding => finding.Rule.Id == "quality-order");
    }

    /// <summary>A block that is under way goes on as it began.</summary>
    [Fact]
    public void What_is_under_way_goes_on()
    {
        var levels = Planned(Begun("y2s1a2h1v1"), out _).Levels;
        Assert.Equal(2, levels[7][(int)QualityKind.AerobicConditioning]);
    }

    /// <summary>A settled week in which nobody entered any emphasis says nothing of what was trained in it.</summary>
    [Fact]
    public void Nothing_entered_is_no_fact()
    {
        var levels = Planned(Plans.Of("GP: I50 I60 B66 SP: B70 U50 B76 B80 -x3 -/6x8"), out _).Levels;
        Assert.Contains(levels.Take(7), week => week.Any(level => level > 0));
    }

    /// <summary>What a plan that is repaired leaves out of a taper already is not asked for again, and what it leaves out more is.</summary>
    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    public void A_taper_that_stood_with_fewer_exposures_is_asked_for_no_more(int fewer, bool isTold)
    {
        var season = Plans.Of("GP: B60x4 CO: C75/6+s3v3h3p3a2x8 T60/6! C75/6x4");
        var wishes = new Wishes { From = Plans.Monday.AddDays(7 * 11) };
        var stood = Assert.Single(Planned(Relaxed.None), one => one.Condition == Condition.TaperFrequency);
        var eased = Planned(Relaxed.None.With(stood with { Beyond = stood.Beyond - fewer }));
        Assert.Equal(isTold ? [fewer] : [], eased.Where(one => one.Condition == Condition.TaperFrequency).Select(one => one.Beyond));

        ValueList<Breach> Planned(Relaxed leftOut)
        {
            var problem = Problem.Of(season, Plans.Team(), wishes with { LeftOut = leftOut });
            var structure = Structures.LeastBroken(problem)!;
            return EmphasisPlans.Best(problem, structure, LoadPlans.Best(problem, structure)).Short;
        }
    }

    /// <summary>Two days of training hold six exposures. Asked "what if not", the days count as little as the hours.</summary>
    [Fact]
    public void Days_of_training_that_are_left_out_bound_no_emphasis()
    {
        var wishes = new Wishes { Time = [new PhaseTime(PhaseKind.Competition, Days: 2)] };
        Assert.Equal(6, Most(wishes));
        Assert.Equal(7, Most(wishes with { LeftOut = Relaxed.None.With(Condition.TrainingTime) }));

        static int Most(Wishes wishes)
        {
            var problem = Problem.Of(Plans.Of("-x6 -/6x8"), Seasons.Team, wishes);
            var structure = Structures.Best(problem)!;
            var levels = EmphasisPlans.Best(problem, structure, LoadPlans.Best(problem, structure)).Levels;
            return structure.Weeks.Where(week => week.Kind == WeekKind.Competition).Max(week => levels[week.Index].Sum());
        }
    }
}
