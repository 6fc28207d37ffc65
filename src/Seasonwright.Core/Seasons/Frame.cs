using Seasonwright.Core.Calendar;

namespace Seasonwright.Core.Seasons;

/// <summary>
/// Where the season lies: its first day, the weekday later weeks start on, and its weeks in order. Weeks that once had a place
/// and have fallen off either end stay listed, so that their content returns when the season grows that way again.
/// </summary>
/// <param name="FirstDay">First day of week 1; off the week start it makes week 1 short.</param>
/// <param name="WeekStart">The weekday on which week 2 and every later week starts.</param>
/// <param name="Weeks">The weeks of the season, in order, 1 to <see cref="MostWeeks"/>.</param>
/// <param name="Before">Weeks outside that adjoin the start, in order: the last one ends the day before week 1.</param>
/// <param name="After">Weeks outside that adjoin the end, in order.</param>
public sealed record Frame(DateOnly FirstDay, DayOfWeek WeekStart, ValueList<WeekId> Weeks, ValueList<WeekId> Before, ValueList<WeekId> After)
{
    public const int MostWeeks = 60;

    /// <summary>Weeks inside and outside together: some ten years. Farther apart is a slip of the pen.</summary>
    public const int MostKept = 520;

    /// <summary>First days outside 1950..2149 are refused as slips of the pen.</summary>
    public static DaySpan PossibleDays { get; } = new(new DateOnly(1950, 1, 1), new DateOnly(2149, 12, 31));

    /// <summary>The frame of a season that has not been started: no weeks.</summary>
    public static Frame None { get; } = new(new DateOnly(2000, 1, 1), DayOfWeek.Monday, ValueList<WeekId>.Empty, ValueList<WeekId>.Empty, ValueList<WeekId>.Empty);

    /// <summary>Every week that has or once had a place, in calendar order: before, in and after the season.</summary>
    public IEnumerable<WeekId> Known => Before.Concat(Weeks).Concat(After);

    public WeekGrid Grid => new(FirstDay, WeekStart, Weeks.Count);
}
