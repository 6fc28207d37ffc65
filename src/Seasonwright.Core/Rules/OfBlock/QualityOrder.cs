using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules.OfBlock;

/// <summary>Ordered blocks with emphasis per quality (none, maintain, develop, peak).</summary>
internal static class QualityOrder
{
    public static readonly Figure MinStrengthWeeks = Figure.Number("min_strength_weeks", 3, FigureUnit.Weeks);
    public static readonly Figure MinBaseWeeks = Figure.Number("min_base_weeks", 2, FigureUnit.Weeks);
    public static readonly Figure LayoffDays = Figure.Number("layoff_days", 21, FigureUnit.Days);
    public static readonly Figure NoviceYears = Figure.Number("novice_years", 1, FigureUnit.Count);

    public static Rule Rule { get; } = new("quality-order")
    {
        Scope = RuleScope.Block,
        Highest = Severity.Caution,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Hartmann2015, Sources.Bartolomei2014],
        Figures = [MinStrengthWeeks, MinBaseWeeks, LayoffDays, NoviceYears],
        Needs = Needs.Squad,
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        foreach (var run in plan.Runs(week => week.IsPreparation))
        {
            if (!run.Exists(week => week.HasEmphasis))
            {
                yield return new TooLittle(Place.Of(run[0], run[^1]), "missing.emphasis");
                continue;
            }
            yield return Judge(run, QualityKind.Power, QualityKind.MaximumStrength, figures.Number(MinStrengthWeeks), "power");
            if (plan.DaysAwayBefore(run[0]) >= figures.Number(LayoffDays)) yield return Judge(run, QualityKind.MaximumStrength, QualityKind.Hypertrophy, figures.Number(MinBaseWeeks), "strength");
        }
    }

    /// <summary>Whether enough weeks develop the base before the first that develops what builds on it.</summary>
    private static Look Judge(List<PlanWeek> run, QualityKind quality, QualityKind ground, decimal least, string code)
    {
        var first = run.Find(week => week.Exposures(quality) >= (int)Emphasis.Develop);
        if (first is null) return new Fine(Place.Of(run[0], run[^1]));
        var weeks = run.TakeWhile(week => week != first).Count(week => week.Exposures(ground) >= (int)Emphasis.Develop);
        return weeks >= least
            ? new Fine(Place.Of(run[0], first))
            : new Breach(Place.Of(first), code, Severity.Caution, weeks, least)
            {
                Numbers = [weeks, least],
                Figure = (quality == QualityKind.Power ? MinStrengthWeeks : MinBaseWeeks).Name,
            };
    }
}
