using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules;

/// <summary>The days of a season as one athlete has them: the sessions for everyone and those of one group, as far as they take place.</summary>
internal sealed class AthleteDays
{
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

    public IReadOnlyList<Session> On(DateOnly day) => season.Contains(day) ? days[IndexOf(day)] ?? [] : [];

    /// <summary>Sessions from one day to another, both inside.</summary>
    public IEnumerable<Session> Between(DateOnly first, DateOnly last)
    {
        for (var day = first; day <= last; day = day.AddDays(1))
            foreach (var session in On(day))
                yield return session;
    }

    /// <summary>The day's load in AU, with one session laid on its day instead of where it lies.</summary>
    public int LoadOn(DateOnly day, Session? instead = null) =>
        On(day).Where(session => session.Id != instead?.Id).Sum(session => session.Load.Au) + (instead?.Day == day ? instead.Load.Au : 0);

    private int IndexOf(DateOnly day) => day.DayNumber - season.First.DayNumber;
}
