using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>The engine: stage A, C and B, one after the other, and the edits that follow. The same season, setup and wishes give the same proposals, to the last id.</summary>
public static class Proposals
{
    /// <summary>Plans that stand beside each other differ in so many weeks at least: one week apart they only move an unloading week.</summary>
    private const int WeeksApart = 4;

    /// <summary>How many weeks around what happened a repair opens, one after the other, those that follow before those that lead up to it; null for all.</summary>
    private static readonly Reach?[] Reaches = [new(0, 0), new(0, 1), new(1, 1), new(0, 2), new(2, 2), new(0, 4), new(4, 4), new(0, 8), new(8, 8), null];

    /// <param name="count">How many at most, 1 and more: the best first, any two differ in the phase or kind of four weeks or more.</param>
    /// <param name="id">The id of something new, by its kind ("phase", "block", "test") and by what makes it one of its kind; the same for the same.</param>
    /// <param name="watch">Hears how far the work is; null for nobody.</param>
    /// <returns>Where no plan keeps all that is asked, the one that breaks least, with what clashes. None for a season that is not started.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static ValueList<Proposal> Of(Season season, Setup setup, Wishes wishes, int count, Func<string, string, string> id, Watch? watch = null, CancellationToken cancel = default)
    {
        watch ??= Watch.None;
        return wishes.Reach is { } most && wishes.Stands is { } stands ? Repaired(season, setup, wishes, stands, most, count, id, watch, cancel) : Found(season, setup, wishes, count, id, watch, cancel);
    }

    /// <summary>
    /// Opens no more weeks around what happened than it takes: those alone whose calendar asks for something else, then all in which something
    /// happened, then those around them; the fewest with which no rule is broken; where there are no such, those with fewer breaches, or half of what as many go beyond. What the plan that stands did not keep before is not asked of the weeks that have stayed as they were, but no less of it is kept.
    /// </summary>
    private static ValueList<Proposal> Repaired(Season season, Setup setup, Wishes wishes, Season stands, Reach most, int count, Func<string, string, string> id, Watch watch, CancellationToken cancel)
    {
        var settled = wishes with { Reach = new Reach(0, 0), Disrupted = [] };
        var (then, now) = (Problem.Of(stands, setup, settled).Weeks, Problem.Of(season, setup, settled).Weeks);
        wishes = wishes with { LeftOut = Before().Aggregate(wishes.LeftOut, (all, one) => all.With(one)) };
        (ValueList<Proposal> Found, int Breaches, int Beyond)? best = null;
        var opened = false;
        var other = now.Where(week => !IsAsBefore(week.Index)).Select(week => week.Id).ToHashSet();
        foreach (var (weeks, reach) in Reaches.Select(reach => (wishes.Disrupted, reach)).Prepend((wishes.Disrupted.Where(other.Contains).ToValueList(), new Reach(0, 0))).Distinct())
        {
            // Beyond what is allowed only where there is no plan within that opens a week around them.
            if (best is not null && (watch.Enough.IsCancellationRequested || opened && reach?.IsWithin(most) != true)) break;
            var found = Found(season, setup, wishes with { Disrupted = weeks, Reach = reach }, count, id, watch with { Tell = (stage, plans) => watch.Tell(stage, best?.Found ?? plans) }, cancel);
            if (found.Count == 0) continue;
            opened |= reach is not { Before: 0, After: 0 };
            var broken = Breaches(found[0]).Where(breach => breach.Condition.Rule.Length > 0 || breach.Condition.IsDefinition).ToList();
            var beyond = broken.Sum(breach => breach.Beyond);
            if (best is not { } before || broken.Count < before.Breaches || broken.Count == before.Breaches && 2 * beyond <= before.Beyond) best = (found, broken.Count, beyond);
            if (broken.Count == 0) break;
        }
        return best?.Found ?? [];

        bool IsAsBefore(int week) => week < now.Count && week < then.Count && then[week].IsLike(now[week]);

        IEnumerable<Breach> Before() => Found(stands, setup, settled, 1, id, Watch.None, cancel) is [var stood] ? Breaches(stood).Where(breach => IsAsBefore(breach.Week)) : [];

        static IEnumerable<Breach> Breaches(Proposal proposal) => proposal.Structure.Broken.Concat(proposal.Loads.Short).Concat(proposal.Emphasis.Short);
    }

    private static ValueList<Proposal> Found(Season season, Setup setup, Wishes wishes, int count, Func<string, string, string> id, Watch watch, CancellationToken cancel)
    {
        var problem = Problem.Of(season, setup, wishes);
        if (problem.Weeks.Count == 0) return [];
        var structures = count > 1 ? Structures.Several(problem, count, WeeksApart, cancel) : Structures.Best(problem, cancel: cancel) is { } best ? [best] : [];
        ValueList<Proposal> plans = [];
        foreach (var structure in structures.TakeWhile(_ => plans.Count == 0 || !watch.Enough.IsCancellationRequested)) plans = [.. plans, Found(structure, null)];
        if (plans.Count > 0 || wishes.Reach is not null) return plans;
        var clash = Clashes.Explained(problem, cancel);
        return [Found(clash.LeastBroken, clash)];

        Proposal Found(Structure structure, Clash? clash)
        {
            var none = EmphasisPlan.None(problem);
            Tell(Stage.Loads, LoadPlan.Of(structure));
            var loads = LoadPlans.Best(problem, structure, better => Tell(Stage.Loads, better), watch.Enough, cancel);
            Tell(Stage.Emphasis, loads);
            return Made(structure, loads, EmphasisPlans.Best(problem, structure, loads, cancel), clash);

            void Tell(Stage stage, LoadPlan soFar) => watch.Tell(stage, [.. plans, Made(structure, soFar, none, clash)]);
        }

        Proposal Made(Structure structure, LoadPlan loads, EmphasisPlan emphasis, Clash? clash)
        {
            var proposal = new Proposal(wishes, structure, loads, emphasis, clash, clash is null ? [] : Reasons.Of(problem, clash), [], ProposedEdits.Of(season, setup, problem, structure, loads, emphasis, _ => true, id));
            return proposal with { Reasons = Reasons.Of(problem, proposal), ByFacts = [.. Reasons.ByFacts(problem, structure), .. Reasons.OfTests(season, emphasis)] };
        }
    }

    /// <summary>Of a repair: the weeks, by index, whose phase, kind or load do not stay as they stand even where leaving them is as dear as it gets; none for a plan made anew.</summary>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static ValueList<int> Unavoidable(Season season, Setup setup, Proposal repair, CancellationToken cancel = default)
    {
        var problem = Problem.Of(season, setup, repair.Wishes with { KeepWeight = Wishes.HighestKeepWeight });
        if (Structures.Best(problem, cancel: cancel) is not { } structure) return [];
        var loads = LoadPlans.Best(problem, structure, cancel: cancel);
        // What moves only there makes room for something that this repair leaves.
        return problem.Weeks.Where(week => (!week.IsSettled || week.WasLost) && IsOther(week, structure, loads) && IsOther(week, repair.Structure, repair.Loads)).Select(week => week.Index).ToValueList();

        static bool IsOther(PlannedWeek week, Structure structure, LoadPlan loads) =>
            week.Kept is { } kept && (Other(kept.Phase, structure.Weeks[week.Index].Phase) || Other(kept.Kind, structure.Weeks[week.Index].Kind) || Other(kept.Points, loads.Points[week.Index]));

        // Peak is a label of the engine.
        static bool Other<T>(T? kept, T now) where T : struct => kept is { } stands && !stands.Equals(now is PhaseKind.Peak ? PhaseKind.Competition : now);
    }

    /// <summary>The edits that bring some weeks of a proposal into the season it was made for, and only some of its tracks.</summary>
    /// <param name="weeks">Whether a week is taken, by its index.</param>
    /// <param name="tracks">What of them is taken.</param>
    public static ValueList<SeasonEdit> Part(Season season, Setup setup, Proposal proposal, Func<int, bool> weeks, Func<ProposedTrack, bool> tracks, Func<string, string, string> id) =>
        ProposedEdits.Of(season, setup, Problem.Of(season, setup, proposal.Wishes), proposal.Structure, proposal.Loads, proposal.Emphasis, weeks, id).Where(edit => tracks(ProposedEdits.TrackOf(edit))).ToValueList();
}
