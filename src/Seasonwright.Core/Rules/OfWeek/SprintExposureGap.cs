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
        Needs = Needs.Sessions,
        Looks = Looks,
    };

    /// <summary>Estimated from the weeks that hold speed work, as <see cref="OfBlock.QualityLeftIdle"/> does; measured speeds wait for sessions.</summary>
    private static IEnumerable<Look> Looks(Plan plan, Figures figures) => plan.HasEmphasis ? Judge(plan, figures) : plan.WithoutEmphasis;

    private static IEnumerable<Look> Judge(Plan plan, Figures figures)
    {
        List<PlanWeek>? idle = null;
        foreach (var week in plan.Weeks.Where(week => week.IsTraining).Append(null))
        {
            if (week is { HasEmphasis: true } && week.Exposures(QualityKind.Speed) == 0)
            {
                idle?.Add(week);
                continue;
            }
            // After a gap or where nobody entered emphasis there is nothing to count from.
            if (idle is { Count: > 0 }) yield return Judge(plan, idle, isClosed: week is { HasEmphasis: true }, figures);
            else if (week is { HasEmphasis: true }) yield return new Fine(Place.Of(week));
            idle = week is { HasEmphasis: true } ? [] : null;
        }
    }

    private static Look Judge(Plan plan, List<PlanWeek> idle, bool isClosed, Figures figures)
    {
        // Where no dose follows nobody knows when the next one comes.
        var days = 7 * (idle.Count + (isClosed ? 1 : 0));
        var place = Place.Of(idle[0], idle[^1]);
        if (days <= figures.Number(TargetDays)) return new Fine(place);
        var limit = days > figures.Number(LimitDays) ? LimitDays : TargetDays;
        return new Breach(place, "gap", limit == LimitDays ? Severity.Warning : Severity.Caution, days, figures.Number(limit))
        {
            Numbers = [days, figures.Number(limit)],
            Figure = limit.Name,
            Beyond = days - figures.Number(TargetDays),
            Remedy = [.. plan.Emphasise(idle, QualityKind.Speed, 1)],
        };
    }
}
