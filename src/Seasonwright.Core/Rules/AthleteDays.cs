using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules;

/// <summary>The days of a season as one athlete has them: the sessions for everyone and those of one group, as far as they take place.</summary>
internal sealed class AthleteDays
{
    private static readonly List<Session> None = [];

    private readonly DaySpan season;
    private readonly List<Session>[] days;
    private readonly GroupId? group;

    /// <param name="group">Whose; null for an athlete of no group.</param>
    /// <param name="sessions">Those that take place, in order.</param>
    public AthleteDays(DaySpan season, GroupLine? group, IEnumerable<Session> sessions)
    {
        (this.season, this.group, Whose) = (season, group?.Id, group?.Name);
        Sessions = [.. sessions.Where(Has)];
        days = new List<Session>[season.Length];
        foreach (var session in Sessions) (days[IndexOf(session.Day)] ??= []).Add(session);
    }

    /// <summary>The group's name; null for an athlete of no group.</summary>
    public string? Whose { get; }

    /// <summary>By day and start.</summary>
    public IReadOnlyList<Session> Sessions { get; }

    public bool Has(Session session) => session.Groups is null || group is { } one && session.IsFor(one);

    public List<Session> On(DateOnly day) => season.Contains(day) ? days[IndexOf(day)] ?? None : None;

    /// <summary>Sessions from one day to another, both inside.</summary>
    public IEnumerable<Session> Between(DateOnly first, DateOnly last)
    {
        var end = Math.Min(IndexOf(last), days.Length - 1);
        for (var at = Math.Max(0, IndexOf(first)); at <= end; at++)
        {
            if (days[at] is not { } there) continue;
            foreach (var session in there) yield return session;
        }
    }

    /// <summary>The day's load in AU, with one session laid on its day instead of where it lies.</summary>
    public int LoadOn(DateOnly day, Session? instead = null)
    {
        var sum = instead?.Day == day ? instead.Load.Au : 0;
        foreach (var session in On(day))
            if (session.Id != instead?.Id) sum += session.Load.Au;
        return sum;
    }

    private int IndexOf(DateOnly day) => day.DayNumber - season.First.DayNumber;
}
