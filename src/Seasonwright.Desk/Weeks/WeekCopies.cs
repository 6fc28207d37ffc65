using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Desk.Weeks;

/// <summary>Lays a week out as another was: a typical one, or any week of the season.</summary>
public static class WeekCopies
{
    /// <summary>
    /// What makes a week from today on like another, each session on the same day of the week. What is locked stays; what lies there otherwise goes. A practice on a
    /// match day that had no match, anything on a day that is closed, that the week does not have or that lies behind, and sessions for groups that this season does not have are left out.
    /// </summary>
    public static WeekCopy Of(Season season, SeasonWeek week, DateOnly today, TypicalWeek like)
    {
        var groups = season.Groups.Select(group => group.Id).ToHashSet();
        var matchDays = season.MatchDays.Where(week.Days.Contains).ToHashSet();
        List<Session> standing = [.. season.SessionsIn(week).Where(session => session.Day >= today)];
        List<SeasonEdit> sets = [];
        List<Session> leftOut = [];
        foreach (var session in like.Sessions)
        {
            var day = week.Days.Days().FirstOrDefault(day => day.DayOfWeek == session.Day.DayOfWeek);
            var whom = session.Groups?.Where(groups.Contains).ToValueList();
            if (day < today || whom is [] || season.IsClosed(day) || !session.IsOurs && matchDays.Contains(day) && !like.MatchDays.Contains(session.Day))
            {
                leftOut.Add(session);
                continue;
            }
            var laid = session with { Day = day, Groups = whom, Waves = WavesFor(session, whom) };
            var there = standing.Find(other => (other.Day, other.Slot, other.Kind) == (day, session.Slot, session.Kind));
            if (there is not null) standing.Remove(there);
            if (there is { IsLocked: true }) continue;
            laid = laid with { Id = there?.Id ?? FreeId(season, week, like, session) };
            if (laid != there) sets.Add(new SetSession(laid));
        }
        var removes = standing.Where(session => !session.IsLocked).Select(session => new RemoveSession(session.Id)).ToList();
        return new([.. removes, .. sets], sets.Count, removes.Count, leftOut.ToValueList());
    }

    private static ValueList<Wave>? WavesFor(Session session, ValueList<GroupId>? whom) =>
        session.Waves?.Where(wave => wave.Group is not { } group || whom?.Contains(group) == true).ToValueList() is { Count: > 0 } waves ? waves : null;

    /// <summary>The same week laid out by the same other one has the same ids, so that calendars know its sessions again; one that was moved to another week keeps its own.</summary>
    private static SessionId FreeId(Season season, SeasonWeek week, TypicalWeek like, Session session)
    {
        var ids = new NaturalIds(season.Id);
        for (var number = 0; ; number++)
        {
            var id = new SessionId(ids.Of("session", week.Id.Text, like.Id.Text, session.Id.Text, number.ToString(CultureInfo.InvariantCulture)));
            if (season.Session(id) is not { } known || week.Days.Contains(known.Day)) return id;
        }
    }
}

/// <summary>A week as another was.</summary>
/// <param name="Edits">That make it so; none where it is.</param>
/// <param name="Comes">Sessions that are put or changed.</param>
/// <param name="Goes">Sessions that are removed.</param>
/// <param name="LeftOut">Sessions of the other week that have no place here.</param>
public sealed record WeekCopy(ValueList<SeasonEdit> Edits, int Comes, int Goes, ValueList<Session> LeftOut);
