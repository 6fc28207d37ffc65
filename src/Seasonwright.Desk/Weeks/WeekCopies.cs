using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Desk.Weeks;

/// <summary>Lays a week out as another was: a typical one, or any week of the season.</summary>
public static class WeekCopies
{
    /// <summary>
    /// What makes a week from today on like another, each session on the same day of the week. What is locked stays; what lies there otherwise goes. What
    /// would fall on a match day that had no match, on a day that is closed, that the week does not have or that lies behind, and sessions for groups that this season does not have are left out. A workout that this season does not have is left off.
    /// </summary>
    public static WeekCopy Of(Season season, SeasonWeek week, DateOnly today, TypicalWeek like)
    {
        var groups = season.Groups.Select(group => group.Id).ToHashSet();
        var matchDays = season.AllMatches.Where(match => match is { IsOff: false, Status: not MatchStatus.Conditional, Days: not null }).SelectMany(match => match.Days!.Value.Days().Where(week.Days.Contains)).ToHashSet();
        List<Session> standing = [.. season.SessionsIn(week).Where(session => session.Day >= today)];
        List<(Session From, Session Laid, Session? There)> pairs = [];
        List<Session> leftOut = [];
        foreach (var session in like.Sessions)
        {
            var day = week.Days.Days().FirstOrDefault(day => day.DayOfWeek == session.Day.DayOfWeek);
            var whom = session.Groups?.Where(groups.Contains).ToValueList();
            if (day < today || whom is [] || season.IsClosed(day) || matchDays.Contains(day) && !like.MatchDays.Contains(session.Day))
            {
                leftOut.Add(session);
                continue;
            }
            var there = standing.Find(other => (other.Day, other.Slot, other.Kind) == (day, session.Slot, session.Kind));
            if (there is not null) standing.Remove(there);
            pairs.Add((session, session with { Day = day, Groups = whom, Waves = WavesFor(session, whom), Workout = session.Workout is { } workout && season.Workout(workout) is not null ? workout : null }, there));
        }
        // What goes may come again elsewhere in the week under its id; what stays, or lies behind or in another week, keeps it.
        var goes = standing.Where(session => !session.IsLocked).Select(session => session.Id).ToHashSet();
        var ids = new NaturalIds(season.Id);
        List<SeasonEdit> sets = [];
        foreach (var (from, laid, there) in pairs.Where(pair => pair.There is not { IsLocked: true }))
        {
            var id = there?.Id ?? ids.Session(season, goes.Contains, week.Id.Text, like.Id.Text, from.Id.Text);
            goes.Remove(id);
            if (laid with { Id = id } is var made && made != there) sets.Add(new SetSession(made));
        }
        return new([.. goes.Select(id => new RemoveSession(id)), .. sets], sets.Count, goes.Count, leftOut.ToValueList());
    }

    private static ValueList<Wave>? WavesFor(Session session, ValueList<GroupId>? whom) =>
        session.Waves?.Where(wave => wave.Group is not { } group || whom?.Contains(group) == true).ToValueList() is { Count: > 0 } waves ? waves : null;
}

/// <summary>A week as another was.</summary>
/// <param name="Edits">That make it so; none where it is.</param>
/// <param name="Comes">Sessions that are put or changed.</param>
/// <param name="Goes">Sessions that are removed.</param>
/// <param name="LeftOut">Sessions of the other week that have no place here.</param>
public sealed record WeekCopy(ValueList<SeasonEdit> Edits, int Comes, int Goes, ValueList<Session> LeftOut);
