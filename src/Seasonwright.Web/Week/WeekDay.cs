using System.Globalization;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Loads;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents;
using Seasonwright.Web.Year;

namespace Seasonwright.Web.Week;

/// <summary>A day of the Week page: what the calendar says of it, and what is done on it.</summary>
/// <param name="Label">"MD-2"; empty without a match near.</param>
/// <param name="Facts">Matches, events and tests.</param>
/// <param name="IsClosed">Nobody trains.</param>
/// <param name="Sessions">By start, cancelled ones included.</param>
internal sealed record WeekDay(DateOnly Day, string Label, IReadOnlyList<(string Look, string Words)> Facts, bool IsClosed, IReadOnlyList<Session> Sessions, DayLoad Load)
{
    /// <summary>Farther from any match a day has no name by it.</summary>
    private const int Farthest = 7;

    /// <param name="whose">Whose load; null for whoever has most.</param>
    public static IReadOnlyList<WeekDay> Of(Season season, Setup setup, SeasonWeek week, GroupId? whose)
    {
        var (matchDays, sessions) = (season.MatchDays, season.SessionsIn(week).ToList());
        return [.. DayLoad.Of(season, setup, week, whose).Select(load => new WeekDay(
            load.Day, MatchDay.Of(load.Day, matchDays) is var label && (label.ToNext <= Farthest || label.SinceLast <= Farthest) ? label.Label : "", [.. FactsOf(season, setup, load.Day)],
            season.IsClosed(load.Day), [.. sessions.Where(session => session.Day == load.Day)], load))];
    }

    private static IEnumerable<(string Look, string Words)> FactsOf(Season season, Setup setup, DateOnly day)
    {
        foreach (var match in season.Matches.Where(match => match.Days?.Contains(day) == true && match.Status != MatchStatus.Cancelled))
            yield return (match.Importance == Importance.Key ? "match key" : "match", Match(match, setup.Locale));
        foreach (var item in season.Events.Where(item => item.Days.Contains(day)))
            yield return ("event", string.Join(" · ", new[] { item.Title, item.For, item.Part, item.Training is { Value: not 100 } left ? Words.Say("week.training-left", left.Value) : null }.OfType<string>()));
        foreach (var leg in season.Events.SelectMany(item => item.Legs ?? []).Where(leg => leg.Day == day || leg.ArrivalDay == day)) yield return ("event", Leg(leg, day));
        foreach (var test in season.TestDays.Where(test => test.Day == day))
            yield return ("test", Words.Say("week.test", test.Battery));
        foreach (var line in Collisions(season, day)) yield return ("collides", line);
    }

    /// <summary>What stands in another's way on a day: two sessions at one time for the same people, what tires before a test, or on the day of a match.</summary>
    private static IEnumerable<string> Collisions(Season season, DateOnly day)
    {
        if (season.WeekOf(day) is not { } week) yield break;
        List<Session> sessions = [.. season.SessionsIn(week).Where(session => session.Day == day && !session.IsCancelled)];
        for (var at = 1; at < sessions.Count; at++)
            if (sessions.Take(at).Where(sessions[at].Meets).ToList() is { Count: > 0 } others) yield return Words.Say("week.same-time", Names([.. others, sessions[at]]));
        bool Tires(Session session) => session.Kind is not (SessionKind.Test or SessionKind.Activation or SessionKind.Recovery or SessionKind.Prevention);
        if (sessions.FindLast(session => session.Kind == SessionKind.Test) is { } test && sessions.Where(session => Tires(session) && session.Begins < test.Begins).ToList() is { Count: > 0 } early)
            yield return Words.Say("week.before-test", Names(early));
        if (season.MatchDays.Contains(day) && sessions.Where(Tires).ToList() is { Count: > 0 } tiring) yield return Words.Say("week.before-match", Names(tiring));
    }

    private static string Names(IEnumerable<Session> sessions) => string.Join(", ", sessions.Select(SessionWords.Name));

    /// <summary>"09:15 Harbour Vale → Kalnes 13:40, clock +1 h"; on a day of arrival alone only what arrives.</summary>
    private static string Leg(Leg leg, DateOnly day)
    {
        string?[] way = [leg.Day == day ? leg.Departs?.Iso() : null, leg.From, "→", leg.To, (leg.ArrivalDay ?? leg.Day) == day ? leg.Arrives?.Iso() : null];
        return string.Join(" ", way.Where(part => !string.IsNullOrEmpty(part))) + (leg.ZoneShift is { } shift and not 0 && (leg.ArrivalDay ?? leg.Day) == day ? Words.Say("week.clock-moves", shift.ToString("+0.##;-0.##", CultureInfo.InvariantCulture)) : "");
    }

    private static string Match(Match match, LocaleSettings locale)
    {
        var head = $"{match.KickOff?.Iso()} {Words.Say(match.Venue is { } venue ? $"match.at.{venue}" : "match.at")} {match.Opponent ?? Words.Say("match.unknown")}".Trim();
        return match.Status == MatchStatus.Confirmed ? head : $"{head} · {Words.Say($"status.{match.Status}")}";
    }
}
