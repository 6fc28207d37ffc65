using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules.OfSeason;

/// <summary>Transition block dates; sessions in it with intent cond_high, cond_low or strength.</summary>
internal static class TransitionWithoutUpkeep
{
    public static readonly Figure MaxIdleDays = Figure.Number("max_idle_days", 14, FigureUnit.Days);
    public static readonly Figure SuggestCondPerWeek = Figure.Number("suggest_cond_per_week", 2, FigureUnit.Count);
    public static readonly Figure SuggestStrengthPerWeek = Figure.Number("suggest_strength_per_week", 1, FigureUnit.Count);

    public static Rule Rule { get; } = new("transition-without-upkeep")
    {
        Scope = RuleScope.Season,
        Highest = Severity.Caution,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.Joo2018, Sources.Silva2016, Sources.Spiering2021],
        Figures = [MaxIdleDays, SuggestCondPerWeek, SuggestStrengthPerWeek],
        Needs = Needs.Sessions,
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        foreach (var run in plan.Runs(week => week.IsInTransition))
        {
            if (!plan.HasEmphasis)
            {
                yield return new TooLittle(Place.Of(run[0], run[^1]), "missing.emphasis");
                continue;
            }
            var longest = plan.Runs(week => run.Contains(week) && !HasUpkeep(week)).MaxBy(idle => idle.Count) ?? [];
            var days = longest.Sum(week => week.Days.Length);
            if (days <= figures.Number(MaxIdleDays)) yield return new Fine(Place.Of(run[0], run[^1]));
            else
            {
                // The first free days stay free.
                var upkeep = longest.Skip((int)(figures.Number(MaxIdleDays) / 7)).ToList();
                yield return new Breach(Place.Of(longest[0], longest[^1]), "idle", Severity.Caution, days, figures.Number(MaxIdleDays))
                {
                    Numbers = [days, figures.Number(MaxIdleDays), figures.Number(SuggestCondPerWeek), figures.Number(SuggestStrengthPerWeek)],
                    Figure = MaxIdleDays.Name,
                    Remedy = [.. plan.Emphasise(upkeep, QualityKind.AerobicConditioning, figures.Number(SuggestCondPerWeek)), .. plan.Emphasise(upkeep, QualityKind.MaximumStrength, figures.Number(SuggestStrengthPerWeek))],
                };
            }
        }
    }

    private static bool HasUpkeep(PlanWeek week) =>
        week.Exposures(QualityKind.AerobicConditioning) + week.Exposures(QualityKind.HighIntensityConditioning)
        + week.Exposures(QualityKind.MaximumStrength) + week.Exposures(QualityKind.Hypertrophy) > 0;
}
