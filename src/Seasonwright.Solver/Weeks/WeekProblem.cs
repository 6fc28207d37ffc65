using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>
/// A week as the week stage reads it: a plain value. Loads are whole AU, for a session of twenty minutes is less than two points; one
/// point is one per cent of the squad's normal hard week.
/// </summary>
/// <param name="Days">In order; seven but for a short first week.</param>
/// <param name="Given">What is planned around: practices, locked and past sessions. Those beside the week are on days before 0 and beyond the last.</param>
/// <param name="Tests">Sessions for the week's test days, which the proposal adds.</param>
/// <param name="Standing">Ours that the proposal replaces: open ones from today on.</param>
/// <param name="MatchesBeside">Days with a match just outside the week.</param>
/// <param name="Ours">AU that are aimed at for ours, given ones and tests included; null where the week has no target.</param>
/// <param name="Asked">Exposures asked of each kind of quality, prevention included.</param>
/// <param name="Kinds">What may be placed.</param>
/// <param name="Kind">As it is called, or as its matches make it.</param>
/// <param name="Hundred">AU of the normal hard week.</param>
/// <param name="MostMinutes">Of all training in the week; null for no bound.</param>
/// <param name="MostDays">With training; null for no bound.</param>
/// <param name="RestBy">Index of the day by which one must be free of everything, so that no seven days are without; null for any of the week's.</param>
/// <param name="Stop">Why nothing is proposed, as the name of its sentence; null where something is.</param>
public sealed record WeekProblem(
    ValueList<WeekDay> Days,
    ValueList<WeekSession> Given,
    ValueList<WeekSession> Tests,
    ValueList<WeekSession> Standing,
    ValueList<int> MatchesBeside,
    int? Ours,
    ValueList<int> Asked,
    ValueList<SessionKind> Kinds,
    WeekKind Kind,
    PhaseKind? Phase,
    int Hundred,
    int? MostMinutes,
    int? MostDays,
    int? RestBy,
    WeekLimits Limits,
    string? Stop = null)
{
    /// <summary>Minutes of proposed sessions are multiples of it.</summary>
    public int Step { get; init; } = 5;

    /// <summary>The squad's usual slot of practice: ours lie before it.</summary>
    public DaySlot PracticeSlot { get; init; } = DaySlot.Evening;

    /// <summary>Given sessions and tests: all that is no choice.</summary>
    public IEnumerable<WeekSession> Fixed => Given.Concat(Tests);

    public IEnumerable<WeekSession> FixedOn(int day) => Fixed.Where(session => session.Day == day);

    /// <summary>Of the week, those whose day is open among them.</summary>
    public int Matches => Days.Count(day => day is { IsMatch: true, IsOpen: false }) + OpenMatches;

    /// <summary>Matches on one of several possible days of the week.</summary>
    public int OpenMatches { get; init; }

    /// <summary>The first week after two weeks off and more (return-after-break-volume): it begins with general work.</summary>
    public bool IsBack { get; init; }

    /// <summary>Index of the day by which a dose of sprints is due after the last one known; null where none is known, or any day will do.</summary>
    public int? SprintBy { get; init; }

    /// <summary>Index of the day from which one must be free, since the days after the week are laid out; null where they are not.</summary>
    public int? RestFrom { get; init; }

    /// <summary>Runs of days of which one is to be free: the week, what is left of the seven days after the last free one, and of those before the next.</summary>
    public IEnumerable<(int First, int Last)> RestWithin => new[] { (0, Days.Count - 1), (0, RestBy ?? Days.Count - 1), (RestFrom ?? 0, Days.Count - 1) }.Distinct();

    /// <summary>A week that is meant to be lighter than others.</summary>
    public bool IsEasy => Kind is WeekKind.Unloading or WeekKind.Taper or WeekKind.Introductory or WeekKind.ReEntry or WeekKind.Reduced;

    /// <summary>Index of the first day on which the squad can train.</summary>
    public int FirstDay => Days.Where(day => !day.IsClosed && !day.IsMatch).Select(day => day.Index).DefaultIfEmpty(0).First();

    public bool IsCompetition => Phase is PhaseKind.Competition or PhaseKind.Peak;

    /// <summary>A week that keeps strength up rather than builds it: only there a small dose stands for a session.</summary>
    public bool KeepsUp => IsCompetition || Kind is WeekKind.Taper or WeekKind.Competition or WeekKind.Congested or WeekKind.Reduced or WeekKind.Transition;

    /// <summary>Sessions of strength that the legs get: as many as are asked for, one where strength is kept up or a match is played, two where it is built.</summary>
    public int AskedForLegs => Math.Min(KeepsUp || IsBack || Matches > 0 ? 1 : 2, Math.Max(Asked[(int)QualityKind.MaximumStrength], Asked[(int)QualityKind.Hypertrophy]));

    /// <summary>Strength is to be developed, not only kept up.</summary>
    public bool AsksForFullLegs => Asked[(int)QualityKind.MaximumStrength] > 1 && !IsBack;

    /// <summary>Speed is asked for: one dose of it is ours, for nobody counts what practice holds (sprint-exposure-gap).</summary>
    public bool AsksForSprints => Asked[(int)QualityKind.Speed] > 0 && !Fixed.Any(session => session.Day >= 0 && session.Day < Days.Count && session.IsOurs && session.Qualities.Contains(QualityKind.Speed));

    /// <summary>Points in AU, rounded to whole ones.</summary>
    public int Au(int points) => (int)(((long)points * Hundred + 50) / 100);

    public decimal Points(int au) => Math.Round(100m * au / Hundred, 1, MidpointRounding.AwayFromZero);

    /// <summary>Whether a day, of the week or beside it, is hard through what is given.</summary>
    public bool IsHardAnyway(int day) => MatchesBeside.Contains(day) || Days.Any(one => one.Index == day && one.IsMatch) || FixedOn(day).Any(session => session.IsHard);

    /// <inheritdoc cref="WeekReading.Of"/>
    public static WeekProblem Of(Season season, Setup setup, SeasonWeek week, DateOnly from, GroupId? group = null) => WeekReading.Of(season, setup, week, from, group);
}
