using System.Diagnostics;
using System.Globalization;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Solver.Tests;

/// <summary>What ./prove propose measures of each season beside its stages: one line of numbers after "measured", in the order written here.</summary>
internal static class Measures
{
    private const int Five = 5;

    public static void Of(ITestOutputHelper output, string name, Season season, Setup team, Wishes wishes, Problem problem, Structure structure, LoadPlan loads, Season planned)
    {
        // The first plan is the structure with its own loads.
        var first = Timed(() => Structures.LeastBroken(problem)!, out _);
        var (watch, toGap) = (Stopwatch.StartNew(), -1L);
        LoadPlans.Best(problem, structure, found => toGap = toGap < 0 && found.Gap <= 0.01 ? watch.ElapsedMilliseconds : toGap);
        // A bound that came down after the last loads tells of itself only at the end.
        if (toGap < 0) toGap = watch.ElapsedMilliseconds;
        var two = Timed(() => LoadPlans.Best(problem, structure, LoadPlans.Parameters.Replace("num_search_workers:1", "num_search_workers:2", StringComparison.Ordinal)), out var withTwo);
        // Stage C on the best of several structures.
        var several = Timed(() => Structures.Several(problem, Five).Select(one => (Structure: one, Loads: LoadPlans.Best(problem, one))).ToList(), out var plans);
        var gains = new[] { 2, 3, Five }.Select(count => plans.Take(count).Max(plan => plan.Structure.Fixed + plan.Loads.Value) - (structure.Fixed + loads.Value)).ToList();
        // By hand.
        var hand = ByHand(problem);
        var (ours, theirs) = (Aim(problem, loads.Points), Aim(problem, hand.ConvertAll(week => week.Points)));
        var handFindings = Rulebook.Check(Plans.After(season, Edits(problem, hand)), team).Findings.Count(finding => !finding.IsForced);
        var ourFindings = Rulebook.Check(planned, team).Findings.Count(finding => !finding.IsForced);
        // A week lost two fifths into the season.
        var lost = season.Weeks[season.Weeks.Length * 2 / 5];
        var happened = Plans.After(planned, [Seasons.Event(EventKind.Other, lost.Days, 0)]);
        var replan = Timed(() => Proposals.Of(happened, team, wishes.Repairing(planned, happened, lost.Days.First), 1, (kind, key) => $"r{kind}-{key}")[0], out var repaired);
        var after = Plans.After(happened, repaired.Edits);
        var changed = after.Weeks.Count(week => week.Days.First > lost.Days.First && (after.KindOf(week.Id) != planned.KindOf(week.Id) || after.TargetOf(week.Id) != planned.TargetOf(week.Id) || after.PhaseOf(week)?.Phase.Kind != planned.PhaseOf(week)?.Phase.Kind));
        var again = Proposals.Of(planned, team, wishes.Repairing(planned, planned, lost.Days.First), 1, (kind, key) => $"r{kind}-{key}")[0];
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"measured {first} {toGap} {two} {100 * withTwo.Gap:0.000} {several} {gains[0] / 1000} {gains[1] / 1000} {gains[2] / 1000} {Math.Abs(loads.Value / 1000)} {ours} {theirs} {ourFindings} {handFindings} {replan} {changed} {season.Weeks.Length * 3 / 5} {again.Edits.Count} {name.Replace(' ', '_')}"));
    }

    private static long Timed<T>(Func<T> work, out T result)
    {
        var watch = Stopwatch.StartNew();
        result = work();
        return watch.ElapsedMilliseconds;
    }

    /// <summary>
    /// A year as it is often drawn by hand: in preparation three rising weeks (60, 70, 80, then five more each time, 95 at most) and one
    /// of 60 %; in the competition 72 points with one match, 68 with more, every fourth week of one match 60; 22 after it, none in a
    /// break. Common practice, no source.
    /// </summary>
    private static List<(WeekKind Kind, PhaseKind Phase, int Points)> ByHand(Problem problem)
    {
        List<(WeekKind, PhaseKind, int)> weeks = [];
        var (run, reached) = (0, 50);
        foreach (var week in problem.Weeks)
        {
            var cycle = problem.Cycles.FirstOrDefault(one => week.Index <= one.Last);
            var phase = cycle is null ? PhaseKind.Transition : week.Index >= cycle.First ? PhaseKind.Competition : week.Index - cycle.Start < cycle.Preparation / 2 ? PhaseKind.GeneralPreparation : PhaseKind.SpecificPreparation;
            var unloads = run % 4 == 3;
            var (kind, points) = (phase, week.Matches.Count) switch
            {
                _ when week.IsBreak => (WeekKind.Break, 0),
                (PhaseKind.Transition, _) => (WeekKind.Transition, 22),
                (PhaseKind.Competition, > 1) => (WeekKind.Congested, 68),
                (PhaseKind.Competition, _) => unloads ? (WeekKind.Unloading, 60) : (week.Matches.Count == 1 ? WeekKind.Competition : WeekKind.Building, 72),
                _ => unloads ? (WeekKind.Unloading, 60 * reached / 100) : (WeekKind.Building, reached = Math.Min(95, 60 + 5 * (run / 4) + 10 * (run % 4))),
            };
            run = week.IsBreak ? 0 : run + 1;
            weeks.Add((kind, phase, Math.Max(points, week.MatchPoints)));
        }
        return weeks;
    }

    /// <summary>The worst preparedness on a key match, per mille; of all matches where none is key.</summary>
    private static long Aim(Problem problem, IReadOnlyList<int> points)
    {
        var training = points.Select((all, week) => all - problem.Weeks[week].MatchPoints).ToArray();
        var matches = Preparedness.Of(problem);
        var key = matches.Where(match => match.Match.IsKey).ToList();
        return (key.Count > 0 ? key : [.. matches]).Select(match => match.Of(training) / Preparedness.PerMille).DefaultIfEmpty(0).Min();
    }

    private static IEnumerable<SeasonEdit> Edits(Problem problem, List<(WeekKind Kind, PhaseKind Phase, int Points)> weeks) => problem.Weeks.SelectMany(week => new SeasonEdit[]
    {
        new PaintPhase(week.Id, week.Id, new($"p{weeks.Take(week.Index + 1).Zip(weeks.Skip(1)).Count(pair => pair.First.Phase != pair.Second.Phase)}"), weeks[week.Index].Phase, new($"r{week.Index}")),
        new SetWeekKind(week.Id, week.Id, weeks[week.Index].Kind),
        new SetWeekLoad(week.Id, week.Id, problem.Points.ToLoad(weeks[week.Index].Points)),
    });
}
