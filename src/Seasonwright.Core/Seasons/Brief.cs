using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Seasons;

/// <summary>What the coach asks of a proposed year beside what the calendar, the goals and the locks say. Everything has a default. Common practice, no source.</summary>
/// <param name="LargestWeek">The most a week may hold, of the squad's normal hard week: 40 to 200 %. Weeks whose matches alone weigh more are a fact.</param>
/// <param name="Start">How the squad comes into the season; null for the team's figure (rule return-after-break-volume, season_start).</param>
/// <param name="WeeksBetween">So many whole weeks without an official match part two competition periods: 2 to 20.</param>
/// <param name="Tests">How many test days at most, 0 to 30; null as many as the season asks for.</param>
/// <param name="Tapers">What is said of tapers; null where nothing is: they then follow from the key matches.</param>
/// <param name="Time">The time there is to train; a phase that is not named has no bound, and null names none.</param>
public sealed record Brief(
    Percent LargestWeek,
    Boldness Boldness = Boldness.Usual,
    StartLevel? Start = null,
    int WeeksBetween = Brief.UsualWeeksBetween,
    int? Tests = null,
    ValueList<MatchTaper>? Tapers = null,
    ValueList<PhaseTime>? Time = null)
{
    public const int LeastWeek = 40, MostWeek = 200, LeastWeeksBetween = 2, MostWeeksBetween = 20, MostTests = 30, UsualWeeksBetween = 4;

    /// <summary>Of a coach who has not said anything.</summary>
    public static Brief Default { get; } = new(new Percent(120));
}

/// <summary>What the coach says of the taper before one key match.</summary>
public sealed record MatchTaper(MatchId Match, TaperStyle Style);

/// <summary>The time there is to train in a week of a phase, practices included, matches not.</summary>
/// <param name="Days">Days with training, 2 to 7; null for no bound.</param>
/// <param name="Hours">2 to 40; null for no bound.</param>
public sealed record PhaseTime(PhaseKind Phase, int? Days = null, int? Hours = null)
{
    public const int LeastDays = 2, MostDays = 7, LeastHours = 2, MostHours = 40;
}
