using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Setups;

/// <summary>A week that the team lays out again and again: its sessions as they lay in the week it was taken from. Elsewhere each falls on the same day of the week.</summary>
/// <param name="Days">Of the week it was taken from: 1 to 7.</param>
/// <param name="MatchDays">Those of them with a match, ascending.</param>
/// <param name="Sessions">At most 42, none cancelled, none locked.</param>
/// <param name="Phase">The kind of phase it is for; null for any.</param>
public sealed record TypicalWeek(TypicalWeekId Id, string Name, DaySpan Days, ValueList<DateOnly> MatchDays, ValueList<Session> Sessions, PhaseKind? Phase = null)
{
    /// <summary>Three of the head coach's and three of ours on each day.</summary>
    public const int MostSessions = 2 * Session.MostADay * MostDays;

    internal const int MostDays = 7;

    /// <summary>A week as it lies in a season, without what does not take place.</summary>
    public static TypicalWeek Of(TypicalWeekId id, string name, Season season, SeasonWeek week) => new(id, name, week.Days,
        MatchDaysOf(season, week), season.SessionsIn(week).Where(session => !session.IsCancelled).Select(session => session with { IsLocked = false }).ToValueList(), season.PhaseOf(week)?.Phase.Kind);

    /// <summary>Whether a week has its matches on the same days of the week and lies in the kind of phase it is for.</summary>
    public bool Suits(Season season, SeasonWeek week) =>
        (Phase is null || season.PhaseOf(week)?.Phase.Kind == Phase) && Patterns(MatchDays).SequenceEqual(Patterns(MatchDaysOf(season, week)));

    private static ValueList<DateOnly> MatchDaysOf(Season season, SeasonWeek week) => season.MatchDays.Where(week.Days.Contains).ToValueList();

    private static IEnumerable<DayOfWeek> Patterns(IEnumerable<DateOnly> days) => days.Select(day => day.DayOfWeek).Distinct().Order();
}
