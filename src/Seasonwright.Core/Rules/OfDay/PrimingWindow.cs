using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Sessions with intent priming; match start; sets, %1RM, minutes, RPE.</summary>
internal static class PrimingWindow
{
    public static readonly Figure MinH = Figure.Number("min_h", 6, FigureUnit.Hours);
    public static readonly Figure MaxH = Figure.Number("max_h", 33, FigureUnit.Hours);
    public static readonly Figure MaxSets = Figure.Number("max_sets", 6, FigureUnit.Count);
    public static readonly Figure MaxMinutes = Figure.Number("max_minutes", 30, FigureUnit.Minutes);
    public static readonly Figure MaxRpe = Figure.Number("max_rpe", 5, FigureUnit.Rpe);

    public static Rule Rule { get; } = new("priming-window")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Caution,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Harrison2019, Sources.Holmberg2022],
        Figures = [MinH, MaxH, MaxSets, MaxMinutes, MaxRpe],
        Rising = [[MinH, MaxH]],
        Looks = Looks,
    };

    /// <summary>So many days before a match an activation may be meant for it; one farther away is not. Common practice, no source.</summary>
    private const int MostDays = 3;

    private static IEnumerable<Look> Looks(Plan plan, Figures figures) =>
        plan.Sessions.Select(session => Judge(plan, session, figures)).OfType<Look>().Concat(plan.WithoutSessions);

    internal static Func<Session, bool> Against(Plan plan, Figures figures) => session => Judge(plan, session, figures) is Breach;

    /// <summary>Null for a session that primes for no match.</summary>
    private static Look? Judge(Plan plan, Session session, Figures figures)
    {
        if (session.Kind != SessionKind.Activation || plan.NextMatch(session) is not { } match || match.Day!.Value.DayNumber - session.Day.DayNumber > MostDays) return null;
        var place = Place.Of(plan, session);
        if (match.Day == session.Day && match.KickOff is null) return new TooLittle(place, "missing.kick-off");
        var hours = HoursApart.Before(session, match, session.Minutes.Value);
        var (sets, minutes, rpe) = (SessionContent.HeavySets(session), session.Minutes.Value, session.Rpe.Value);
        if (Judge(hours.Count, sets, minutes, rpe, figures) is not { } severity) return new Fine(place);
        var isSoon = hours.Count < figures.Number(MinH);
        var (code, value, figure) = isSoon || hours.Count > figures.Number(MaxH) ? (isSoon ? "late" : "early", hours.Count, isSoon ? MinH : MaxH)
            : sets > figures.Number(MaxSets) ? ("sets", sets, MaxSets)
            : minutes > figures.Number(MaxMinutes) ? ("long", minutes, MaxMinutes) : ("hard", rpe, MaxRpe);
        return new Breach(place, code, severity, value, figures.Number(figure))
        {
            Numbers = [new NamedSession(session), code is "late" or "early" ? hours : value, match.Day, figures.Number(figure)],
            Figure = figure.Name,
            Whose = plan.NamesOf(session.Groups),
            Remedy = Remedy(session, match, code, figures),
        };
    }

    /// <summary>As small as priming is, and on the day before the match where it lies outside the window.</summary>
    private static ValueList<SeasonEdit> Remedy(Session session, Match match, string code, Figures figures)
    {
        if (session.IsLocked) return [];
        var small = session with
        {
            Minutes = new Minutes(Math.Clamp((int)figures.Number(MaxMinutes), Session.LeastMinutes, session.Minutes.Value)),
            Rpe = figures.Number(MaxRpe) is var most && session.Rpe.Value > most ? new Rpe(Math.Floor(2 * most) / 2) : session.Rpe,
            Doses = code == "sets" ? null : session.Doses,
        };
        if (code is not ("late" or "early")) return [new SetSession(small)];
        return match.Day!.Value.AddDays(-1) is var before && before != session.Day
            && HoursApart.Before(small with { Day = before }, match, small.Minutes.Value).Count is var hours && hours >= figures.Number(MinH) && hours <= figures.Number(MaxH)
            ? [new SetSession(small with { Day = before })] : [];
    }

    /// <param name="hours">From the end of the session to the start of the match.</param>
    /// <param name="sets">Heavy ones.</param>
    /// <param name="minutes">Of the session.</param>
    /// <param name="rpe">Intended.</param>
    public static Severity? Judge(decimal hours, int sets, int minutes, decimal rpe, Figures figures) =>
        hours < figures.Number(MinH) || hours > figures.Number(MaxH) || sets > figures.Number(MaxSets) || minutes > figures.Number(MaxMinutes) || rpe > figures.Number(MaxRpe)
            ? Severity.Caution : null;
}
