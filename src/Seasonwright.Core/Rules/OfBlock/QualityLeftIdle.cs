using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules.OfBlock;

/// <summary>Dates of sessions or matches giving a real dose of each quality (intent tags, intensity threshold).</summary>
internal static class QualityLeftIdle
{
    public static readonly Figure LimitDaysAerobicEndurance = Figure.Number("limit_days.aerobic_endurance", 35, FigureUnit.Days);
    public static readonly Figure LimitDaysMaxStrength = Figure.Number("limit_days.max_strength", 35, FigureUnit.Days);
    public static readonly Figure LimitDaysAnaerobicGlycolytic = Figure.Number("limit_days.anaerobic_glycolytic", 22, FigureUnit.Days);
    public static readonly Figure LimitDaysMaxSpeed = Figure.Number("limit_days.max_speed", 8, FigureUnit.Days);
    public static readonly Figure CentreDaysAerobicEndurance = Figure.Number("centre_days.aerobic_endurance", 30, FigureUnit.Days);
    public static readonly Figure CentreDaysMaxStrength = Figure.Number("centre_days.max_strength", 30, FigureUnit.Days);
    public static readonly Figure CentreDaysAnaerobicGlycolytic = Figure.Number("centre_days.anaerobic_glycolytic", 18, FigureUnit.Days);
    public static readonly Figure CentreDaysMaxSpeed = Figure.Number("centre_days.max_speed", 5, FigureUnit.Days);
    public static readonly Figure MatchCountsFor = Figure.Words("match_counts_for", "aerobic_endurance", "anaerobic_glycolytic");

    public static Rule Rule { get; } = new("quality-left-idle")
    {
        Scope = RuleScope.Block,
        Highest = Severity.Caution,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Issurin2008, Sources.IssurinResiduals, Sources.Ronnestad2011],
        Figures = [LimitDaysAerobicEndurance, LimitDaysMaxStrength, LimitDaysAnaerobicGlycolytic, LimitDaysMaxSpeed, CentreDaysAerobicEndurance, CentreDaysMaxStrength, CentreDaysAnaerobicGlycolytic, CentreDaysMaxSpeed, MatchCountsFor],
        Needs = Needs.Sessions,
        Looks = Looks,
    };

    /// <summary>What idles, by which figures; speed is watched more closely by its own rule.</summary>
    private static readonly (QualityKind Kind, string Code, Figure Limit, Figure Centre)[] Watched =
    [
        (QualityKind.AerobicConditioning, "aerobic_endurance", LimitDaysAerobicEndurance, CentreDaysAerobicEndurance),
        (QualityKind.MaximumStrength, "max_strength", LimitDaysMaxStrength, CentreDaysMaxStrength),
        (QualityKind.HighIntensityConditioning, "anaerobic_glycolytic", LimitDaysAnaerobicGlycolytic, CentreDaysAnaerobicGlycolytic),
        (QualityKind.Speed, "max_speed", LimitDaysMaxSpeed, CentreDaysMaxSpeed),
    ];

    /// <summary>
    /// Told from whole weeks: so many weeks without a dose leave one week more between two doses. Weeks of break and transition do
    /// not count, weeks for which nobody entered emphasis end the count.
    /// </summary>
    private static IEnumerable<Look> Looks(Plan plan, Figures figures) =>
        plan.HasEmphasis ? Watched.SelectMany(watched => Looks(plan, figures, watched.Kind, watched.Code, watched.Limit, watched.Centre)) : plan.WithoutEmphasis;

    private static IEnumerable<Look> Looks(Plan plan, Figures figures, QualityKind kind, string code, Figure limit, Figure centre)
    {
        var matchesCount = figures.Holds(MatchCountsFor, code);
        List<PlanWeek>? idle = null;
        var isDeveloped = false;
        foreach (var week in plan.Weeks.Where(week => week.IsTraining))
        {
            isDeveloped |= week.Exposures(kind) >= (int)Emphasis.Develop;
            if (!week.HasEmphasis) idle = null;
            else if (week.Exposures(kind) > 0 || matchesCount && week.Matches.Length > 0)
            {
                if (idle is not null) yield return Judge(idle, week);
                idle = [];
            }
            else if (isDeveloped) idle?.Add(week);
        }
        if (idle is { Count: > 0 }) yield return Judge(idle, null);

        Look Judge(List<PlanWeek> idle, PlanWeek? dose)
        {
            var days = 7 * (idle.Count + (dose is null ? 0 : 1));
            if (idle.Count == 0 || days <= figures.Number(limit)) return new Fine(idle.Count > 0 ? Place.Of(idle[0], idle[^1]) : Place.Of(dose!));
            return new Breach(Place.Of(idle[0], idle[^1]), code, Severity.Caution, days, figures.Number(limit))
            {
                Numbers = [days, figures.Number(limit), figures.Number(centre)],
                Figure = limit.Name,
                Remedy = [.. plan.Emphasise([idle[idle.Count / 2]], kind, (int)Emphasis.Maintain)],
            };
        }
    }
}
