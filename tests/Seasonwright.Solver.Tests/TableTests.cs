using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Solver.Tests;

/// <summary>Tables of the written model: what weeks of a kind hold, how long phases are, what is worth how much.</summary>
public class TableTests
{
    /// <summary>A usual week's practice is 46 points, a match 26.</summary>
    [Theory]
    // Half the assumed practice and the least of ours to all of it and the most of ours.
    [InlineData("-", WeekKind.Introductory, Variant.First, PhaseKind.GeneralPreparation, 20, 62)]
    [InlineData("-", WeekKind.Introductory, Variant.Second, PhaseKind.GeneralPreparation, 25, 71)]
    [InlineData("-", WeekKind.Building, Variant.None, PhaseKind.GeneralPreparation, 30, 106)]
    [InlineData("-", WeekKind.Overload, Variant.None, PhaseKind.SpecificPreparation, 43, 114)]
    [InlineData("-", WeekKind.Unloading, Variant.None, PhaseKind.SpecificPreparation, 20, 59)]
    [InlineData("-", WeekKind.Building, Variant.None, PhaseKind.Competition, 30, 85)]
    [InlineData("-", WeekKind.Transition, Variant.None, PhaseKind.Transition, 12, 30)]
    [InlineData("-", WeekKind.Break, Variant.None, PhaseKind.Competition, 0, 0)]
    [InlineData("-/6", WeekKind.Competition, Variant.None, PhaseKind.Competition, 40, 85)]
    [InlineData("-/6", WeekKind.Taper, Variant.Short, PhaseKind.Competition, 44, 85)]
    [InlineData("-", WeekKind.Taper, Variant.Short, PhaseKind.PreCompetition, 18, 77)]
    [InlineData("-", WeekKind.Taper, Variant.FullEarlier, PhaseKind.PreCompetition, 16, 61)]
    [InlineData("-", WeekKind.Taper, Variant.FullLast, PhaseKind.PreCompetition, 14, 50)]
    [InlineData("-/6", WeekKind.Building, Variant.None, PhaseKind.PreCompetition, 30, 95)]
    [InlineData("-/3/6", WeekKind.Congested, Variant.None, PhaseKind.Competition, 63, 79)]
    [InlineData("-/1/3/6", WeekKind.Congested, Variant.None, PhaseKind.Competition, 82, 90)]
    [InlineData("-/6", WeekKind.ReEntry, Variant.First, PhaseKind.Competition, 39, 77)]
    public void A_week_holds_what_its_kind_does(string season, WeekKind kind, Variant variant, PhaseKind phase, int least, int most)
    {
        var problem = Problem.Of(Plans.Of(season), Seasons.Team, new Wishes());
        Assert.Equal(new Limits.Range(least, most), KindTable.Week(problem, problem.Weeks[0], kind, variant, phase));
    }

    /// <summary>Practice is the kind's share of a usual week's and at most 72 % of the training; what is entered is a fact.</summary>
    [Fact]
    public void Practice_is_suggested_or_a_fact()
    {
        var problem = Problem.Of(Plans.Of("- -/6 -/3/6 -", new SetPractices(Plans.Week(4), Plans.Week(4), new Practices(2))), Seasons.Team, new Wishes());
        int Practice(int week, WeekKind kind, int training) => KindTable.Practice(problem, problem.Weeks[week], kind, Variant.None, training);
        Assert.Equal(46, Practice(0, WeekKind.Building, 100));
        Assert.Equal(36, Practice(0, WeekKind.Building, 50));
        Assert.Equal(36, Practice(1, WeekKind.Competition, 60));
        Assert.Equal(18, Practice(2, WeekKind.Congested, 60));
        Assert.Equal(0, Practice(0, WeekKind.Break, 0));
        // Two practices of 90 min at 5.5: 990 AU of 3,195.
        Assert.Equal(31, Practice(3, WeekKind.Unloading, 10));
        Assert.Equal(new Limits.Range(31, 57), KindTable.Week(problem, problem.Weeks[3], WeekKind.Unloading, Variant.None, PhaseKind.GeneralPreparation));
    }

    /// <summary>Whatever the length of a preparation, its phases can fill it.</summary>
    [Fact]
    public void Every_preparation_has_phases_that_fill_it()
    {
        for (var weeks = 0; weeks <= 60; weeks++)
        {
            var lengths = PhaseLengths.Of(isFirst: true, weeks, weeks);
            PhaseLengths.Span[] phases = [lengths.General, lengths.Specific, lengths.PreCompetition];
            Assert.True(phases.Sum(phase => phase.Least) <= weeks && weeks <= phases.Sum(phase => phase.Most), $"{weeks} weeks");
            for (var training = 0; training <= weeks; training++)
            {
                var later = PhaseLengths.Of(isFirst: false, weeks, training);
                PhaseLengths.Span[] all = [later.Transition, later.General, later.Specific, later.PreCompetition];
                Assert.True(all.Sum(phase => phase.Most) >= training || weeks >= 14, $"{weeks} weeks, {training} of training");
            }
        }
        Assert.Equal(new PhaseLengths.Span(2, 6), PhaseLengths.Of(isFirst: true, 6, 6).Specific);
        Assert.Equal(new PhaseLengths.Span(2, 3), PhaseLengths.Of(isFirst: false, 14, 14).Transition);
        Assert.Equal(new PhaseLengths.Span(0, 0), PhaseLengths.Of(isFirst: false, 8, 8).General);
    }

    [Theory]
    [InlineData(0, 0)]
    // 1.5 a point up to five, 4 to ten, 9 beyond.
    [InlineData(50, 7_500)]
    [InlineData(100, 27_500)]
    [InlineData(120, 45_500)]
    public void A_load_costs_more_the_farther_it_is_from_the_guide(int tenths, long units) => Assert.Equal(units, Worth.FromGuide(tenths));

    /// <summary>Entered practices are a fact: sixty points a week leave plans that hold them, and say where they alone pass a limit.</summary>
    [Fact]
    public void Practices_alone_break_no_plan()
    {
        foreach (var count in new[] { 3, 4, 6 })
        {
            var season = Plans.Of("-x6 -/6x10 -/3/6x2 -/6x6 -/6! -x3", new SetPractices(Plans.Week(1), Plans.Week(25), new Practices(count)));
            var problem = Problem.Of(season, Seasons.Team, new Wishes());
            var structure = Structures.Best(problem);
            Assert.NotNull(structure);
            Assert.Empty(structure.Broken);
            Assert.All(structure.Weeks, week => Assert.True(week.Points >= problem.Weeks[week.Index].MatchPoints + (problem.Weeks[week.Index].PracticePoints ?? 0)));
            Assert.Equal(count > 3, structure.Weeks.Any(week => week.Bounds.Any(bound => bound is { IsForced: true } && bound.Condition == Condition.ReEntry)));
        }
    }
}
