using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>What a week back may hold at most.</summary>
/// <param name="Tenths">Tenths of a point, before the margin.</param>
/// <param name="Margin">Points beside a match that are always within.</param>
/// <param name="IsOfLevel">A share of the level reached before, not of the normal hard week.</param>
/// <param name="Variant">First or second week after a long absence, or the one after a single week off.</param>
internal readonly record struct Ceiling(int Tenths, int Margin, bool IsOfLevel, Variant Variant)
{
    /// <summary>Null for a week that is none of the first ones back.</summary>
    public static Ceiling? Of(Limits limits, WeekFacts facts, Stand from, PhaseKind phase)
    {
        var (long_, off) = limits.MatchMargins;
        if (facts.Week.IsOff || phase == PhaseKind.Transition) return null;
        if (from.Mode == Mode.Transition) return new(10 * limits.ReturnPoints.First, long_, false, Variant.First);
        if (facts.HasTransition && facts.IsPreparation && phase == PhaseKind.GeneralPreparation && from.Phase == phase && from.WeeksIn == 1) return new(10 * limits.ReturnPoints.Second, long_, false, Variant.Second);
        if (facts.Back.Since < 2)
        {
            var isFirst = facts.Back.Since == 0;
            var variant = isFirst ? Variant.First : Variant.Second;
            return facts.Back.IsStart
                ? new(10 * (isFirst ? limits.ReturnPoints.First : limits.ReturnPoints.Second), long_, false, variant)
                : new(from.Reached * (isFirst ? limits.ReturnShares.First : limits.ReturnShares.Second) / 100, long_, true, variant);
        }
        return facts.Week.DaysOff > 0 && from.Mode != Mode.Start ? new(from.Reached * limits.WeekOffShare / 100, off, true, Variant.WeekOff) : null;
    }

    /// <summary>Tenths of a point that the week may hold with the matches it has.</summary>
    public int With(PlannedWeek week) => week.Matches.Count > 0 ? Math.Max(Tenths, 10 * (week.MatchPoints + Margin)) : Tenths;
}
