using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules.OfBlock;

/// <summary>Last block with max_strength: develop (or high-volume conditioning: develop); first official or decisive match after it.</summary>
internal static class RealisationWindowMissing
{
    public static readonly Figure MinDays = Figure.Number("min_days", 7, FigureUnit.Days);
    public static readonly Figure MaxDays = Figure.Number("max_days", 28, FigureUnit.Days);

    public static Rule Rule { get; } = new("realisation-window-missing")
    {
        Scope = RuleScope.Block,
        Highest = Severity.Caution,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Hartmann2015, Sources.Bosquet2007],
        Figures = [MinDays, MaxDays],
        Looks = Looks,
    };

    /// <summary>
    /// Told from whole weeks: the week that holds most of the days before the match may not develop maximum strength, unless power
    /// or speed is its focus. Which day the last heavy session falls on waits for sessions.
    /// </summary>
    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        foreach (var match in plan.TaperedFor)
        {
            var own = plan.WeekOf(match.Day!.Value)!;
            var place = new Place($"match/{match.Id}", own.Number, own.Number);
            var window = Enumerable.Range(1, (int)figures.Number(MinDays)).Select(before => plan.WeekOf(match.Day.Value.AddDays(-before))).OfType<PlanWeek>()
                .GroupBy(week => week.Number).MaxBy(days => days.Count())?.First();
            if (window is null || !window.HasEmphasis)
            {
                yield return new TooLittle(place, "missing.emphasis");
                continue;
            }
            var isFast = window.Exposures(QualityKind.Power) >= (int)Emphasis.Focus || window.Exposures(QualityKind.Speed) >= (int)Emphasis.Focus;
            if (window.Exposures(QualityKind.MaximumStrength) < (int)Emphasis.Develop || isFast) yield return new Fine(place);
            else
            {
                yield return new Breach(place with { First = window.Number }, "missing", Severity.Caution, 0, figures.Number(MinDays))
                {
                    Numbers = [match.Day, figures.Number(MinDays), window.Number],
                    Remedy = [.. plan.Ease([window], QualityKind.MaximumStrength, Emphasis.Maintain)],
                };
            }
        }
    }
}
