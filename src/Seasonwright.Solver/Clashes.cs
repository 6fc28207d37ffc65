using Seasonwright.Core;

namespace Seasonwright.Solver;

/// <summary>Explains why a season has no plan.</summary>
public static class Clashes
{
    /// <summary>What collides; null for a season that has a plan, or no weeks.</summary>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static Clash? Of(Problem problem, CancellationToken cancel = default) =>
        problem.Weeks.Count == 0 || Structures.Best(problem, cancel: cancel) is not null ? null : Explained(problem, cancel);

    /// <summary>What collides in a season with weeks that is known to have no plan.</summary>
    internal static Clash Explained(Problem problem, CancellationToken cancel)
    {
        // A deletion filter: what can be left out while there still is no plan does not belong to it. Preferences are left out first, then
        // rules, and locks last, so that what is named is what the coach said wherever it can be.
        var colliding = new List<Colliding>();
        var relaxed = problem.LeftOut;
        Reduce([.. Candidates(problem)]);
        return new([.. colliding], Structures.Broken(problem, cancel)!);

        void Reduce(Colliding[] candidates)
        {
            if (candidates.Length == 0) return;
            var without = candidates.Aggregate(relaxed, (now, one) => now.With(one.Condition, one.Week));
            if (Structures.Best(problem, without, cancel) is null) relaxed = without;
            else if (candidates.Length == 1) colliding.Add(candidates[0]);
            else
            {
                Reduce(candidates[..(candidates.Length / 2)]);
                Reduce(candidates[(candidates.Length / 2)..]);
            }
        }
    }

    /// <summary>All that may be left out; what a kind is and what the calendar says may not.</summary>
    internal static IEnumerable<Colliding> Candidates(Problem problem)
    {
        var conditions = Condition.All.Where(condition => !condition.IsLock && !condition.IsDefinition).Select(condition => new Colliding(condition, null)).ToList();
        var locks = problem.Weeks.Where(week => week.Lock is not null && week.Index >= problem.FirstOpen).SelectMany(week => new (bool Is, Condition Condition)[]
        {
            (week.Lock!.Phase is not null, Condition.LockedPhase),
            (week.Lock.Kind is not null, Condition.LockedKind),
            (week.Lock.Points is not null, Condition.LockedLoad),
        }.Where(one => one.Is).Select(one => new Colliding(one.Condition, week.Index)));
        return [.. conditions.Where(one => one.Condition.Rule.Length == 0), .. conditions.Where(one => one.Condition.Rule.Length > 0), .. locks];
    }
}
