using Seasonwright.Core.Calendar;
using Seasonwright.Core.Loads;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Squad;

/// <summary>
/// A player who comes back to the team: the load done elsewhere on the last seven days of an absence beside the squad's on the same days, and how to begin. A suggestion for the
/// coach, who knows the player and asks first; common practice, no source.
/// </summary>
/// <param name="Day">The first day with the team again.</param>
/// <param name="Counted">The days that are compared.</param>
/// <param name="Outside">AU of them; null where nobody told.</param>
/// <param name="Squad">AU of the squad on them, by what is laid out, else an even share of the week's target; null where neither is known.</param>
/// <param name="First">The player's sessions of the first two days, and what becomes of each.</param>
public sealed record ComingBack(DateOnly Day, Absence Absence, DaySpan Counted, Load? Outside, Load? Squad, BackAdvice Advice, ValueList<SessionFit> First)
{
    /// <summary>So many days before the first one are compared, and so many from it on are looked at.</summary>
    private const int Before = 7, Days = 2;

    /// <summary>Shares of the squad's load from which somebody did more, or less, than the squad.</summary>
    private const decimal More = 1.1m, Less = 0.8m;

    /// <summary>Who comes back in a week or in the two days before it, so that the first days lie in it; null where nobody does, or nobody knows a last day.</summary>
    public static ComingBack? In(Player player, Season season, Setup setup, SeasonWeek week)
    {
        var back = player.Absences.Select(absence => (Absence: absence, Day: absence.Days.Last.AddDays(1)))
            .Where(one => one.Day.AddDays(Days - 1) >= week.Days.First && one.Day <= week.Days.Last && player.WhereOn(setup.Id, one.Day) == Whereabouts.WithTeam)
            .OrderByDescending(one => one.Day).ToList();
        if (back.Count == 0) return null;
        var (absence, day) = back[0];
        var counted = new DaySpan(day.AddDays(-Math.Min(Before, absence.Days.Length)), day.AddDays(-1));
        Load? outside = Sum(counted, of => Absence.OutsideLoadOn(player.Absences, of)), squad = Sum(counted, of => SquadOn(season, setup, of));
        var advice = (outside, squad) switch
        {
            (null, _) or (_, null) => BackAdvice.Ask,
            ({ } there, { } here) when there.Au > here.Au * More => BackAdvice.Lighter,
            // Whoever is restricted begins as whoever restricted it says.
            _ when Enumerable.Range(0, Days).Any(ahead => player.StandingOn(day.AddDays(ahead)).Availability.State != AvailabilityState.Full) => BackAdvice.Ask,
            ({ } there, { } here) when there.Au < here.Au * Less => BackAdvice.More,
            _ => BackAdvice.AsSquad,
        };
        var first = Enumerable.Range(0, Days).Select(day.AddDays).SelectMany(of => PlayerDay.Of(player, season, setup, of).Fits.Select(fit => advice == BackAdvice.Lighter ? Eased(fit, setup, of == day) : fit));
        return new(day, absence, counted, outside, squad, advice, first.ToValueList());
    }

    /// <summary>Heavy legs become a small dose, what is hard an easy session, and the first practice half of its minutes.</summary>
    private static SessionFit Eased(SessionFit fit, Setup setup, bool isFirstDay) => fit switch
    {
        { Kind: not FitKind.AsPlanned } => fit,
        { Session: { IsOurs: true } session } when SessionUse.IsHeavy(session, setup) => fit with { Kind = FitKind.Replaced, Instead = SessionKind.SmallDose },
        { Session: { IsOurs: true } session } when SessionUse.IsHard(session) => fit with { Kind = FitKind.Replaced, Instead = SessionKind.Recovery },
        { Session: { IsOurs: false } session } when isFirstDay => fit with { Kind = FitKind.Modified, MostMinutes = new(session.Minutes.Value / 2 / Round * Round) },
        _ => fit,
    };

    private const int Round = 5;

    private static Load? SquadOn(Season season, Setup setup, DateOnly day) => season.WeekOf(day) is not { } week ? null
        : DayLoad.Of(season, setup, week)[day.DayNumber - week.Days.First.DayNumber].Total is { } known && season.SessionsIn(week).Any(session => session.IsOurs) ? known
        : season.TargetOf(week.Id) is { } target ? new Load(target.Au / week.Days.Length) : null;

    private static Load? Sum(DaySpan days, Func<DateOnly, Load?> of) => days.Days().Aggregate((Load?)Load.Zero, (sum, day) => sum + of(day));
}
