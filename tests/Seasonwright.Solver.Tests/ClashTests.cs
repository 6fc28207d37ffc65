using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Solver.Tests;

/// <summary>Seasons that ask for the impossible: what collides, and the plan that breaks least.</summary>
public class ClashTests(ITestOutputHelper output)
{
    /// <summary>What need not be broken is not: the search that would pay finds the plan of the one that refuses.</summary>
    [Theory]
    [InlineData("-x3 -/6x4 -x2 -/6!")]
    [InlineData("-/3/6x9")]
    public void Nothing_is_paid_for_where_nothing_must_be(string season)
    {
        var problem = Problem.Of(Plans.Of(season), Seasons.Team, new Wishes());
        var paid = Structures.Read(problem, Relaxed.None, new StructureSearch(problem, Relaxed.None, long.MaxValue).Best(default)!);
        Assert.Equal(Shown.Of(problem, Structures.Best(problem)!), Shown.Of(problem, paid));
    }

    /// <summary>Clashes of the written model: what breaks least is little, and names what collides.</summary>
    [Theory]
    // A load of 110 in the fourth week: the ramp gives way.
    [InlineData("-x8 -/6x10", "4=110", "ramp")]
    // The same off the grid of loads, where the week before is fixed too: the ramp gives way, not the load.
    [InlineData("-x8 -/6x10", "3=70 4=98", "ramp")]
    // Half as much again as fits: the load gives way where the week before the match is a taper.
    [InlineData("-x6 -/6x6 -/6! -/6", "13=90", "locked-load taper taper-size")]
    // Building for five weeks.
    [InlineData("-x10 -/6x6", "3=B 4=B 5=B 6=B 7=B", "run-limit")]
    // General preparation in the seventh of eight weeks.
    [InlineData("-x8 -/6x8", "7=GP", "longest-general shortest-specific shortest-pre-competition locked-phase")]
    [InlineData("-x5 -/6x8", "1=GP 2=GP 3=GP 4=GP 5=GP", "shortest-pre-competition shortest-specific longest-general locked-phase")]
    public void A_clash_breaks_little(string season, string wishes, string mayBreak)
    {
        var problem = Clashing(season, wishes);
        Assert.Null(Structures.Best(problem));
        var clash = Clashes.Of(problem)!;
        output.WriteLine(string.Join(", ", clash.Colliding.Select(one => $"{one.Condition.Name} {one.Week + 1}")));
        output.WriteLine(Shown.Of(problem, clash.LeastBroken));
        Assert.NotEmpty(clash.LeastBroken.Broken);
        Assert.True(clash.LeastBroken.Broken.Count <= 3);
        Assert.All(clash.LeastBroken.Broken, breach => Assert.Contains(breach.Condition.Name, mayBreak.Split(' '), StringComparer.Ordinal));
        // Smallest: they alone leave no plan, and without any one of them there is one.
        var others = Clashes.Candidates(problem).Except(clash.Colliding).Aggregate(Relaxed.None, (relaxed, one) => relaxed.With(one.Condition, one.Week));
        Assert.Contains(clash.Colliding, one => one.Condition.IsLock);
        Assert.Null(Structures.Best(problem, others));
        Assert.All(clash.Colliding, one => Assert.NotNull(Structures.Best(problem, others.With(one.Condition, one.Week))));
        BreaksLeast(problem, clash);
    }

    /// <summary>No plan that leaves out one or more of what collides and pays for what it then breaks is better than the one that breaks least.</summary>
    internal static void BreaksLeast(Problem problem, Clash clash)
    {
        for (var left = 1; left < 1 << Math.Min(4, clash.Colliding.Count); left++)
        {
            var relaxed = clash.Colliding.Where((_, at) => (left & 1 << at) > 0).Aggregate(Relaxed.None, (now, one) => now.With(one.Condition, one.Week));
            if (new StructureSearch(problem, relaxed, budget: 0).Best(default) is not { } path) continue;
            // Where fewer conditions leave no step of the grid, a load off it stands in, which the whole search does not look at.
            if (path.Steps.Any(step => step.Points % 3 != 0 && step.Move.Kind is WeekKind.Building or WeekKind.Competition or WeekKind.Overload or WeekKind.Introductory or WeekKind.ReEntry)) continue;
            var paid = Structures.Read(problem, Relaxed.None, path).Broken.Sum(breach => 100_000_000L * breach.Condition.Weight * (100 + breach.Beyond) / 100);
            Assert.True(paid > 0 && path.Value - paid <= clash.LeastBroken.Value, $"{path.Value - paid} is better than {clash.LeastBroken.Value}");
        }
    }

    private static Problem Clashing(string season, string wishes)
    {
        var points = new Points(Seasons.Team.ReferenceWeek);
        var said = wishes.Split(' ').Select(wish => wish.Split('=')).Select(wish => wish[1] switch
        {
            "B" => new WeekWish(new($"w{wish[0]}"), Kind: WeekKind.Building),
            "GP" => new WeekWish(new($"w{wish[0]}"), Phase: PhaseKind.GeneralPreparation),
            _ => new WeekWish(new($"w{wish[0]}"), Load: points.ToLoad(int.Parse(wish[1], System.Globalization.CultureInfo.InvariantCulture))),
        });
        return Problem.Of(Plans.Of(season), Seasons.Team, new Wishes { Weeks = said.ToValueList() });
    }

    [Fact]
    public void A_season_with_a_plan_has_no_clash() => Assert.Null(Clashes.Of(Problem.Of(Plans.Of("-x6 -/6x6"), Seasons.Team, new Wishes())));

    /// <summary>Two matches alone come to more than 40 %, whatever is planned: that is said, with the figure.</summary>
    [Fact]
    public void A_largest_week_that_the_calendar_passes_is_told()
    {
        var season = Plans.Of("-x4 -/6x2 -/3/6 -/6");
        Assert.Empty(Proposals.Of(season, Seasons.Team, new Wishes(), 1, (kind, key) => $"{kind}-{key}")[0].ByFacts);
        var problem = Problem.Of(season, Seasons.Team, new Wishes { LargestWeek = 40 });
        var told = Assert.Single(Proposals.Of(season, Seasons.Team, new Wishes { LargestWeek = 40 }, 1, (kind, key) => $"{kind}-{key}")[0].ByFacts);
        Assert.Equal($"Matches and entered practices alone make week 7 heavier than the 40 % you allow: {problem.Weeks[6].MatchPoints} %. There no plan can be held to less.", told);
    }

    /// <summary>Five practices of 90 minutes are seven hours and a half; their effort is 6 where the usual week's mean is less, so they count for more.</summary>
    [Fact]
    public void Hours_that_entered_practices_pass_are_told()
    {
        var season = Plans.Of("-x4 -/6x4", new SetPractices(Plans.Week(6), Plans.Week(6), new Practices(5)));
        var told = Assert.Single(Proposals.Of(season, Seasons.Team, new Wishes { Time = [new PhaseTime(PhaseKind.Competition, Hours: 4)] }, 1, (kind, key) => $"{kind}-{key}")[0].ByFacts);
        Assert.StartsWith("Entered practices alone take more than the hours there are in week 6: about ", told, StringComparison.Ordinal);
        Assert.Contains(" h of 4.", told, StringComparison.Ordinal);
    }

    /// <summary>Practices that fill a week leave nothing to cut and nothing to develop: neither is claimed, and what would fit is told.</summary>
    [Fact]
    public void Weeks_that_practices_fill_claim_no_cut_and_develop_nothing()
    {
        var season = Plans.Of("-x6 -/6x5 -/6! -/6", new SetPractices(Plans.Week(1), Plans.Week(13), new Practices(5, new Minutes(90), new Rpe(6))));
        var proposal = Proposals.Of(season, Seasons.Team, new Wishes(), 1, (kind, key) => $"{kind}-{key}")[0];
        var taper = proposal.Structure.Weeks.Last(week => week.Kind == WeekKind.Taper);
        Assert.Equal("A key match follows, but the practices that are entered leave nothing to cut.", proposal.Reasons[taper.Index][0].Sentence);
        Assert.Contains(proposal.Reasons[taper.Index], reason => reason.Sentence.StartsWith("Practices alone: 85 %", StringComparison.Ordinal));
        Assert.All(proposal.Emphasis.Levels[taper.Index], level => Assert.InRange(level, 0, (int)Emphasis.Maintain));
    }
}
