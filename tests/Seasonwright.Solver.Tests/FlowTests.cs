using Google.OrTools.LinearSolver;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Solver.Tests;

/// <summary>
/// The search for a structure against an outside solver: the same steps as a mixed-integer programme, each step a switch and each stand a
/// balance of flow, solved by SCIP. It speaks for the search; that the steps are the right ones is BruteForce's to say, which shares
/// nothing with them.
/// </summary>
public class FlowTests
{
    [Theory]
    [InlineData("-x3 -/6x4 -/6!")]
    [InlineData("-x2 -/6 -/3/6 -/6x2 -/6! -")]
    [InlineData("-x3 -/6x2 - -/6! -/6 *Exams,5.1-5.7,60%")]
    [InlineData("-/6x2 -x2 -/6x4 *Holiday,3.1-4.7,0%")]
    public void No_flow_is_worth_more(string season)
    {
        var problem = Problem.Of(Plans.Of(season), Seasons.Team, new Wishes());
        using var solver = Google.OrTools.LinearSolver.Solver.CreateSolver("SCIP");
        Assert.NotNull(solver);
        var options = new Options(problem, Relaxed.None, pays: false);
        List<Option> found = [];
        var objective = solver.Objective();
        objective.SetMaximization();
        var into = new Dictionary<Stand, Constraint> { [Stand.Before(problem)] = solver.MakeConstraint(-1, -1) };
        var steps = 0;
        foreach (var week in SeasonFacts.Of(problem))
        {
            Dictionary<Stand, Constraint> after = [];
            foreach (var (stand, balance) in into)
            {
                options.Of(week, stand, found);
                foreach (var option in found)
                {
                    var step = solver.MakeBoolVar($"s{steps++}");
                    balance.SetCoefficient(step, -1);
                    if (!after.TryGetValue(option.After, out var next)) after[option.After] = next = solver.MakeConstraint(0, 0);
                    next.SetCoefficient(step, 1);
                    objective.SetCoefficient(step, option.Value / 1000.0);
                }
            }
            into = after;
        }
        // One unit of flow leaves at the end.
        var end = solver.MakeConstraint(1, 1);
        foreach (var balance in into.Values)
        {
            var leaves = solver.MakeBoolVar($"s{steps++}");
            balance.SetCoefficient(leaves, -1);
            end.SetCoefficient(leaves, 1);
        }
        Assert.Equal(Google.OrTools.LinearSolver.Solver.ResultStatus.OPTIMAL, solver.Solve());
        var best = Structures.Best(problem)!.Value / 1000.0;
        Assert.InRange(objective.Value(), best - 0.01, best + 0.01);
        Assert.True(steps > 100, $"{steps}");
    }
}
