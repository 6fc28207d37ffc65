using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Date of last effort >= fast_pct of own best speed (measured or tagged); match minutes.</summary>
internal static class SprintExposureGap
{
    public static readonly Figure FastPct = Figure.Number("fast_pct", 0.95m, FigureUnit.Share);
    public static readonly Figure FallbackPct = Figure.Number("fallback_pct", 0.9m, FigureUnit.Share);
    public static readonly Figure TargetDays = Figure.Number("target_days", 7, FigureUnit.Days);
    public static readonly Figure LimitDays = Figure.Number("limit_days", 10, FigureUnit.Days);

    public static Rule Rule { get; } = new("sprint-exposure-gap")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Malone2017, Sources.Buchheit2023, Sources.GomezPiqueras2024, Sources.IssurinResiduals],
        Figures = [FastPct, FallbackPct, TargetDays, LimitDays],
        Rising = [[TargetDays, LimitDays]],
        Needs = Needs.Results,
        Looks = Looks,
    };

    /// <summary>
    /// By days where sessions are laid out, else estimated from the weeks that hold speed work, as <see cref="OfBlock.QualityLeftIdle"/>
    /// does; measured speeds wait for results.
    /// </summary>
    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        var days = plan.Athletes.Looks(athlete => ByDays(plan, athlete, figures)).ToList();
        if (!plan.HasEmphasis) return days.Count > 0 ? days : plan.WithoutEmphasis;
        var weeks = ByWeeks(plan, days, figures).ToList();
        // What is told of more weeks is not told again of some of them.
        return weeks.Concat(days.Where(look => look is not Breach || !weeks.Exists(told => told is Breach && told.Place.First <= look.Place.First && look.Place.Last <= told.Place.Last)));
    }

    private static IEnumerable<Look> ByDays(Plan plan, AthleteDays athlete, Figures figures) =>
        DoseGap.All(plan, week => week.HasOurs && week.IsTraining, athlete.Sessions.Where(session => IsSprint(plan, session)).Select(session => session.Day).Concat(plan.Season.TestDays.Where(test => TestWords.NameSprints(test.Battery)).Select(test => test.Day)))
            .Select(gap => Judge(gap.Place, "days", gap.Days, figures));

    /// <summary>A test of sprints is as fast as any.</summary>
    private static bool IsSprint(Plan plan, Session session) =>
        SessionContent.IsSprint(session, plan.Setup) || session is { Kind: SessionKind.Test, Name: { } name } && TestWords.NameSprints(name);

    private static IEnumerable<Look> ByWeeks(Plan plan, List<Look> days, Figures figures)
    {
        List<PlanWeek>? idle = null;
        PlanWeek? last = null;
        foreach (var week in plan.Weeks.Where(week => week.IsTraining).Append(null))
        {
            var isKnown = week is { HasEmphasis: true } or { HasOurs: true };
            if (week is not null && isKnown && !HasSprints(plan, week))
            {
                idle?.Add(week);
                continue;
            }
            // After a gap or where nobody entered emphasis there is nothing to count from.
            if (idle is { Count: > 0 })
            {
                if (!IsToldByDays(idle, last, week, days)) yield return Judge(plan, idle, isClosed: isKnown, figures);
            }
            else if (week is { HasEmphasis: true, HasOurs: false }) yield return new Fine(Place.Of(week));
            (idle, last) = (isKnown ? [] : null, week);
        }
    }

    /// <summary>Sessions tell of all of it, or told it already.</summary>
    private static bool IsToldByDays(List<PlanWeek> idle, PlanWeek? last, PlanWeek? next, List<Look> days) => idle.TrueForAll(week => week.HasOurs)
        && (last is { HasOurs: true } && next is null or { HasOurs: true } || days.Exists(look => look is Breach && look.Place.First <= idle[^1].Number && idle[0].Number <= look.Place.Last));

    private static bool HasSprints(Plan plan, PlanWeek week) => week.HasOurs
        ? plan.Season.SessionsIn(week.Week).Any(session => !session.IsCancelled && IsSprint(plan, session)) || plan.Season.TestDays.Any(test => week.Days.Contains(test.Day) && TestWords.NameSprints(test.Battery)) : week.Exposures(QualityKind.Speed) > 0;

    private static Look Judge(Plan plan, List<PlanWeek> idle, bool isClosed, Figures figures)
    {
        // Where no dose follows nobody knows when the next one comes.
        var look = Judge(Place.Of(idle[0], idle[^1]), "gap", 7 * (idle.Count + (isClosed ? 1 : 0)), figures);
        return look is Breach breach && !idle.Exists(week => week.HasOurs) ? breach with { Remedy = [.. plan.Emphasise(idle, QualityKind.Speed, 1)] } : look;
    }

    private static Look Judge(Place place, string code, int days, Figures figures)
    {
        if (days <= figures.Number(TargetDays)) return new Fine(place);
        var limit = days > figures.Number(LimitDays) ? LimitDays : TargetDays;
        return new Breach(place, code, limit == LimitDays ? Severity.Warning : Severity.Caution, days, figures.Number(limit))
        {
            Numbers = [days, figures.Number(limit)],
            Figure = limit.Name,
            Beyond = days - figures.Number(TargetDays),
        };
    }
}
