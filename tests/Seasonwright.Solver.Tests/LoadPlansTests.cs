using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver.Tests;

/// <summary>
/// Loads of a short season against all there are: every combination within a few points of the structure's is valued by a scorer of its
/// own, written from the specification of the stage (conditions, prices, guide, preparedness) and not from the model.
/// </summary>
public class LoadPlansTests
{
    private const int Around = 3;

    [Fact]
    public void No_combination_of_loads_is_worth_more()
    {
        var first = new DateOnly(2027, 7, 5);
        var season = Seasons.Made([Seasons.Start(first, 6), .. Enumerable.Range(2, 4).Select(week => Seasons.Match(first.AddDays(7 * week + 5), week == 5 ? Importance.Key : Importance.Regular, "l"))]);
        var problem = Problem.Of(season, Seasons.Team, new Wishes());
        var best = Structures.Best(problem)!;
        var structure = best with { Weeks = best.Weeks.Select(week => week with { Range = new(Math.Max(week.Range.Least, week.Points - Around), Math.Min(week.Range.Most, week.Points + Around)) }).ToValueList() };
        Assert.Equal([WeekKind.Introductory, WeekKind.Building, WeekKind.Competition, WeekKind.Competition, WeekKind.Competition, WeekKind.Taper], structure.Weeks.Select(week => week.Kind));
        var found = LoadPlans.Best(problem, structure);
        var looked = 0;
        var (most, at) = (double.MinValue, "");
        foreach (var loads in Combinations([.. structure.Weeks.Select(week => week.Range)]))
        {
            looked++;
            if (Value(problem, structure, loads) is var value && value > most) (most, at) = (value, string.Join(' ', loads));
        }
        Assert.True(looked > 10_000, $"{looked}");
        // The search stops within 0.03 % of its bound; coefficients are rounded to thousandths of a point of value.
        Assert.InRange(Value(problem, structure, [.. found.Points]), most - 0.0003 * Math.Abs(most) - 1, most + 1);
        Assert.InRange(found.Value / 1000.0, most - 0.001 * Math.Abs(most), most + 0.001 * Math.Abs(most));
        Assert.True(found.Value <= found.Bound, at);
    }

    [Fact]
    public void The_same_structure_has_the_same_loads()
    {
        var problem = Problem.Of(Seasons.Drawn(7), Seasons.Team, new Wishes());
        var structure = Structures.LeastBroken(problem)!;
        var first = LoadPlans.Best(problem, structure);
        for (var again = 0; again < 4; again++) Assert.Equal(first, LoadPlans.Best(problem, structure));
    }

    [Fact]
    public void A_search_that_was_cancelled_says_so()
    {
        var problem = Problem.Of(Seasons.Drawn(7), Seasons.Team, new Wishes());
        var structure = Structures.LeastBroken(problem)!;
        Assert.Throws<OperationCanceledException>(() => LoadPlans.Best(problem, structure, cancel: new CancellationToken(canceled: true)));
        Assert.Throws<OperationCanceledException>(() => EmphasisPlans.Best(problem, structure, LoadPlans.Best(problem, structure), new CancellationToken(canceled: true)));
    }

    /// <summary>What a listener throws must not leave through the solver, which would end the program.</summary>
    [Fact]
    public void A_listener_that_fails_ends_the_search_and_says_so()
    {
        var problem = Problem.Of(Seasons.Drawn(7), Seasons.Team, new Wishes());
        var structure = Structures.LeastBroken(problem)!;
        Assert.Throws<TimeZoneNotFoundException>(() => LoadPlans.Best(problem, structure, _ => throw new TimeZoneNotFoundException("nobody listens")));
    }

    private static IEnumerable<int[]> Combinations(Limits.Range[] ranges)
    {
        var loads = ranges.Select(range => range.Least).ToArray();
        while (true)
        {
            yield return [.. loads];
            var week = 0;
            while (week < loads.Length && loads[week] == ranges[week].Most)
            {
                loads[week] = ranges[week].Least;
                week++;
            }
            if (week == loads.Length) yield break;
            loads[week]++;
        }
    }

    /// <summary>Points of value of loads of the season above: an introductory week from a home programme, one of building, three with a match, a taper.</summary>
    private static double Value(Problem problem, Structure structure, int[] load)
    {
        const double beyond = 400;
        double value = 0;
        var training = load.Select((points, week) => points - problem.Weeks[week].MatchPoints).ToArray();
        for (var week = 0; week < load.Length; week++)
        {
            var off = Math.Abs(load[week] - structure.Weeks[week].Guide / 10.0);
            value -= 1.5 * Math.Min(off, 5) + 4 * Math.Clamp(off - 5, 0, 5) + 9 * Math.Max(0, off - 10);
        }
        // Weeks 4 and 5 follow a competition week: change costs, a fall of more than twelve is paid for.
        foreach (var week in new[] { 3, 4 })
        {
            value -= 0.3 * Math.Abs(load[week] - load[week - 1]);
            value -= beyond * Math.Max(0, Math.Ceiling(load[week - 1] - 12.0 - load[week]));
        }
        // Back from the summer: 50 and 70 points, at twice the price.
        value -= 2 * beyond * (Math.Max(0, load[0] - 50) + Math.Max(0, load[1] - 70));
        // A new block starts near the level reached.
        value -= beyond * Math.Max(0, Math.Ceiling(0.85 * load[0] - load[1]));
        // From the third week on a rise by ten points or 15 %, whichever is less.
        for (var week = 2; week < 6; week++) value -= beyond * Math.Max(0, Math.Ceiling(load[week] - Math.Min(load[week - 1] + 10, 1.15 * load[week - 1])));
        // From the fifth on against the four before: 1.3 times their mean at most, and before a match a base of 0.7 of 72.
        for (var week = 4; week < 6; week++)
        {
            var four = load[(week - 4)..week].Sum();
            value -= beyond * Math.Max(0, Math.Ceiling(load[week] - 1.3 * four / 4));
            value -= 60 * Math.Max(0, Math.Ceiling(0.7 * 4 * 72 - four));
        }
        // The taper keeps 65 to 80 % of the training of the last two normal weeks.
        var usual = (training[3] + training[4]) / 2.0;
        value -= beyond * Math.Max(0, Math.Ceiling(Math.Max(training[5] - 0.8 * usual, 0.65 * usual - training[5])));
        var prepared = Preparedness.Of(problem).Select(match => (match.Match.IsKey, PerMille: match.Of(training) / (double)Preparedness.PerMille)).ToList();
        return value + (2 + 4) * prepared.Single(match => match.IsKey).PerMille + 0.9 * prepared.Where(match => !match.IsKey).Average(match => match.PerMille);
    }
}
