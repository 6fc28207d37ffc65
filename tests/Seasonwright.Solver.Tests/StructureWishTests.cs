using Seasonwright.Core;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Solver.Tests;

/// <summary>What is asked of weeks, what stands and what has been: each holds, or is told as broken.</summary>
public class StructureWishTests(ITestOutputHelper output)
{
    /// <summary>Whatever is asked for of weeks and whatever stands, there is a plan or one that breaks least.</summary>
    [Fact]
    public void Drawn_wishes_have_an_answer()
    {
        var first = Seasons.Given("SEED", 1000);
        output.WriteLine($"seeds from {first}");
        for (var seed = first; seed < first + Seasons.Given("COUNT", 6); seed++)
        {
            var random = new Random(seed);
            var season = Seasons.Drawn(seed);
            WeekWish Wish() => new(season.Weeks[random.Next(season.Weeks.Length)].Id,
                random.Next(3) == 0 ? (PhaseKind)random.Next(6) : null,
                random.Next(3) == 0 ? (WeekKind)random.Next(11) : null,
                random.Next(3) == 0 ? new Load(random.Next(6000)) : null);
            var wishes = new Wishes
            {
                Weeks = Enumerable.Range(0, random.Next(1, 5)).Select(_ => Wish()).ToValueList(),
                Kept = Enumerable.Range(0, random.Next(0, 5)).Select(_ => Wish()).ToValueList(),
                From = random.Next(2) == 0 ? season.Weeks[random.Next(season.Weeks.Length)].Days.First : null,
            };
            var problem = Problem.Of(season, Seasons.Team, wishes);
            var structure = Structures.LeastBroken(problem);
            Assert.True(structure is not null, $"seed {seed}");
            var clash = Clashes.Of(problem);
            Assert.Equal(structure.Broken.Count == 0, clash is null);
            if (clash is not null) ClashTests.BreaksLeast(problem, clash);
            // Every wish holds or is told as broken.
            foreach (var week in structure.Weeks.Where(week => week.Index >= problem.FirstOpen && problem.Weeks[week.Index].Lock is not null))
            {
                var locked = problem.Weeks[week.Index].Lock!;
                bool IsBroken(Condition condition) => structure.Broken.Any(breach => breach.Week == week.Index && breach.Condition == condition);
                Assert.True(locked.Points is not { } points || points == week.Points || IsBroken(Condition.LockedLoad), $"seed {seed}, week {week.Index + 1}");
                Assert.True(locked.Kind is not { } kind || kind == week.Kind || IsBroken(Condition.LockedKind), $"seed {seed}, week {week.Index + 1}");
                Assert.True(locked.Phase is not { } phase || phase == StructureTests.Plain(week.Phase) || IsBroken(Condition.LockedPhase), $"seed {seed}, week {week.Index + 1}");
            }
        }
    }

    [Fact]
    public void What_stands_is_kept_where_nothing_has_changed()
    {
        var season = Seasons.Of("2024-25_en.1", "Everton FC", 6);
        var problem = Problem.Of(season, Seasons.Team, new Wishes());
        // What stands has a week off the grid.
        var stands = Structures.Best(problem)!.Weeks.Select(week => new WeekWish(problem.Weeks[week.Index].Id, week.Phase, week.Kind, problem.Points.ToLoad(week.Points + (week.Index == 12 ? 2 : 0)))).ToValueList();
        var again = Structures.Best(Problem.Of(season, Seasons.Team, new Wishes { Kept = stands, KeepWeight = 10_000 }))!;
        Assert.Equal(stands.Select(week => week.Kind), again.Weeks.Select(week => (WeekKind?)week.Kind));
        Assert.Equal(stands.Select(week => problem.Points.Of(week.Load!.Value)), again.Weeks.Select(week => week.Points));
        // A match moved from one week to another changes what is near it.
        var free = Structures.Best(Problem.Of(season, Seasons.Team, new Wishes { Kept = stands, KeepWeight = 0 }))!;
        Assert.Equal(Structures.Best(problem)!.Weeks, free.Weeks);
    }

    [Fact]
    public void Past_weeks_stay_whatever_they_are()
    {
        // Weeks that no rule would have: overload at once, four loading weeks, a leap.
        var season = Plans.Of("SP: O90 B40 B100 GP: B130 -x4 -/6x8");
        var wishes = new Wishes { From = Plans.Monday.AddDays(28) };
        var problem = Problem.Of(season, Plans.Team(), wishes);
        Assert.Equal(4, problem.FirstOpen);
        var structure = Structures.Best(problem)!;
        Assert.Equal([90, 40, 100, 130], structure.Weeks.Take(4).Select(week => week.Points));
        Assert.Equal([WeekKind.Overload, WeekKind.Building, WeekKind.Building, WeekKind.Building], structure.Weeks.Take(4).Select(week => week.Kind));
        Assert.Equal([PhaseKind.SpecificPreparation, PhaseKind.SpecificPreparation, PhaseKind.SpecificPreparation, PhaseKind.GeneralPreparation], structure.Weeks.Take(4).Select(week => week.Phase));
        Assert.Empty(structure.Broken);
    }
}
