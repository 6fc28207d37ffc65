using System.Collections.Immutable;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Loads;

/// <summary>The sessions of a week that one athlete does: those for everyone, and those of the athlete's group.</summary>
public static class AthleteSessions
{
    /// <param name="group">Whose; null for the athlete who has the most: of the groups named in the week the one with the largest load.</param>
    /// <returns>By day and start, cancelled ones included.</returns>
    public static ImmutableArray<Session> Of(Season season, SeasonWeek week, GroupId? group = null)
    {
        var whose = group ?? WhoHasMost(season, week);
        return [.. season.SessionsIn(week).Where(session => session.Groups is null || whose is { } one && session.IsFor(one))];
    }

    /// <summary>Of the groups named in a week the one with the largest load; null where none is named.</summary>
    public static GroupId? WhoHasMost(Season season, SeasonWeek week)
    {
        var all = season.SessionsIn(week).ToImmutableArray();
        return all.SelectMany(session => session.Groups ?? []).Distinct()
            .OrderByDescending(one => all.Where(session => session.IsFor(one)).Sum(session => session.Load.Au)).ThenBy(one => one.Text, StringComparer.Ordinal).Cast<GroupId?>().FirstOrDefault();
    }
}
