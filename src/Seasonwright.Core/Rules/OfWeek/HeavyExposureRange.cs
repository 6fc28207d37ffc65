using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Working sets with %1RM (or repetitions in reserve) per main pattern; block emphasis.</summary>
internal static class HeavyExposureRange
{
    public static readonly Figure HeavyPct = Figure.Number("heavy_pct", 0.8m, FigureUnit.Share);
    public static readonly Figure MaxGapDays = Figure.Number("max_gap_days", 10, FigureUnit.Days);
    public static readonly Figure VeryHeavyPct = Figure.Number("very_heavy_pct", 0.9m, FigureUnit.Share);
    public static readonly Figure MaxVeryHeavy = Figure.Number("max_very_heavy", 2, FigureUnit.Count);

    public static Rule Rule { get; } = new("heavy-exposure-range")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Caution,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Acsm2009, Sources.McMaster2013],
        Figures = [HeavyPct, MaxGapDays, VeryHeavyPct, MaxVeryHeavy],
        Needs = Needs.Exercises | Needs.Squad,
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        var limits = new Limits(100 * figures.Number(HeavyPct), figures.Number(MaxGapDays), 100 * figures.Number(VeryHeavyPct), figures.Number(MaxVeryHeavy));
        var developing = plan.Weeks.Where(week => week.IsTraining && week.Exposures(QualityKind.MaximumStrength) >= (int)Emphasis.Develop).ToHashSet();
        return plan.Athletes.Looks(athlete => Gaps(plan, athlete, developing, limits).Concat(developing.Where(week => week.HasOurs).Select(week => Many(plan, athlete, week, limits))))
            .Concat(developing.Where(week => !week.HasOurs).Select(week => new TooLittle(Place.Of(week), "missing.sessions")));
    }

    private static IEnumerable<Look> Gaps(Plan plan, AthleteDays athlete, HashSet<PlanWeek> developing, Limits limits) =>
        from gap in DoseGap.All(plan, week => week.HasOurs && developing.Contains(week), athlete.Sessions.Where(session => Reaches(plan, session, limits.Heavy)).Select(session => session.Day))
        select gap.Days <= limits.Gap ? (Look)new Fine(gap.Place)
            // Strength of which nobody said how heavy it is may have been.
            : athlete.Between(gap.First.Days.First, gap.Last.Days.Last).Any(session => SessionContent.Gives(session, plan.Setup, QualityKind.MaximumStrength) && Top(plan, session) is null) ? new TooLittle(gap.Place, "missing.top")
            : new Breach(gap.Place, "none", Severity.Caution, gap.Days, limits.Gap) { Numbers = [gap.Days, limits.Heavy, limits.Gap], Figure = MaxGapDays.Name };

    private static Look Many(Plan plan, AthleteDays athlete, PlanWeek week, Limits limits)
    {
        var strength = athlete.Between(week.Days.First, week.Days.Last).Where(session => SessionContent.Gives(session, plan.Setup, QualityKind.MaximumStrength)).ToList();
        var heaviest = strength.FindAll(session => Top(plan, session) >= limits.VeryHeavy);
        if (heaviest.Count <= limits.MostVeryHeavy) return strength.Exists(session => Top(plan, session) is null) ? new TooLittle(Place.Of(week), "missing.top") : new Fine(Place.Of(week));
        return new Breach(Place.Of(week), "many", Severity.Caution, heaviest.Count, limits.MostVeryHeavy)
        {
            Numbers = [heaviest.Count, limits.VeryHeavy, limits.MostVeryHeavy],
            Figure = MaxVeryHeavy.Name,
            Remedy = [.. heaviest.Where(session => session is { IsOurs: true, IsLocked: false }).Skip((int)limits.MostVeryHeavy).Select(session => new SetSession(Below(session, limits)))],
        };
    }

    private static Session Below(Session session, Limits limits) => session with
    {
        Doses = session.Doses!.Select(dose => dose.Top?.Value >= limits.VeryHeavy ? dose with { Top = new Percent(Math.Max(Dose.LeastTop, (int)Math.Ceiling(limits.VeryHeavy) - 1)) } : dose).ToValueList(),
    };

    private static bool Reaches(Plan plan, Session session, decimal top) =>
        Top(plan, session) is { } known ? known >= top : session.Doses is null && session.Kind is SessionKind.LowerStrength or SessionKind.SmallDose;

    /// <summary>The heaviest set for strength; null where nobody said.</summary>
    private static int? Top(Plan plan, Session session) =>
        session.Doses?.Where(dose => SessionContent.KindOf(dose, plan.Setup) == QualityKind.MaximumStrength).Max(dose => dose.Top?.Value);

    private readonly record struct Limits(decimal Heavy, decimal Gap, decimal VeryHeavy, decimal MostVeryHeavy);
}
