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
    private static IEnumerable<Look> Looks(Plan plan, Figures figures) =>
        (plan.HasEmphasis ? ByWeeks(plan, figures) : plan.Weeks.Any(week => week.HasOurs) ? [] : plan.WithoutEmphasis).Concat(plan.Athletes.Looks(athlete => ByDays(plan, athlete, figures)));

    private static IEnumerable<Look> ByDays(Plan plan, AthleteDays athlete, Figures figures) =>
        DoseGap.All(plan, athlete, week => week.HasOurs && week.IsTraining, session => SessionContent.IsSprint(session, plan.Setup)).Select(gap => Judge(gap.Place, "days", gap.Days, figures));

    private static IEnumerable<Look> ByWeeks(Plan plan, Figures figures)
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
                if (!IsToldByDays(idle, last, week, figures)) yield return Judge(plan, idle, isClosed: isKnown, figures);
            }
            else if (week is { HasEmphasis: true, HasOurs: false }) yield return new Fine(Place.Of(week));
            (idle, last) = (isKnown ? [] : null, week);
        }
    }

    /// <summary>Sessions tell of all of it, or of enough.</summary>
    private static bool IsToldByDays(List<PlanWeek> idle, PlanWeek? last, PlanWeek? next, Figures figures) => idle.TrueForAll(week => week.HasOurs)
        && (7 * idle.Count > figures.Number(TargetDays) || last is { HasOurs: true } && next is null or { HasOurs: true });

    private static bool HasSprints(Plan plan, PlanWeek week) => week.HasOurs
        ? plan.Season.SessionsIn(week.Week).Any(session => !session.IsCancelled && SessionContent.IsSprint(session, plan.Setup)) : week.Exposures(QualityKind.Speed) > 0;

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
