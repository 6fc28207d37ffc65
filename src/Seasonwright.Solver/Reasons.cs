using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>Why each week of a proposal is as it is: its kind from the calendar and its block, its load from the conditions that bind it.</summary>
public static class Reasons
{
    /// <returns>For each week in order its kind's reason first.</returns>
    public static ValueList<ValueList<WeekReason>> Of(Problem problem, Proposal proposal) =>
        proposal.Structure.Weeks.Select(week => Of(problem, proposal, week).ToValueList()).ToValueList();

    /// <summary>What collides, and how the plan that breaks least breaks it, in words.</summary>
    public static ValueList<string> Of(Problem problem, Clash clash) =>
    [
        PlanWords.Say("clash", string.Join("; ", clash.Colliding.Select(one => one.Week is { } week ? PlanWords.Say("clash.week", PlanWords.Of(one.Condition), problem.Weeks[week].Number) : PlanWords.Of(one.Condition)))),
        PlanWords.Say("least", string.Join("; ", clash.LeastBroken.Broken.Where(one => !one.IsForced).Select(one => PlanWords.Say("least.one", PlanWords.Of(one.Condition), problem.Weeks[one.Week].Number, Amount(one))))),
    ];

    /// <summary>What is said of a largest week that the calendar itself passes; null where it does not. Settled weeks are none of it.</summary>
    public static string? LargerByFacts(Problem problem)
    {
        var heavy = problem.Weeks.Where(week => !week.IsSettled && ByFacts(week) > problem.LargestWeek && !problem.LeftOut.Has(Condition.LargestWeek, week.Index)).ToList();
        if (heavy.MaxBy(ByFacts) is not { } most) return null;
        return PlanWords.Say(heavy.Count == 1 ? "larger-by-facts-one" : "larger-by-facts", heavy.Count, problem.LargestWeek, most.Number, ByFacts(most));

        static int ByFacts(PlannedWeek week) => week.MatchPoints + (week.PracticePoints ?? 0);
    }

    private static IEnumerable<WeekReason> Of(Problem problem, Proposal proposal, StructureWeek week)
    {
        var (planned, points) = (problem.Weeks[week.Index], proposal.Loads.Points[week.Index]);
        var isFree = week is { Kind: WeekKind.Building, Phase: PhaseKind.Competition or PhaseKind.Peak };
        yield return new(PlanWords.Say($"kind.{week.Kind}{(isFree ? ".free" : planned.IsLost && week.Kind == WeekKind.Reduced ? ".lost" : "")}", week.Kind == WeekKind.Reduced ? planned.Availability : planned.Matches.Count), "");
        var settled = proposal.Structure.Broken.Where(one => one.Week == week.Index && one.IsForced).Select(one => one.Condition).Concat(week.Bounds.Where(bound => bound.IsForced && planned.IsSettled).Select(bound => bound.Condition));
        foreach (var condition in settled.Distinct()) yield return new(PlanWords.Say("settled", PlanWords.Of(condition)), condition.Rule);
        foreach (var bound in week.Bounds.Where(bound => bound.Binds(points) && !planned.IsSettled))
            yield return new(PlanWords.Say(10 * points + 10 > bound.Most ? "binds.most" : "binds.least", PlanWords.Of(bound.Condition)), bound.Condition.Rule, bound.Condition);
        foreach (var one in proposal.Loads.Short.Where(one => one.Week == week.Index))
            yield return new(PlanWords.Say(one.IsForced ? "short.forced" : "short", PlanWords.Of(one.Condition), Points(one)), one.Condition.Rule, one.Condition);
        foreach (var one in proposal.Emphasis.Short.Where(one => one.Week == week.Index))
            yield return new(PlanWords.Say(one.IsForced ? "short.emphasis-forced" : "short.emphasis", PlanWords.Of(one.Condition), one.Beyond), one.Condition.Rule, one.Condition);
    }

    private static string Points(Breach breach) => (breach.Beyond / 10.0).ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>Conditions on loads are counted in points, which are per cent of a normal hard week, the others in weeks.</summary>
    private static string Amount(Breach breach) => PlanWords.Say(breach.Condition.IsAboutLoad ? "least.points" : breach.Beyond == 10 ? "least.weeks-one" : "least.weeks", Points(breach));
}
