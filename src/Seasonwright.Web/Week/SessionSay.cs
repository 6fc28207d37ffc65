using System.Globalization;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Core;
using Seasonwright.Documents;

namespace Seasonwright.Web.Week;

/// <summary>How the page tells sessions.</summary>
internal static class SessionSay
{
    /// <summary>"17:30 · 90 min · RPE 5.5".</summary>
    public static string Dose(Session session) => string.Join(" · ", new[] { session.Start?.Iso(), Words.Say("week.minutes", session.Minutes.Value), Rpe(session.Rpe.Value), session.IsCancelled ? Words.Say("week.cancelled") : null }.OfType<string>());

    public static string Rpe(decimal rpe) => string.Create(CultureInfo.InvariantCulture, $"RPE\u00a0{rpe:0.#}");

    /// <summary>The groups it is for; null for everyone.</summary>
    public static string? Whom(Session session, Season season) => session.Groups is { } groups ? string.Join(", ", groups.Select(id => NameOf(season, id))) : null;

    public static string NameOf(Season season, GroupId group) => season.Groups.FirstOrDefault(line => line.Id == group)?.Name ?? group.Text;

    /// <summary>Whom the sessions concern that are otherwise.</summary>
    public static string Everyone(Season before, Season now, DaySpan days)
    {
        var changed = before.AllSessions.Concat(now.AllSessions).Where(session => days.Contains(session.Day) && !Equals(before.Session(session.Id), now.Session(session.Id))).ToList();
        return changed.Exists(session => session.Groups is null) ? Words.Say("week.everyone") : string.Join(", ", changed.SelectMany(session => session.Groups!).Distinct().Select(group => NameOf(now, group)));
    }
}
