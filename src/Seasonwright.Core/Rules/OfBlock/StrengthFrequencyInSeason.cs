using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules.OfBlock;

/// <summary>Competition-phase weeks; strength sessions with >= min_sets_pattern hard sets at >= min_intensity of the pre-season load; match count.</summary>
internal static class StrengthFrequencyInSeason
{
    public static readonly Figure MaxGapDays = Figure.Number("max_gap_days", 10, FigureUnit.Days);
    public static readonly Figure TargetPerWeek = Figure.Number("target_per_week", 1, FigureUnit.Count);
    public static readonly Figure MinSetsPattern = Figure.Number("min_sets_pattern", 1, FigureUnit.Count);
    public static readonly Figure MinIntensity = Figure.Number("min_intensity", 0.85m, FigureUnit.Share);
    public static readonly Figure MaxOneMatch = Figure.Number("max_one_match", 2, FigureUnit.Count);
    public static readonly Figure MaxTwoMatch = Figure.Number("max_two_match", 1, FigureUnit.Count);

    public static Rule Rule { get; } = new("strength-frequency-in-season")
    {
        Scope = RuleScope.Block,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Ronnestad2011, Sources.Spiering2021, Sources.Bickel2011, Sources.McMaster2013],
        Figures = [MaxGapDays, TargetPerWeek, MinSetsPattern, MinIntensity, MaxOneMatch, MaxTwoMatch],
        Needs = Needs.Sessions,
        Looks = Looks,
    };

    /// <summary>Told from whole weeks, as <see cref="QualityLeftIdle"/> does.</summary>
    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        foreach (var run in plan.Runs(week => week.IsCompetition && week.IsTraining))
        {
            List<PlanWeek> idle = [];
            foreach (var week in run.Append(null))
            {
                if (week is not null && week.HasEmphasis && week.Exposures(QualityKind.MaximumStrength) == 0)
                {
                    idle.Add(week);
                    continue;
                }
                if (idle.Count > 0) yield return Gap(plan, idle, isClosed: week is not null, figures);
                idle.Clear();
                if (week is not null) yield return Week(plan, week, figures);
            }
        }
    }

    private static Look Gap(Plan plan, List<PlanWeek> idle, bool isClosed, Figures figures)
    {
        // Where no dose follows nobody knows when the next one comes.
        var days = 7 * (idle.Count + (isClosed ? 1 : 0));
        var place = Place.Of(idle[0], idle[^1]);
        return days <= figures.Number(MaxGapDays)
            ? new Fine(place)
            : new Breach(place, "gap", Severity.Warning, days, figures.Number(MaxGapDays))
            {
                Numbers = [days, figures.Number(MaxGapDays)],
                Figure = MaxGapDays.Name,
                Remedy = [.. plan.Emphasise(idle, QualityKind.MaximumStrength, figures.Number(TargetPerWeek))],
            };
    }

    private static Look Week(Plan plan, PlanWeek week, Figures figures)
    {
        if (!week.HasEmphasis) return new TooLittle(Place.Of(week), "missing.emphasis");
        var most = week.Matches.Length switch { 0 => null, 1 => MaxOneMatch, _ => MaxTwoMatch };
        var sessions = week.Exposures(QualityKind.MaximumStrength);
        return most is null || sessions <= figures.Number(most)
            ? new Fine(Place.Of(week))
            : new Breach(Place.Of(week), week.Matches.Length == 1 ? "many-one" : "many-two", Severity.Caution, sessions, figures.Number(most))
            {
                Numbers = [sessions, week.Matches.Length, figures.Number(most)],
                Figure = most.Name,
                Remedy = [.. plan.Ease([week], QualityKind.MaximumStrength, (Emphasis)(int)Math.Min(figures.Number(most), (int)Emphasis.Focus))],
            };
    }
}
