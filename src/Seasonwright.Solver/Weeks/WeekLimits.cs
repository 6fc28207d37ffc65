using System.Globalization;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>
/// The figures that a week is planned within: the rulebook's parameters as the team has them, in whole days where the rules count
/// hours, and working defaults of our own. A figure that cannot be read counts as its default.
/// </summary>
/// <param name="HeavyBefore">heavy-lower-before-match, min_h: fewer days to a match forbid heavy work for the legs.</param>
/// <param name="HardAfter">day-after-match-hard, first_h: on so many days after a match nothing is hard.</param>
/// <param name="HeavyAfter">day-after-match-hard, second_h: on so many days after a match heavy legs and sprints have their price.</param>
/// <param name="Spacing">heavy-session-spacing, min_h: days from one heavy session for the legs to the next.</param>
/// <param name="SprintSpacing">heavy-session-spacing, sprint_min_h: days from one sprint session to the next, or from heavy legs to a sprint.</param>
/// <param name="RpeBefore">day-before-match-heavy, max_rpe.</param>
/// <param name="MinutesBefore">day-before-match-heavy, max_minutes.</param>
/// <param name="RpeAfter">day-after-match-hard, max_rpe_first.</param>
/// <param name="HardRun">hard-days-in-a-row, warning_run: so many hard days never follow each other.</param>
/// <param name="StrengthOneMatch">strength-frequency-in-season, max_one_match.</param>
/// <param name="StrengthTwoMatches">strength-frequency-in-season, max_two_match.</param>
/// <param name="TravelRpe">travel-day-load, max_rpe.</param>
/// <param name="TravelMinutes">travel-day-load, max_min.</param>
/// <param name="JumpSpacing">plyo-contacts, min_gap_h: days from one session with jumps to the next.</param>
/// <param name="TravelLong">travel-day-load, long_h: a journey of more hours fills its day.</param>
/// <param name="TravelHaul">travel-day-load, haul_h: after one of more hours the next day is light.</param>
/// <param name="Zones">time-zone-arrival, min_zones: so many turn an arrival into a day off.</param>
public sealed record WeekLimits(
    int HeavyBefore = 3,
    int HardAfter = 1,
    int HeavyAfter = 2,
    int Spacing = 2,
    int SprintSpacing = 2,
    int RpeBefore = 4,
    int MinutesBefore = 60,
    int RpeAfter = 4,
    int HardRun = 3,
    int StrengthOneMatch = 2,
    int StrengthTwoMatches = 1,
    int TravelRpe = 4,
    int TravelMinutes = 45,
    int JumpSpacing = 2,
    int TravelLong = 4,
    int TravelHaul = 8,
    int Zones = 3)
{
    /// <summary>Points that a day may hold besides its match: MD-1, MD-2, MD+1, MD+2 and any other. Working defaults: common practice, no source.</summary>
    public const int DayBefore = 10, TwoBefore = 16, DayAfter = 7, TwoAfter = 14, OtherDay = 32;

    /// <summary>Sessions in a week of the competition and in any other, practices included. Common practice, no source.</summary>
    public const int SessionsInCompetition = 9, SessionsElsewhere = 14;

    /// <summary>Sessions of ours in a week of the transition. Common practice, no source.</summary>
    public const int OursInTransition = 3;

    /// <summary>A first week back begins with so many days of general work, and without speed and intervals for so many; it has so many sessions of each. Common practice, no source.</summary>
    public const int GeneralDays = 1, CalmDays = 2, FastBack = 1;

    /// <summary>Sessions of a day, in the competition and elsewhere, and ours of them. Common practice, no source.</summary>
    public const int SessionsADayInCompetition = 2, SessionsADay = 3, OursADay = 2;

    /// <summary>Maximal speed is trained so many days before a match, or far from any. Common practice, no source.</summary>
    public const int SpeedFrom = 4, SpeedTo = 2;

    public static WeekLimits Of(Setup setup)
    {
        int Whole(string rule, string figure, int usual, int most = 100) =>
            decimal.TryParse(setup.RuleParameter(new RuleParameter(rule, figure)), NumberStyles.Number & ~NumberStyles.AllowThousands, CultureInfo.InvariantCulture, out var set) ? (int)Math.Clamp(Math.Round(set), 0, most) : usual;
        int Days(string rule, string figure, int usual) => (Whole(rule, figure, usual, 240) + 23) / 24;
        return new WeekLimits(
            Days("heavy-lower-before-match", "min_h", 48) + 1,
            // Until noon of the second day is the day after.
            Whole("day-after-match-hard", "first_h", 36, 240) / 24,
            Days("day-after-match-hard", "second_h", 48),
            Days("heavy-session-spacing", "min_h", 48),
            Days("heavy-session-spacing", "sprint_min_h", 48),
            Whole("day-before-match-heavy", "max_rpe", 4, 10),
            Whole("day-before-match-heavy", "max_minutes", 60, 240),
            Whole("day-after-match-hard", "max_rpe_first", 4, 10),
            Math.Max(1, Whole("hard-days-in-a-row", "warning_run", 3)),
            Whole("strength-frequency-in-season", "max_one_match", 2),
            Whole("strength-frequency-in-season", "max_two_match", 1),
            Whole("travel-day-load", "max_rpe", 4, 10),
            Whole("travel-day-load", "max_min", 45, 240),
            Days("plyo-contacts", "min_gap_h", 48),
            Whole("travel-day-load", "long_h", 4),
            Whole("travel-day-load", "haul_h", 8),
            Math.Max(1, Whole("time-zone-arrival", "min_zones", 3)));
    }

    /// <summary>What a day may hold besides its match, in points of a full day; the smallest label counts.</summary>
    public static int PointsOf(WeekDay day) => new[]
    {
        day.ToNext == 1 ? DayBefore : OtherDay,
        day.ToNext == 2 ? TwoBefore : OtherDay,
        day.SinceLast == 1 ? DayAfter : OtherDay,
        day.SinceLast == 2 ? TwoAfter : OtherDay,
    }.Min();
}
