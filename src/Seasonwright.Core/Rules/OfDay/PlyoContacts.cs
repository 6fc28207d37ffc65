using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Jump contacts per session; athlete level; strength sign-off; sessions per week.</summary>
internal static class PlyoContacts
{
    public static readonly Figure LimitBeginner = Figure.Number("limit.beginner", 100, FigureUnit.Count);
    public static readonly Figure LimitIntermediate = Figure.Number("limit.intermediate", 120, FigureUnit.Count);
    public static readonly Figure LimitAdvanced = Figure.Number("limit.advanced", 140, FigureUnit.Count);
    public static readonly Figure LowEndBeginner = Figure.Number("low_end.beginner", 80, FigureUnit.Count);
    public static readonly Figure LowEndIntermediate = Figure.Number("low_end.intermediate", 100, FigureUnit.Count);
    public static readonly Figure LowEndAdvanced = Figure.Number("low_end.advanced", 120, FigureUnit.Count);
    public static readonly Figure OverFactor = Figure.Number("over_factor", 1.25m, FigureUnit.Count);
    public static readonly Figure MinGapH = Figure.Number("min_gap_h", 48, FigureUnit.Hours);
    public static readonly Figure MatchWeekFactor = Figure.Number("match_week_factor", 0.6m, FigureUnit.Count);

    public static Rule Rule { get; } = new("plyo-contacts")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Warning,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.NscaPlyometrics, Sources.Thomas2018],
        Figures = [LimitBeginner, LimitIntermediate, LimitAdvanced, LowEndBeginner, LowEndIntermediate, LowEndAdvanced, OverFactor, MinGapH, MatchWeekFactor],
        Needs = Needs.Squad,
        Looks = Looks,
    };

    /// <summary>
    /// What the squad's athletes are used to is not known here: more than the advanced limit is too much for everyone, what a beginner
    /// may do is fine for everyone, and between them nothing can be told.
    /// </summary>
    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        var limits = Limits.Of(figures);
        return plan.Athletes.Looks(athlete => Looks(plan, athlete, limits)).Concat(plan.WithoutSessions);
    }

    private static IEnumerable<Look> Looks(Plan plan, AthleteDays athlete, Limits limits) =>
        from session in athlete.Sessions
        let look = Judge(plan, athlete, session, limits)
        where look is not null
        select look is Breach breach ? breach with { Remedy = Remedy(plan, session, breach, limits) } : look;

    internal static Func<Session, bool> Against(Plan plan, Figures figures)
    {
        var limits = Limits.Of(figures);
        return session => plan.Athletes.For(session).Any(athlete => Judge(plan, athlete, session, limits) is Breach);
    }

    /// <summary>Null for a session without jumps. Those closer together than the gap are counted as one.</summary>
    private static Look? Judge(Plan plan, AthleteDays athlete, Session session, Limits limits)
    {
        if (!SessionContent.IsJumps(session)) return null;
        var place = Place.Of(plan, session);
        if (Contacts(session) is not (> 0 and var own)) return new TooLittle(place, "missing.contacts");
        var factor = IsNearMatch(plan, session) ? limits.MatchWeek : 1;
        var near = athlete.Between(session.Day.AddDays(-limits.Days), session.Day).Where(other => other.Id != session.Id && Contacts(other) > 0
            && HoursApart.Of(other, session).Count is var hours && hours >= 0 && hours < limits.Gap).Sum(Contacts);
        var (least, most) = (factor * limits.Beginner, factor * limits.Advanced);
        if (own > most) return Told("many", own, own > limits.Over * most ? Severity.Warning : Severity.Caution, LimitAdvanced);
        if (near > 0 && own + near > most) return Told("close", own + near, Severity.Warning, LimitAdvanced);
        return own + near <= least ? new Fine(place) : new TooLittle(place, "missing.level");

        Breach Told(string code, int contacts, Severity severity, Figure figure) => new(place, code, severity, contacts, most)
        {
            Numbers = [new NamedSession(session), contacts, most, limits.Gap],
            // Close to matches the limit is only a part of the figure.
            Figure = factor == 1 ? figure.Name : "",
        };
    }

    /// <summary>From MD-2 on, and in weeks of two matches.</summary>
    private static bool IsNearMatch(Plan plan, Session session) =>
        plan.HasMatchOn(session.Day) || plan.HasMatchOn(session.Day.AddDays(1)) || plan.HasMatchOn(session.Day.AddDays(2)) || plan.WeekOf(session.Day)!.Matches.Length > 1;

    private static int Contacts(Session session) => session.Doses?.Sum(dose => dose.Contacts ?? 0) ?? 0;

    /// <summary>Fewer contacts of each kind, where the session is too large in itself; else another day.</summary>
    private static ValueList<SeasonEdit> Remedy(Plan plan, Session session, Breach breach, Limits limits) => breach.Code == "close" ? BetterSession.For(plan, session)
        : !session.IsOurs || session.IsLocked || (int)breach.Limit < 1 ? []
        : [new SetSession(session with { Doses = session.Doses!.Select(dose => dose.Contacts is { } contacts ? dose with { Contacts = Math.Max(1, (int)(contacts * breach.Limit / breach.Value)) } : dose).ToValueList() })];

    private readonly record struct Limits(decimal Beginner, decimal Advanced, decimal Over, decimal Gap, decimal MatchWeek)
    {
        public int Days => (int)Math.Ceiling(Gap / 24) + 1;

        public static Limits Of(Figures figures) =>
            new(figures.Number(LimitBeginner), figures.Number(LimitAdvanced), figures.Number(OverFactor), figures.Number(MinGapH), figures.Number(MatchWeekFactor));
    }
}
