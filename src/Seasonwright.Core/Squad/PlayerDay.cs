using System.Collections.Immutable;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Loads;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Squad;

/// <summary>A player's day in a season: where they are, what becomes of the sessions that are theirs, and what the day loads.</summary>
/// <param name="Standing">What binds on it.</param>
/// <param name="Fits">The sessions that are the player's and take place, and what becomes of each; none where the player is not with the team.</param>
/// <param name="Team">AU planned for the player with the team, matches as for everyone; 0 where the player is out or not with it. Null while it is not known: the week is not laid out, or nobody said what somebody modified does.</param>
/// <param name="Outside">AU done elsewhere; null where nobody told, which is not 0.</param>
public sealed record PlayerDay(DateOnly Day, Whereabouts Where, Standing Standing, ValueList<SessionFit> Fits, Load? Team, Load? Outside)
{
    public bool IsAway => Where != Whereabouts.WithTeam;

    /// <summary>With the team and not out: plays where there is a match.</summary>
    public bool IsThere => !IsAway && Standing.Availability.State != AvailabilityState.Out;

    /// <summary>What the player's day loads wherever it is spent; null while that is not known.</summary>
    public Load? Total => IsAway ? Outside : Team;

    /// <param name="setup">Of the season's team.</param>
    public static PlayerDay Of(Player player, Season season, Setup setup, DateOnly day) =>
        Of(player, season, setup, day, season.WeekOf(day) is { } week ? Known(season, setup, week).ElementAt(day.DayNumber - week.Days.First.DayNumber) : null);

    /// <summary>Every day of a week.</summary>
    public static ImmutableArray<PlayerDay> Of(Player player, Season season, Setup setup, SeasonWeek week) =>
        [.. week.Days.Days().Zip(Known(season, setup, week), (day, load) => Of(player, season, setup, day, load))];

    /// <param name="load">What the day loads the squad; null while that is not known.</param>
    private static PlayerDay Of(Player player, Season season, Setup setup, DateOnly day, DayLoad? load)
    {
        var (standing, where) = (player.StandingOn(day), player.WhereOn(setup.Id, day));
        var fits = SessionFit.OfDay(player.SessionsOn(season, setup.Id, day), standing.Availability);
        var made = new PlayerDay(day, where, standing, fits, Load.Zero, Absence.OutsideLoadOn(player.Absences, day));
        return made.IsThere ? made with { Team = load is null ? null : fits.Aggregate((Load?)load.Match, (sum, fit) => sum + fit.Load) } : made;
    }

    /// <summary>What each day of a week loads the squad. A day with nothing on it loads nothing only in a week that is laid out.</summary>
    private static IEnumerable<DayLoad?> Known(Season season, Setup setup, SeasonWeek week)
    {
        var isLaidOut = season.SessionsIn(week).Any(session => session.IsOurs);
        return DayLoad.Of(season, setup, week).Select(load => isLaidOut && load.Practice is not null ? load : null);
    }
}
