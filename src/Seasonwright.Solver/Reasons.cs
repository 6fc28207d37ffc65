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

    /// <summary>What is said of a largest week and of hours to train that matches and entered practices pass by themselves. Settled weeks are none of it.</summary>
    public static ValueList<string> ByFacts(Problem problem, Structure structure)
    {
        List<string> said = [];
        var heavy = Open(Condition.LargestWeek).Where(week => Facts(week) > problem.LargestWeek).ToList();
        if (heavy.MaxBy(Facts) is { } most) said.Add(PlanWords.Say(heavy.Count == 1 ? "larger-by-facts-one" : "larger-by-facts", heavy.Count, problem.LargestWeek, most.Number, Facts(most)));
        var longer = Open(Condition.TrainingTime).Where(week => week.PracticePoints > problem.MostTraining(structure.Weeks[week.Index].Phase)).ToList();
        if (longer.MaxBy(week => week.PracticePoints) is { } longest)
            said.Add(PlanWords.Say(longer.Count == 1 ? "longer-by-facts-one" : "longer-by-facts", longer.Count, longest.Number, Hours(longest.PracticePoints!.Value), Hours(problem.MostTraining(structure.Weeks[longest.Index].Phase))));
        return said.ToValueList();

        IEnumerable<PlannedWeek> Open(Condition condition) => problem.Weeks.Where(week => !week.IsSettled && !problem.LeftOut.Has(condition, week.Index));

        string Hours(int points) => (points / problem.PointsAnHour).ToString("0.#", CultureInfo.InvariantCulture);

        static int Facts(PlannedWeek week) => week.MatchPoints + (week.PracticePoints ?? 0);
    }

    /// <summary>What is said of test days that a match or an event has come too near to and that have nowhere to go.</summary>
    public static ValueList<string> OfTests(Season season, EmphasisPlan emphasis) => emphasis.Moved.Where(moved => moved.To is null)
        .Select(moved => PlanWords.Say("test-stays", season.AllTestDays.First(test => test.Id == moved.Id).Battery, moved.From.ToString("ddd d MMM", CultureInfo.InvariantCulture))).ToValueList();

    private static IEnumerable<WeekReason> Of(Problem problem, Proposal proposal, StructureWeek week)
    {
        var (planned, points) = (problem.Weeks[week.Index], proposal.Loads.Points[week.Index]);
        var isFree = week is { Kind: WeekKind.Building, Phase: PhaseKind.Competition or PhaseKind.Peak };
        var passed = proposal.Loads.Short.Where(one => one.Week == week.Index).ToList();
        // Where practices alone fill a week, nothing of ours can be cut.
        var isFilled = planned.PracticePoints is { } practice && points <= planned.MatchPoints + practice && passed.Count > 0;
        var manner = isFree ? ".free" : planned.IsLost && week.Kind == WeekKind.Reduced ? ".lost" : isFilled && week.Kind is (WeekKind.Taper or WeekKind.Unloading) ? ".uncut" : "";
        yield return new(PlanWords.Say($"kind.{week.Kind}{manner}", week.Kind == WeekKind.Reduced ? planned.Availability : planned.Matches.Count), "");
        var settled = proposal.Structure.Broken.Where(one => one.Week == week.Index && one.IsForced).Select(one => one.Condition).Concat(week.Bounds.Where(bound => bound.IsForced && planned.IsSettled).Select(bound => bound.Condition));
        foreach (var condition in settled.Distinct()) yield return new(PlanWords.Say("settled", PlanWords.Of(condition)), condition.Rule);
        foreach (var bound in week.Bounds.Where(bound => bound.Binds(points) && !planned.IsSettled))
            yield return new(PlanWords.Say(10 * points + 10 > bound.Most ? "binds.most" : "binds.least", PlanWords.Of(bound.Condition)), bound.Condition.Rule, bound.Condition);
        if (isFilled) yield return new(PlanWords.Say("practice-alone", planned.PracticePoints, Math.Max(0, planned.PracticePoints!.Value - (passed.Max(one => one.Beyond) + 9) / 10)), "");
        foreach (var one in passed)
            yield return new(PlanWords.Say(one.IsForced ? "short.forced" : "short", PlanWords.Of(one.Condition), Points(one)), one.Condition.Rule, one.Condition);
        foreach (var one in proposal.Emphasis.Short.Where(one => one.Week == week.Index))
            yield return new(PlanWords.Say(one.IsForced ? "short.emphasis-forced" : "short.emphasis", PlanWords.Of(one.Condition), one.Beyond), one.Condition.Rule, one.Condition);
    }

    private static string Points(Breach breach) => (breach.Beyond / 10.0).ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>Conditions on loads are counted in points, which are per cent of a normal hard week, the others in weeks.</summary>
    private static string Amount(Breach breach) => PlanWords.Say(breach.Condition.IsAboutLoad ? "least.points" : breach.Beyond == 10 ? "least.weeks-one" : "least.weeks", Points(breach));
}
