using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>Why sessions lie where they do, why not elsewhere, and what a week falls short of.</summary>
internal static class WeekReasons
{
    private const double Alike = 1.5;

    public static IEnumerable<WeekReason> Of(WeekProposal proposal, WeekSession session)
    {
        var problem = proposal.Problem;
        if (session.Kind == SessionKind.Test)
        {
            yield return Says("", WeekWords.Say("because.test"));
            yield break;
        }
        if (session.Qualities.Where(quality => problem.Asked[(int)quality] > 0).ToList() is { Count: > 0 } served)
            yield return Says("", WeekWords.Say("because.serves", Join(served)));
        else yield return Says("", WeekWords.Say("because.load"));
        // Which condition keeps it from which other days.
        var against = problem.Days.Where(day => day.Index != session.Day)
            .SelectMany(day => WhyNot(proposal, session, day.Index, session.Slot).Take(1).Select(reason => (Day: day, Reason: reason))).ToList();
        foreach (var days in against.Where(one => !one.Day.IsPast && !one.Day.IsClosed && !one.Day.IsMatch).GroupBy(one => one.Reason))
            yield return Says(days.Key.Rule, WeekWords.Say("because.keeps", days.Key.Sentence, string.Join(", ", days.Select(one => one.Day.Date.ToString("ddd", System.Globalization.CultureInfo.InvariantCulture)))));
        if (against.Count < problem.Days.Count - 1) yield return Says("", WeekWords.Say("because.shape"));
        if (session.Kind == SessionKind.UpperStrength && problem.Days[session.Day].SinceLast <= problem.Limits.HardAfter) yield return Says("day-after-match-hard", WeekWords.Say("because.light"));
    }

    public static IEnumerable<WeekReason> WhyNot(WeekProposal proposal, WeekSession session, int at, DaySlot slot)
    {
        var problem = proposal.Problem;
        if (at < 0 || at >= problem.Days.Count) yield break;
        var (day, there) = (problem.Days[at], session with { Day = at, Slot = slot });
        List<WeekSession> others = [.. problem.Given.Concat(proposal.Sessions).Where(other => other != session)];
        var inside = others.Where(other => other.Day >= 0 && other.Day < problem.Days.Count).ToList();
        foreach (var condition in WeekConditions.Against(problem, day, session.Kind)) yield return Said(condition);
        foreach (var condition in others.SelectMany(other => WeekConditions.Against(problem, there, other))) yield return Said(condition);
        foreach (var (condition, of, most) in WeekConditions.OfDay)
            if (of(there) > 0 && most(problem, day) is { } limit && inside.Where(other => other.Day == at).Sum(of) + of(there) > limit) yield return Said(condition);
        foreach (var (condition, of, most) in WeekConditions.OfWeek)
            if (of(there) > 0 && most(problem) is { } limit && inside.Sum(of) + of(there) > limit) yield return Said(condition);
        if (inside.Exists(other => other.Day == at && other.Slot == slot && other.IsOurs)) yield return Said(WeekConditions.SlotTaken);
        foreach (var (condition, kind, most) in WeekConditions.OfWork)
            if (there.Kind == kind && most(problem) is { } limit && inside.Count(other => other.Kind == kind) + proposal.Asked.Count(asked => WeekModel.LikeOf(asked.Quality) == kind) >= limit) yield return Said(condition);
        var trained = inside.Append(there).Select(other => other.Day).ToHashSet();
        if (problem.MostDays is { } days && trained.Count > Math.Max(days, inside.Select(other => other.Day).Distinct().Count())) yield return Said(WeekConditions.TrainingDays);
        var before = inside.Select(other => other.Day).ToHashSet();
        if (problem.RestWithin.Any(run => !IsFree(problem, trained, run) && IsFree(problem, before, run))) yield return Said(WeekConditions.RestDay);
        if (there.IsHard && Run(problem, others, there) >= problem.Limits.HardRun) yield return Said(WeekConditions.HardRun);
    }

    public static IEnumerable<WeekReason> Short(WeekProposal proposal)
    {
        var problem = proposal.Problem;
        var inside = proposal.All.ToList();
        if (problem.Given.Where(session => session.IsAssumed).ToList() is { Count: > 0 } assumed)
            yield return Says("", WeekWords.Say("short.assumed", string.Join(", ", assumed.Select(session => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{problem.Days[session.Day].Date:ddd} {session.Minutes} min")))));
        if (problem.Ours is not { } aim) yield return Says("", WeekWords.Say("short.no-target"));
        else if (inside.Where(session => session.IsOurs).Sum(session => session.Au) is var ours && Math.Abs(problem.Points(ours) - problem.Points(aim)) > 1)
            yield return Says("", WeekWords.Say("short.target-under", problem.Points(aim), problem.Points(ours)));
        for (var quality = QualityKind.Hypertrophy; quality <= QualityKind.Prevention; quality++)
        {
            var has = inside.Count(session => session.Qualities.Contains(quality)) + proposal.Asked.Count(asked => asked.Quality == quality);
            if (has < problem.Asked[(int)quality]) yield return Says("", WeekWords.Say("short.exposure", WeekWords.Say($"quality.{quality}"), has, problem.Asked[(int)quality]));
        }
        if (inside.Count(WeekConditions.IsForLegs) < problem.AskedForLegs)
            yield return Says(WeekConditions.Legs.Rule, WeekWords.Say("short.legs"));
        if (problem.AsksForSprints && !proposal.Sessions.Any(session => session.Kind == SessionKind.Speed)) yield return Says(WeekConditions.Sprints.Rule, WeekWords.Say("short.sprints"));
        foreach (var day in problem.Days)
        {
            var limit = WeekConditions.OfDay[0].Most(problem, day)!.Value;
            var given = problem.FixedOn(day.Index).Sum(session => session.Au);
            if (given > limit) yield return Says("", WeekWords.Say("short.practice-alone", day.Date, problem.Points(given), problem.Points(limit)));
        }
        var trained = inside.Select(session => session.Day).ToHashSet();
        if (!IsFree(problem, trained, (0, problem.Days.Count - 1))) yield return Says(WeekConditions.RestDay.Rule, WeekWords.Say("short.rest"));
        else if (problem.RestWithin.Any(run => !IsFree(problem, trained, run))) yield return Says(WeekConditions.RestDay.Rule, WeekWords.Say("short.rest-by"));
        if (problem.Days.Count == 7 && proposal.MonotonyOfDays is { } monotony && monotony > Alike)
            yield return Says(WeekConditions.Monotony.Rule, WeekWords.Say("short.monotony", Math.Round((decimal)monotony, 2)));
        if (!proposal.IsProven) yield return Says("", WeekWords.Say("short.proven", Math.Round((decimal)(100 * proposal.Gap), 1)));
        foreach (var asked in proposal.Asked) yield return Says("", WeekWords.Say("asked.practice", problem.Days[asked.Day].Date, WeekWords.Say($"quality.{asked.Quality}")));
    }

    private static WeekReason Said(WeekCondition condition) => Says(condition.Rule, condition.Words);

    private static WeekReason Says(string rule, string sentence) => new(sentence, rule);

    private static bool IsFree(WeekProblem problem, HashSet<int> trained, (int First, int Last) run) => problem.Days.Any(day => day.Index >= run.First && day.Index <= run.Last && day.CanBeFree && !trained.Contains(day.Index));

    /// <summary>Hard days side by side, with a session on its day.</summary>
    private static int Run(WeekProblem problem, List<WeekSession> others, WeekSession there)
    {
        bool IsHard(int day) => day == there.Day || problem.MatchesBeside.Contains(day) || problem.Days.Any(one => one.Index == day && one.IsMatch) || others.Exists(other => other.Day == day && other.IsHard);
        var (first, last) = (there.Day, there.Day);
        while (IsHard(first - 1)) first--;
        while (IsHard(last + 1)) last++;
        return last - first + 1;
    }

    private static string Join(IEnumerable<QualityKind> qualities) => string.Join(", ", qualities.Select(quality => WeekWords.Say($"quality.{quality}")));
}
