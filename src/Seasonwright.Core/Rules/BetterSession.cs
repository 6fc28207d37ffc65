using System.Collections.Immutable;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules;

/// <summary>
/// What mends a session of ours that a rule is against: the nearest day of its week that no rule of days is against, else the same
/// day made lighter, else the session goes. Practices are the head coach's, and what is locked stays.
/// </summary>
internal static class BetterSession
{
    private const int EasyMinutes = 45;

    private static readonly Rpe Easy = new(4m);

    /// <summary>The rules that are asked, each with what it is against.</summary>
    private static readonly ImmutableArray<(Rule Rule, Func<Plan, Figures, Func<Session, bool>> Against)> Asked =
    [
        (OfDay.HeavyLowerBeforeMatch.Rule, OfDay.HeavyLowerBeforeMatch.Against),
        (OfDay.DayAfterMatchHard.Rule, OfDay.DayAfterMatchHard.Against),
        (OfDay.DayBeforeMatchHeavy.Rule, OfDay.DayBeforeMatchHeavy.Against),
        (OfDay.HeavySessionSpacing.Rule, OfDay.HeavySessionSpacing.Against),
        (OfDay.HardDaysInARow.Rule, OfDay.HardDaysInARow.Against),
        (OfDay.SameDayStrengthEndurance.Rule, OfDay.SameDayStrengthEndurance.Against),
        (OfDay.PlyoContacts.Rule, OfDay.PlyoContacts.Against),
        (OfDay.PrimingWindow.Rule, OfDay.PrimingWindow.Against),
        (OfDay.TravelDayLoad.Rule, OfDay.TravelDayLoad.Against),
        (OfWeek.FullRestDayMissing.Rule, OfWeek.FullRestDayMissing.Against),
    ];

    public static ValueList<SeasonEdit> For(Plan plan, Session session)
    {
        // Several rules may be against one session.
        if (!plan.Better.TryGetValue(session.Id, out var better)) plan.Better.Add(session.Id, better = Of(plan, session, Moved(plan, session).Concat(Lighter(session))));
        return better;
    }

    /// <summary>What a rule says of each session, its breaches with what mends them.</summary>
    public static IEnumerable<Look> Mended(Plan plan, IEnumerable<Session> sessions, Func<Session, Look?> judge) =>
        from session in sessions
        let look = judge(session)
        where look is not null
        select look is Breach breach ? breach with { Remedy = For(plan, session) } : look;

    /// <summary>Its day without it.</summary>
    public static ValueList<SeasonEdit> Away(Plan plan, Session session) => Of(plan, session, Moved(plan, session));

    /// <summary>The rules that the team has on, ready to be asked of one session after another.</summary>
    public static ImmutableArray<Func<Session, bool>> Rules(Plan plan) =>
        [.. Asked.Where(asked => asked.Rule.IsOn(plan.Setup)).Select(asked => asked.Against(plan, new Figures(asked.Rule.Id, plan.Setup)))];

    private static ValueList<SeasonEdit> Of(Plan plan, Session session, IEnumerable<Session> better)
    {
        if (!session.IsOurs || session.IsLocked) return [];
        foreach (var other in better)
            if (!IsAgainst(plan, other)) return [new SetSession(other)];
        return [new RemoveSession(session.Id)];
    }

    private static bool IsAgainst(Plan plan, Session session)
    {
        foreach (var isAgainst in plan.RulesOfDays)
            if (isAgainst(session)) return true;
        return false;
    }

    /// <summary>On the other days of its week, the nearest first and of two the earlier.</summary>
    private static IEnumerable<Session> Moved(Plan plan, Session session)
    {
        var days = plan.WeekOf(session.Day)!.Days;
        for (var away = 1; away < days.Length; away++)
        {
            if (CanMove(plan, session, session.Day.AddDays(-away), days)) yield return session with { Day = session.Day.AddDays(-away) };
            if (CanMove(plan, session, session.Day.AddDays(away), days)) yield return session with { Day = session.Day.AddDays(away) };
        }
    }

    private static bool CanMove(Plan plan, Session session, DateOnly day, DaySpan days) => days.Contains(day) && !plan.HasMatchOn(day)
        && Array.TrueForAll(plan.Athletes.For(session), athlete => athlete.On(day).Count < Session.MostADay || athlete.On(day).Count(other => other.IsOurs) < Session.MostADay);

    /// <summary>A small dose instead.</summary>
    public static ValueList<SeasonEdit> Small(Session session) => session.IsOurs && !session.IsLocked ? [new SetSession(Dosed(session))] : [];

    private static Session Dosed(Session session)
    {
        var small = SessionUse.Of(SessionKind.SmallDose);
        return session with { Kind = SessionKind.SmallDose, Name = null, Minutes = small.Minutes, Rpe = small.Rpe, Doses = null };
    }

    private static IEnumerable<Session> Lighter(Session session)
    {
        if (SessionUse.Of(session.Kind) is { IsHeavyLower: true }) yield return Dosed(session);
        else if (session.Rpe.Value > Easy.Value || session.Minutes.Value > EasyMinutes)
            yield return session with { Rpe = session.Rpe.Value > Easy.Value ? Easy : session.Rpe, Minutes = new Minutes(Math.Min(session.Minutes.Value, EasyMinutes)) };
    }
}
