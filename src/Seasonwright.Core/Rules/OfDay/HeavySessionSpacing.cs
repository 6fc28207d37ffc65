using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Start times of heavy_lower sessions and of maximal sprint / high-volume jump sessions.</summary>
internal static class HeavySessionSpacing
{
    public static readonly Figure MinH = Figure.Number("min_h", 48, FigureUnit.Hours);
    public static readonly Figure HardH = Figure.Number("hard_h", 24, FigureUnit.Hours);
    public static readonly Figure BestH = Figure.Number("best_h", 72, FigureUnit.Hours);
    public static readonly Figure SprintMinH = Figure.Number("sprint_min_h", 48, FigureUnit.Hours);

    public static Rule Rule { get; } = new("heavy-session-spacing")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.Confirmed,
        Sources = [Sources.Thomas2018, Sources.FullBodyRecovery, Sources.Helland2020],
        Figures = [MinH, HardH, BestH, SprintMinH],
        Rising = [[HardH, MinH, BestH]],
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        var limits = Limits.Of(figures);
        return plan.Athletes.Looks(athlete => BetterSession.Mended(plan, athlete.Sessions, session => Judge(plan, athlete, session, limits))).Concat(plan.WithoutSessions);
    }

    internal static Func<Session, bool> Against(Plan plan, Figures figures)
    {
        var limits = Limits.Of(figures);
        return session => plan.Athletes.For(session).Any(athlete => Judge(plan, athlete, session, limits) is Breach || After(plan, athlete, session, limits).Any(later => Between(plan, session, later, limits) is not null));
    }

    /// <summary>A session against those before it; null for one that is neither heavy nor of sprints.</summary>
    private static Look? Judge(Plan plan, AthleteDays athlete, Session session, Limits limits)
    {
        if (!SessionUse.IsHeavy(session, plan.Setup) && !SessionContent.IsSprint(session, plan.Setup)) return null;
        Breach? worst = null;
        foreach (var other in athlete.Between(session.Day.AddDays(-limits.Days), session.Day))
            if (other.Id != session.Id && Moment(other).CompareTo(Moment(session)) < 0 && Between(plan, other, session, limits) is { } found && !(found.Beyond <= worst?.Beyond)) worst = found;
        return worst is null ? new Fine(Place.Of(plan, session)) : worst;
    }

    private static IEnumerable<Session> After(Plan plan, AthleteDays athlete, Session session, Limits limits) =>
        athlete.Between(session.Day, session.Day.AddDays(limits.Days)).Where(other => other.Id != session.Id && Moment(other).CompareTo(Moment(session)) > 0 && plan.WeekOf(other.Day) is not null);

    private static (DateOnly, TimeOnly, string) Moment(Session session) => (session.Day, session.Begins, session.Id.Text);

    /// <summary>What a pair that is too close is told as; null for any other. Sprints may come before heavy work: both hard on one day is an accepted way.</summary>
    private static Breach? Between(Plan plan, Session first, Session second, Limits limits)
    {
        var isSprint = SessionContent.IsSprint(second, plan.Setup);
        var (code, least) = SessionUse.IsHeavy(first, plan.Setup)
            ? SessionUse.IsHeavy(second, plan.Setup) ? ("heavy", limits.Least) : isSprint ? ("heavy-sprint", limits.Sprint) : default
            : isSprint && SessionContent.IsSprint(first, plan.Setup) ? ("sprint", limits.Sprint) : default;
        if (code is null || HoursApart.Of(first, second) is var hours && hours.Count >= Math.Max(least, code == "heavy-sprint" ? 0 : limits.Hard)) return null;
        var isHard = code != "heavy-sprint" && hours.Count < limits.Hard;
        var figure = isHard ? HardH : code == "heavy" ? MinH : SprintMinH;
        var limit = isHard ? limits.Hard : least;
        return new Breach(Place.Of(plan, second), code, isHard ? Severity.Warning : Severity.Caution, hours.Count, limit)
        {
            Numbers = [new NamedSession(second), hours, first.Day, Math.Max(least, limit), limits.Best],
            Figure = figure.Name,
            Beyond = Math.Max(least, limit) - hours.Count,
        };
    }

    private readonly record struct Limits(decimal Least, decimal Hard, decimal Sprint, decimal Best)
    {
        /// <summary>So far back a pair may lie.</summary>
        public int Days => (int)Math.Ceiling(Math.Max(Least, Math.Max(Hard, Sprint)) / 24) + 1;

        public static Limits Of(Figures figures) => new(figures.Number(MinH), figures.Number(HardH), figures.Number(SprintMinH), figures.Number(BestH));
    }
}
