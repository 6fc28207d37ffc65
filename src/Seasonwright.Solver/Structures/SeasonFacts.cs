using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>Reads the facts of every week off a problem.</summary>
internal static class SeasonFacts
{
    private static readonly PhaseKind[] Phases = Enum.GetValues<PhaseKind>();

    public static WeekFacts[] Of(Problem problem)
    {
        var (tapers, back, preparedness) = (Tapers.Of(problem), WeeksBack.Of(problem), Preparedness.Of(problem));
        var goals = GoalValue.Of(problem);
        var facts = new WeekFacts[problem.Weeks.Count];
        foreach (var week in problem.Weeks)
        {
            var at = week.Index;
            var cycle = problem.Cycles.FirstOrDefault(one => at <= one.Last);
            var preparation = cycle is null ? [] : problem.Weeks.Skip(cycle.Start).Take(cycle.Preparation).ToList();
            var training = preparation.Count(other => !other.IsBreak);
            var earlier = problem.Weeks.Take(at).Where(other => !other.IsBreak).ToList();
            facts[at] = new WeekFacts(
                week,
                cycle,
                cycle is null ? PhaseLengths.Of(isFirst: true, 0, 0) : PhaseLengths.Of(cycle.Start == 0, cycle.Preparation, training),
                cycle is not null && at >= cycle.First,
                tapers[at],
                back[at],
                at > 0 ? facts[at - 1] : null,
                earlier.LastOrDefault(other => other.Matches.Count <= 1)?.MatchPoints ?? 0,
                earlier.Exists(other => other.Matches.Count == 1),
                week.Matches.Count <= 1 && at > 1 && facts[at - 1].IsCongested && facts[at - 2].IsCongested,
                at + 1 < problem.Weeks.Count && (problem.Weeks[at + 1].IsBreak || at == problem.Cycles[^1].Last),
                preparation.TakeWhile(other => other.Index < at).Count(other => !other.IsBreak),
                training,
                Weight(preparedness, at),
                Phases.Select(phase => goals(at, phase)).ToValueList());
        }
        return facts;
    }

    /// <summary>Mean preparedness on key matches and, for less, on the others; without key matches on those alone.</summary>
    private static long Weight(ValueList<MatchPreparedness> matches, int week)
    {
        var key = matches.Where(match => match.Match.IsKey).ToList();
        var regular = matches.Where(match => !match.Match.IsKey).ToList();
        return Mean(key, Worth.PreparednessOnKeyMatches) + Mean(regular, key.Count > 0 ? Worth.PreparednessOnOthers : Worth.PreparednessOnKeyMatches);

        long Mean(List<MatchPreparedness> of, long worth) => of.Count == 0 ? 0 : Rounded(worth * of.Sum(match => match.Weeks[week]), of.Count * Preparedness.PerMille);
    }

    /// <summary>Divided and rounded half away from zero.</summary>
    private static long Rounded(long number, long by) => (number >= 0 ? number + by / 2 : number - by / 2) / by;
}
