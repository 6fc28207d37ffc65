using System.Collections.Immutable;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Loads;

/// <summary>What one day of a week loads, by owner. The days together are the week's load as far as it is known day by day.</summary>
/// <param name="Match">AU of the day's matches; one on several possible days counts on the first of them.</param>
/// <param name="Practice">AU of the day's practices; null where practices are entered for the week and nobody knows for which days, or are not known at all.</param>
/// <param name="Ours">AU of our sessions.</param>
public sealed record DayLoad(DateOnly Day, Load Match, Load? Practice, Load Ours)
{
    /// <summary>The whole day; null while its practices are not known.</summary>
    public Load? Total => Practice is { } practice ? Match + practice + Ours : null;

    /// <summary>Every day of a week.</summary>
    /// <param name="group">Whose days: sessions without groups and matches are everyone's; null for the athlete who has the most.</param>
    public static ImmutableArray<DayLoad> Of(Season season, Setup setup, SeasonWeek week, GroupId? group = null)
    {
        var sessions = AthleteSessions.Of(season, week, group);
        var known = sessions.Any(session => !session.IsOurs) || season.PracticesOf(week.Id) is { Count: 0 };
        return [.. week.Days.Days().Select(day => new DayLoad(
            day,
            Sum(season.MatchesIn(week).Where(match => match.Day == day && !match.IsOff && match.Days!.Value.Last <= week.Days.Last).Select(setup.MatchLoad.Of)),
            known ? Sum(sessions.Where(session => session.Day == day && !session.IsOurs).Select(session => session.Load)) : null,
            Sum(sessions.Where(session => session.Day == day && session.IsOurs).Select(session => session.Load))))];
    }

    private static Load Sum(IEnumerable<Load> loads) => loads.Aggregate(Load.Zero, (sum, load) => sum + load);
}
