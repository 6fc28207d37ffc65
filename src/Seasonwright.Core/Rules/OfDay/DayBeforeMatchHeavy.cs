using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Planned load and intent on the day before a match; other training-day loads in the same week.</summary>
internal static class DayBeforeMatchHeavy
{
    public static readonly Figure MaxShare = Figure.Number("max_share", 0.6m, FigureUnit.Share);
    public static readonly Figure MaxRpe = Figure.Number("max_rpe", 4, FigureUnit.Rpe);
    public static readonly Figure MaxMinutes = Figure.Number("max_minutes", 60, FigureUnit.Minutes);

    public static Rule Rule { get; } = new("day-before-match-heavy")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.WeeklySoccerLoad, Sources.OlivaLozano2022],
        Figures = [MaxShare, MaxRpe, MaxMinutes],
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        var limits = Limits.Of(figures);
        return plan.Athletes.Looks(athlete => plan.Matches.Select(match => match.Day!.Value).Distinct().SelectMany(day => OnDay(plan, athlete, day.AddDays(-1), limits)));
    }

    internal static Func<Session, bool> Against(Plan plan, Figures figures)
    {
        var limits = Limits.Of(figures);
        return session => IsBefore(plan, session.Day) && (OfSession(plan, session, limits) is not null
            || plan.Athletes.For(session).Any(athlete => Share(plan, athlete, session.Day, session) is var (own, least, most) && (own > limits.Share * most || own > least)));
    }

    private static bool IsBefore(Plan plan, DateOnly day) => plan.HasMatchOn(day.AddDays(1)) && !plan.HasMatchOn(day);

    /// <summary>What is hard or long in itself is told by its session, and only else what the day is beside the others.</summary>
    private static IEnumerable<Look> OnDay(Plan plan, AthleteDays athlete, DateOnly day, Limits limits)
    {
        if (plan.WeekOf(day) is not { } week || plan.HasMatchOn(day)) yield break;
        var isTold = false;
        foreach (var session in athlete.On(day))
        {
            if (OfSession(plan, session, limits) is not { } found) continue;
            isTold = true;
            yield return found with { Remedy = BetterSession.For(plan, session) };
        }
        if (isTold) yield break;
        var place = Place.Of(plan, day, day);
        if (!week.IsLaidOut) yield return new TooLittle(place, week.HasOurs ? "missing.practices" : "missing.sessions");
        else if (Share(plan, athlete, day) is not var (own, least, most) || own <= least && own <= limits.Share * most) yield return new Fine(place);
        else
        {
            var isHigh = own > limits.Share * most;
            yield return new Breach(place, isHigh ? "share" : "lightest", isHigh ? Severity.Warning : Severity.Caution, isHigh ? ((decimal)own / most).AsShown() : own, isHigh ? limits.Share : least)
            {
                Numbers = [day, isHigh ? ((decimal)own / most).AsPercent() : own, isHigh ? limits.Share.AsPercent() : least],
                Figure = isHigh ? MaxShare.Name : "",
                Remedy = [.. athlete.On(day).Where(session => session.IsOurs && !session.IsLocked).OrderByDescending(session => session.Load).Take(1).SelectMany(session => BetterSession.For(plan, session))],
            };
        }
    }

    private static Breach? OfSession(Plan plan, Session session, Limits limits)
    {
        var isHeavy = SessionUse.IsHeavy(session, plan.Setup) || SessionContent.IsHypertrophy(session, plan.Setup) || SessionContent.IsIntervals(session, plan.Setup) || SessionContent.IsTiringTest(session);
        // What primes has a cap of its own.
        var isHard = session.Kind != SessionKind.Activation && session.Rpe.Value > limits.Rpe;
        if (!isHeavy && !isHard && session.Minutes.Value <= limits.Minutes) return null;
        var (code, value, limit, figure) = isHeavy ? ("content", 1, 0, "") : isHard ? ("effort", session.Rpe.Value, limits.Rpe, MaxRpe.Name) : ("long", session.Minutes.Value, limits.Minutes, MaxMinutes.Name);
        return new Breach(Place.Of(plan, session), code, code == "long" ? Severity.Caution : Severity.Warning, value, limit)
        {
            Numbers = [new NamedSession(session), value, limit],
            Figure = figure,
        };
    }

    /// <summary>The day's load beside the least and the most of the week's other training days; null where it is free or there is none beside it.</summary>
    private static (int Own, int Least, int Most)? Share(Plan plan, AthleteDays athlete, DateOnly day, Session? instead = null)
    {
        var own = athlete.LoadOn(day, instead);
        if (own == 0) return null;
        var (least, most) = (int.MaxValue, 0);
        var days = plan.WeekOf(day)!.Days;
        for (var other = days.First; other <= days.Last; other = other.AddDays(1))
        {
            if (other == day || plan.HasMatchOn(other) || athlete.LoadOn(other, instead) is not (> 0 and var load)) continue;
            (least, most) = (Math.Min(least, load), Math.Max(most, load));
        }
        return most == 0 ? null : (own, least, most);
    }

    private readonly record struct Limits(decimal Share, decimal Rpe, decimal Minutes)
    {
        public static Limits Of(Figures figures) => new(figures.Number(MaxShare), figures.Number(MaxRpe), figures.Number(MaxMinutes));
    }
}
