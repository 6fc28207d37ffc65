using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Sessions meeting heavy_lower (see terms) and their hours before match start.</summary>
internal static class HeavyLowerBeforeMatch
{
    public static readonly Figure MinH = Figure.Number("min_h", 48, FigureUnit.Hours);
    public static readonly Figure CautionH = Figure.Number("caution_h", 72, FigureUnit.Hours);
    public static readonly Figure SmallDoseSets = Figure.Number("small_dose_sets", 6, FigureUnit.Count);

    public static Rule Rule { get; } = new("heavy-lower-before-match")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.Thomas2018, Sources.FullBodyRecovery, Sources.Helland2020],
        Figures = [MinH, CautionH, SmallDoseSets],
        Rising = [[MinH, CautionH]],
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        var limits = Limits.Of(figures);
        return BetterSession.Mended(plan, plan.Sessions, session => Judge(plan, session, limits)).Concat(plan.WithoutSessions);
    }

    internal static Func<Session, bool> Against(Plan plan, Figures figures)
    {
        var limits = Limits.Of(figures);
        return session => Judge(plan, session, limits) is Breach;
    }

    /// <summary>Null for a session that is not heavy for the legs; what primes is judged by <see cref="PrimingWindow"/>.</summary>
    private static Look? Judge(Plan plan, Session session, Limits limits)
    {
        if (session.Kind == SessionKind.Activation || !SessionUse.IsHeavy(session, plan.Setup)) return null;
        var place = Place.Of(plan, session);
        if (plan.NextMatch(session) is not { } match || HoursApart.Before(session, match) is var hours && hours.Count >= limits.Caution) return new Fine(place);
        var isClose = hours.Count < limits.Least;
        if (!isClose)
        {
            if (SessionContent.Sets(session, plan.Setup, QualityKind.MaximumStrength, QualityKind.Hypertrophy) is not { } sets) return new TooLittle(place, "missing.doses");
            if (sets <= limits.SmallDose) return new Fine(place);
        }
        var limit = isClose ? limits.Least : limits.Caution;
        return new Breach(place, isClose ? "close" : "large", isClose ? Severity.Warning : Severity.Caution, hours.Count, limit)
        {
            Numbers = [new NamedSession(session), hours, match.Day, limit, limits.SmallDose],
            Figure = (isClose ? MinH : CautionH).Name,
            Beyond = limits.Caution - hours.Count,
            Whose = plan.NamesOf(session.Groups),
        };
    }

    private readonly record struct Limits(decimal Least, decimal Caution, decimal SmallDose)
    {
        public static Limits Of(Figures figures) => new(figures.Number(MinH), Math.Max(figures.Number(MinH), figures.Number(CautionH)), figures.Number(SmallDoseSets));
    }
}
