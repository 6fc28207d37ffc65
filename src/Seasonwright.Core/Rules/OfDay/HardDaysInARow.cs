using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Hard days (see terms) per athlete.</summary>
internal static class HardDaysInARow
{
    public static readonly Figure CautionRun = Figure.Number("caution_run", 2, FigureUnit.Count);
    public static readonly Figure WarningRun = Figure.Number("warning_run", 3, FigureUnit.Count);
    public static readonly Figure HardRpe = Figure.Number("hard_rpe", 7, FigureUnit.Rpe);

    public static Rule Rule { get; } = new("hard-days-in-a-row")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Warning,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Foster1998, Sources.Thomas2018],
        Figures = [CautionRun, WarningRun, HardRpe],
        Rising = [[CautionRun, WarningRun]],
        Needs = Needs.Reports,
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        var limits = Limits.Of(figures);
        return plan.Athletes.Looks(athlete => Looks(plan, athlete, limits));
    }

    internal static Func<Session, bool> Against(Plan plan, Figures figures)
    {
        var limits = Limits.Of(figures);
        return session => limits.IsHard(session) && plan.WeekOf(session.Day)!.Kind != WeekKind.Overload
            && plan.Athletes.For(session).Any(athlete => 1 + Run(athlete, session, -1) + Run(athlete, session, 1) >= limits.Caution);

        int Run(AthleteDays athlete, Session session, int step)
        {
            var count = 0;
            while (plan.HasMatchOn(session.Day.AddDays(step * (count + 1))) || athlete.On(session.Day.AddDays(step * (count + 1))).Any(other => other.Id != session.Id && limits.IsHard(other))) count++;
            return count;
        }
    }

    /// <summary>Days of matches alone are no run: their gaps are told by <see cref="MatchGapShort"/>. A week of overload breaks the rule on purpose.</summary>
    private static IEnumerable<Look> Looks(Plan plan, AthleteDays athlete, Limits limits)
    {
        List<DateOnly> run = [];
        foreach (var week in plan.Weeks)
        {
            var isBroken = false;
            foreach (var day in week.Days.Days())
            {
                if (plan.HasMatchOn(day) || athlete.On(day).Any(limits.IsHard)) run.Add(day);
                else run.Clear();
                // Told once, on its last day.
                if (run.Count == 0 || run.Count < limits.Caution || plan.HasMatchOn(day.AddDays(1)) || athlete.On(day.AddDays(1)).Any(limits.IsHard)) continue;
                if (week.Kind == WeekKind.Overload || run.TrueForAll(hard => !athlete.On(hard).Any(limits.IsHard))) continue;
                isBroken = true;
                yield return Told(plan, athlete, [.. run], limits);
            }
            if (!isBroken && (week.HasOurs || week.HasPractices || week.IsTraining)) yield return week.IsLaidOut ? new Fine(Place.Of(week)) : new TooLittle(Place.Of(week), week.HasOurs ? "missing.practices" : "missing.sessions");
        }
    }

    private static Breach Told(Plan plan, AthleteDays athlete, List<DateOnly> run, Limits limits)
    {
        var limit = run.Count >= limits.Warning ? limits.Warning : limits.Caution;
        var hard = athlete.Between(run[0], run[^1]).Where(limits.IsHard).ToList();
        // In the middle, where two shorter runs are left.
        var remedy = hard.Where(session => session is { IsOurs: true, IsLocked: false } && !athlete.On(session.Day).Any(other => other.Id != session.Id && limits.IsHard(other)) && !plan.HasMatchOn(session.Day))
            .OrderBy(session => Math.Abs(2 * (session.Day.DayNumber - run[0].DayNumber) - run.Count + 1)).Select(session => BetterSession.For(plan, session)).FirstOrDefault();
        var isBesideMatch = run.Count == 2 && hard.Count == 1;
        return new Breach(isBesideMatch ? Place.Of(plan, hard[0]) : Place.Of(plan, run[0], run[^1]), isBesideMatch ? "match" : "run", limit == limits.Warning ? Severity.Warning : Severity.Caution, run.Count, limit)
        {
            Numbers = [run.Count, run[0], run[^1], limits.Caution],
            Figure = (limit == limits.Warning ? WarningRun : CautionRun).Name,
            Beyond = run.Count - limits.Caution + 1,
            Remedy = remedy ?? [],
        };
    }

    private readonly record struct Limits(decimal Caution, decimal Warning, decimal Rpe)
    {
        public bool IsHard(Session session) => session.Rpe.Value >= Rpe && session.Minutes.Value >= SessionContent.HardMinutes;

        public static Limits Of(Figures figures) => new(figures.Number(CautionRun), figures.Number(WarningRun), figures.Number(HardRpe));
    }
}
