using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Loads;

/// <summary>A week's target and how it divides: matches are a fact, practices the head coach's, the rest is ours.</summary>
/// <param name="Target">The stored target, or null while none is set.</param>
/// <param name="Match">AU of the matches that are played in this week, on a known day of it or on one of several.</param>
/// <param name="Practice">AU of the practices on the week's days, else of those entered for the week; null where there are neither.</param>
/// <param name="Placed">AU of our sessions on the week's days; null while there are none.</param>
public sealed record WeekLoad(Load? Target, Load Match, Load? Practice, Load? Placed)
{
    /// <param name="group">Whose week; null for the athlete who has the most.</param>
    public static WeekLoad Of(Season season, Setup setup, SeasonWeek week, GroupId? group = null)
    {
        var sessions = AthleteSessions.Of(season, week, group);
        return new(
            season.TargetOf(week.Id),
            season.MatchesIn(week).Where(match => !match.IsOff && match.Days!.Value.Last <= week.Days.Last).Aggregate(Load.Zero, (sum, match) => sum + setup.MatchLoad.Of(match)),
            Sum(sessions.Where(session => !session.IsOurs)) ?? (season.PracticesOf(week.Id) is { } practices ? setup.UsualWeek.Practices.LoadOf(practices) : null),
            Sum(sessions.Where(session => session.IsOurs)));
    }

    /// <summary>Matches, practices and our sessions together; null while the week has none of ours, or its practices are not known.</summary>
    public Load? LaidOut => Placed is { } placed && Practice is { } practice ? Match + practice + placed : null;

    /// <summary>What the target leaves for gym and conditioning, never below 0; null while there is no target or the practices are not known.</summary>
    public Load? Ours => Target is { } target && Practice is { } practice ? new Load(Math.Max(0, target.Au - Match.Au - practice.Au)) : null;

    private static Load? Sum(IEnumerable<Session> sessions) => sessions.Aggregate((Load?)null, (sum, session) => (sum ?? Load.Zero) + session.Load);
}
