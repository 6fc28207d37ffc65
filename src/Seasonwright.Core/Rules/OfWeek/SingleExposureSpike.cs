using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Per session: running distance, sprint metres, jump contacts, contact minutes; athlete's own 30-day maximum.</summary>
internal static class SingleExposureSpike
{
    public static readonly Figure CautionUp = Figure.Number("caution_up", 0.1m, FigureUnit.Share);
    public static readonly Figure WarningUp = Figure.Number("warning_up", 1, FigureUnit.Share);
    public static readonly Figure WindowDays = Figure.Number("window_days", 30, FigureUnit.Days);
    public static readonly Figure EnabledFor = Figure.Words("enabled_for", "run_distance");
    public static readonly Figure OptionalFor = Figure.Words("optional_for", "sprint_metres", "jump_contacts", "contact_minutes");

    public static Rule Rule { get; } = new("single-exposure-spike")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.Confirmed,
        Sources = [Sources.Frandsen2025],
        Figures = [CautionUp, WarningUp, WindowDays, EnabledFor, OptionalFor],
        Rising = [[CautionUp, WarningUp]],
        Needs = Needs.Reports,
        Looks = Looks,
    };

    private const int LeastSessions = 6;

    /// <summary>What sessions say of themselves: metres sprinted and jump contacts. Distance run and contact are not in them.</summary>
    private static readonly (string Name, string Code, Func<Dose, int?> Of, Func<Dose, int, Dose> With)[] Counted =
    [
        ("sprint_metres", "metres", dose => dose.Metres, (dose, metres) => dose with { Metres = metres }),
        ("jump_contacts", "contacts", dose => dose.Contacts, (dose, contacts) => dose with { Contacts = contacts }),
    ];

    private static IEnumerable<Look> Looks(Plan plan, Figures figures) =>
        from counted in Counted
        where figures.Holds(EnabledFor, counted.Name)
        from look in plan.Athletes.Looks(athlete => athlete.Sessions.Where(session => Sum(session, counted.Of) > 0).Select(session => Judge(plan, athlete, session, counted.Code, counted.Of, counted.With, figures)))
        select look;

    private static int Sum(Session session, Func<Dose, int?> of) => session.Doses?.Sum(dose => of(dose) ?? 0) ?? 0;

    private static Look Judge(Plan plan, AthleteDays athlete, Session session, string code, Func<Dose, int?> of, Func<Dose, int, Dose> with, Figures figures)
    {
        var (place, window) = (Place.Of(plan, session), figures.Number(WindowDays));
        var before = athlete.Between(session.Day.AddDays(-(int)window), session.Day.AddDays(-1)).Select(other => Sum(other, of)).Where(sum => sum > 0).ToList();
        if (before.Count < LeastSessions) return new TooLittle(place, "missing.exposures");
        var (now, most) = (Sum(session, of), before.Max());
        var up = ((decimal)now / most - 1).AsShown();
        if (up <= figures.Number(CautionUp)) return new Fine(place);
        var limit = up > figures.Number(WarningUp) ? WarningUp : CautionUp;
        return new Breach(place, code, limit == WarningUp ? Severity.Warning : Severity.Caution, up, figures.Number(limit))
        {
            Numbers = [new NamedSession(session), now, up.AsPercent(), window, figures.Number(limit).AsPercent()],
            Figure = limit.Name,
            Beyond = up - figures.Number(CautionUp),
            Remedy = session.IsOurs && !session.IsLocked
                ? [new SetSession(session with { Doses = session.Doses!.Select(dose => of(dose) is { } own ? with(dose, Math.Max(1, own * most / now)) : dose).ToValueList() })] : [],
        };
    }
}
