using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Strength and endurance sessions on the same day with start and end times; block emphasis.</summary>
internal static class SameDayStrengthEndurance
{
    public static readonly Figure BestH = Figure.Number("best_h", 6, FigureUnit.Hours);
    public static readonly Figure HardH = Figure.Number("hard_h", 3, FigureUnit.Hours);

    public static Rule Rule { get; } = new("same-day-strength-endurance")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.Confirmed,
        Sources = [Sources.Robineau2016, Sources.Schumann2022, Sources.Eddens2018],
        Figures = [BestH, HardH],
        Rising = [[HardH, BestH]],
        Looks = Looks,
    };

    private static readonly QualityKind[] Fast = [QualityKind.Power, QualityKind.Speed];

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        var limits = (Best: figures.Number(BestH), Hard: figures.Number(HardH));
        return plan.Athletes.Looks(athlete => BetterSession.Mended(plan, athlete.Sessions, session => Judge(plan, athlete, session, limits))).Concat(plan.WithoutSessions);
    }

    internal static Func<Session, bool> Against(Plan plan, Figures figures)
    {
        var limits = (figures.Number(BestH), figures.Number(HardH));
        return session => plan.Athletes.For(session).Any(athlete => Judge(plan, athlete, session, limits) is Breach
            || athlete.On(session.Day).Any(later => later.Id != session.Id && IsPair(session, later) && later.Begins > session.Begins && Between(plan, session, later, limits) is Breach));
    }

    /// <summary>A session against the nearest one of the other kind before it on its day; null where there is none.</summary>
    private static Look? Judge(Plan plan, AthleteDays athlete, Session session, (decimal Best, decimal Hard) limits) =>
        athlete.On(session.Day).LastOrDefault(other => other.Id != session.Id && IsPair(other, session) && (other.Begins, other.Id.Text).CompareTo((session.Begins, session.Id.Text)) < 0) is { } first
            ? Between(plan, first, session, limits) : null;

    private static bool IsPair(Session one, Session other) =>
        SessionContent.IsStrength(one) && SessionContent.IsEndurance(other) || SessionContent.IsEndurance(one) && SessionContent.IsStrength(other);

    private static Look Between(Plan plan, Session first, Session second, (decimal Best, decimal Hard) limits)
    {
        var place = Place.Of(plan, second);
        var gap = HoursApart.Gap(first, second);
        if (gap.Count >= limits.Best) return new Fine(place);
        int Level(params ReadOnlySpan<QualityKind> kinds)
        {
            var level = 0;
            foreach (var kind in kinds) level = Math.Max(level, plan.WeekOf(second.Day)!.Exposures(kind));
            return level;
        }
        var isHard = gap.Count < limits.Hard && Level(Fast) >= (int)Emphasis.Develop;
        var (strength, endurance) = (Level(QualityKind.MaximumStrength, QualityKind.Power, QualityKind.Speed), Level(QualityKind.AerobicConditioning));
        var isBehind = SessionContent.IsEndurance(first) ? strength >= (int)Emphasis.Develop && strength > endurance
            : SessionUse.IsHeavy(first, plan.Setup) && endurance >= (int)Emphasis.Develop && endurance > strength;
        var limit = isHard ? HardH : BestH;
        return new Breach(place, isBehind ? SessionContent.IsEndurance(first) ? "endurance-first" : "strength-first" : "gap", isHard ? Severity.Warning : Severity.Caution, gap.Count, isHard ? limits.Hard : limits.Best)
        {
            Numbers = [new NamedSession(second), gap, limits.Best],
            Figure = limit.Name,
            Beyond = limits.Best - gap.Count,
        };
    }
}
