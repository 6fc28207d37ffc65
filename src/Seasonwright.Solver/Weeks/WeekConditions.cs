using System.Collections.Immutable;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>Every condition of a week, once: the model keeps to this list, and why a session cannot be elsewhere is read from it.</summary>
internal static class WeekConditions
{
    public static readonly WeekCondition RestDay = new("rest-day", "full-rest-day-missing");
    public static readonly WeekCondition HardRun = new("hard-run", "hard-days-in-a-row");
    public static readonly WeekCondition TrainingDays = new("training-days");
    public static readonly WeekCondition SlotTaken = new("slot-taken");
    public static readonly WeekCondition DayLoad = new("day-load");

    public static readonly WeekCondition Target = new("target");
    public static readonly WeekCondition Exposures = new("exposures");
    public static readonly WeekCondition Legs = new("legs", "strength-frequency-in-season");
    public static readonly WeekCondition Monotony = new("monotony", "monotony-and-strain");
    public static readonly WeekCondition Sprints = new("sprints", "sprint-exposure-gap");
    public static readonly WeekCondition HeavyAfter = new("heavy-after", "day-after-match-hard");

    /// <summary>Kinds that do not lie on a day.</summary>
    public static ImmutableArray<(WeekCondition Condition, Func<WeekProblem, WeekDay, SessionKind, bool> Forbids)> Places { get; } =
    [
        (new("past"), (_, day, _) => day.IsPast),
        (new("closed"), (_, day, _) => day.IsClosed),
        (new("match-day"), (_, day, _) => day is { IsMatch: true, IsOpen: false }),
        (new("open-match"), (_, day, _) => day is { IsMatch: true, IsOpen: true }),
        (new("heavy-before", "heavy-lower-before-match"), (problem, day, kind) => IsHeavy(kind) && day.ToNext < problem.Limits.HeavyBefore),
        (new("small-dose-before", "heavy-lower-before-match"), (_, day, kind) => kind == SessionKind.SmallDose && day.ToNext < 2),
        (new("small-dose-season"), (problem, _, kind) => kind == SessionKind.SmallDose && !problem.KeepsUp),
        (new("light-before", "day-before-match-heavy"), (_, day, kind) => day.ToNext == 1 && !(kind is SessionKind.Activation or SessionKind.Prevention || kind == SessionKind.Recovery && day.SinceLast == 1)),
        (new("light-after", "day-after-match-hard"), (problem, day, kind) => day.SinceLast <= problem.Limits.HardAfter && kind is not (SessionKind.Recovery or SessionKind.UpperStrength)),
        (new("speed-days"), (problem, day, kind) => kind == SessionKind.Speed && day.ToNext is < WeekLimits.SpeedTo or > WeekLimits.SpeedFrom && !(day.ToNext > WeekLimits.SpeedFrom && day.SinceLast > problem.Limits.HeavyAfter)),
        (new("intervals-days"), (_, day, kind) => kind == SessionKind.Intervals && (day.ToNext <= 2 || day.SinceLast <= 2)),
        (new("endurance-days"), (_, day, kind) => kind == SessionKind.Endurance && day.ToNext <= 2),
        (new("activation-day"), (_, day, kind) => kind == SessionKind.Activation && day.ToNext != 1),
        (new("recovery-days"), (_, day, kind) => kind == SessionKind.Recovery && day.SinceLast > 2 && day.Travel != WeekTravel.Arrival),
        (new("travel", "travel-day-load"), (problem, day, kind) => day.Travel == WeekTravel.Long && SessionRange.Of(kind).RpeOn(problem, day) > problem.Limits.TravelRpe),
        (new("arrival", "travel-day-load"), (_, day, kind) => day.Travel == WeekTravel.Arrival && kind != SessionKind.Recovery),
        (new("after-arrival", "travel-day-load"), (problem, day, kind) => day.Travel == WeekTravel.After && SessionRange.Of(kind).RpeOn(problem, day) > problem.Limits.TravelRpe),
        (new("congested", "heavy-week-in-congestion"), (problem, _, kind) => kind == SessionKind.Hypertrophy && problem.Matches > 1),
        (new("back-general"), (problem, day, kind) => problem.IsBack && day.Index - problem.FirstDay < WeekLimits.GeneralDays && kind is not (SessionKind.Endurance or SessionKind.Prevention or SessionKind.UpperStrength or SessionKind.Recovery)),
        (new("back-calm"), (problem, day, kind) => problem.IsBack && day.Index - problem.FirstDay < WeekLimits.CalmDays && kind is (SessionKind.Speed or SessionKind.Intervals)),
    ];

    /// <summary>Sessions that do not lie so near each other: the first on the same day or before.</summary>
    public static ImmutableArray<(WeekCondition Condition, Func<WeekProblem, WeekSession, WeekSession, bool> Forbids)> Pairs { get; } =
    [
        (new("heavy-apart", "heavy-session-spacing"), (problem, one, next) => one.IsHeavy && next.IsHeavy && next.Day - one.Day < problem.Limits.Spacing),
        (new("sprint-apart", "heavy-session-spacing"), (problem, one, next) => next.Kind == SessionKind.Speed && next.Day - one.Day < problem.Limits.SprintSpacing && (one.Kind == SessionKind.Speed || one.IsHeavy && one.Day < next.Day)),
        (new("intervals-apart"), (_, one, next) => one.Kind == SessionKind.Intervals && next.Kind == SessionKind.Intervals && next.Day - one.Day < 2),
        (new("jumps-apart", "plyo-contacts"), (problem, one, next) => one.IsJumps && next.IsJumps && next.Day - one.Day < problem.Limits.JumpSpacing),
        (new("one-gym"), (_, one, next) => one.Day == next.Day && one.IsGym && next.IsGym),
        (new("legs-apart"), (_, one, next) => IsForLegs(one) && IsForLegs(next) && next.Day - one.Day < 2),
        (new("one-conditioning"), (_, one, next) => one.Day == next.Day && one.IsEndurance && next.IsEndurance),
        (new("strength-and-endurance", "same-day-strength-endurance"), (_, one, next) => one.Day == next.Day && (one.IsStrength && next.IsEndurance || one.IsEndurance && next.IsStrength)),
        (new("twice"), (_, one, next) => one.Day == next.Day && one.Kind == next.Kind && one.IsOurs),
        (new("fresh-test", "test-timing"), (_, one, next) => next.Kind == SessionKind.Test && one.IsOurs && (one.Day == next.Day || IsTiring(one) && next.Day - one.Day < 2) || one.Kind == SessionKind.Test && next.IsOurs && one.Day == next.Day),
    ];

    /// <summary>What a day's sessions may come to together; null where the day has no such limit.</summary>
    public static ImmutableArray<(WeekCondition Condition, Func<WeekSession, int> Of, Func<WeekProblem, WeekDay, int?> Most)> OfDay { get; } =
    [
        (DayLoad, session => session.Au, (problem, day) => (int)((long)problem.Au(WeekLimits.PointsOf(day)) * day.Left / 100)),
        (new("minutes-before", "day-before-match-heavy"), session => session.Minutes, (problem, day) => day.ToNext == 1 ? problem.Limits.MinutesBefore : null),
        (new("travel-minutes", "travel-day-load"), session => session.Minutes, (problem, day) => day.IsTravel ? problem.Limits.TravelMinutes : null),
        (new("sessions-a-day"), _ => 1, (problem, _) => problem.IsCompetition ? WeekLimits.SessionsADayInCompetition : WeekLimits.SessionsADay),
        (new("ours-a-day"), session => session.IsOurs ? 1 : 0, (_, _) => WeekLimits.OursADay),
    ];

    /// <summary>What a week's sessions may come to together.</summary>
    public static ImmutableArray<(WeekCondition Condition, Func<WeekSession, int> Of, Func<WeekProblem, int?> Most)> OfWeek { get; } =
    [
        (new("sessions-a-week"), _ => 1, problem => problem.IsCompetition ? WeekLimits.SessionsInCompetition : WeekLimits.SessionsElsewhere),
        (new("strength-a-week", "strength-frequency-in-season"), session => session.IsStrength ? 1 : 0, problem => !problem.IsCompetition ? null : problem.Matches switch { 0 => null, 1 => problem.Limits.StrengthOneMatch, _ => problem.Limits.StrengthTwoMatches }),
        (new("leave"), session => session.IsOurs ? 1 : 0, problem => problem.Kind == WeekKind.Transition ? WeekLimits.OursInTransition : null),
        (new("small-dose-once"), session => session.Kind == SessionKind.SmallDose ? 1 : 0, _ => 1),
        (new("hours"), session => session.Minutes, problem => problem.MostMinutes),
    ];

    /// <summary>What a week's sessions may come to together, what practice is asked to hold among them as the session it is like.</summary>
    public static ImmutableArray<(WeekCondition Condition, SessionKind Kind, Func<WeekProblem, int?> Most)> OfWork { get; } =
    [
        (new("back-intervals"), SessionKind.Intervals, problem => problem.IsBack ? WeekLimits.FastBack : null),
        (new("back-speed"), SessionKind.Speed, problem => problem.IsBack ? WeekLimits.FastBack : null),
    ];

    /// <summary>Everything a kind is kept from a day by.</summary>
    public static IEnumerable<WeekCondition> Against(WeekProblem problem, WeekDay day, SessionKind kind) => Places.Where(place => place.Forbids(problem, day, kind)).Select(place => place.Condition);

    /// <summary>Everything that keeps two sessions apart, whichever is first.</summary>
    public static IEnumerable<WeekCondition> Against(WeekProblem problem, WeekSession one, WeekSession other) =>
        Pairs.Where(pair => one.Day <= other.Day && pair.Forbids(problem, one, other) || other.Day <= one.Day && pair.Forbids(problem, other, one)).Select(pair => pair.Condition);

    private static bool IsHeavy(SessionKind kind) => Core.Setups.SessionUse.Of(kind).IsHeavyLower;

    /// <summary>Strength for the legs, be it a small dose or a test of it.</summary>
    public static bool IsForLegs(WeekSession session) => session.IsHeavy || session.Kind == SessionKind.SmallDose || session.Kind == SessionKind.Test && session.Qualities.Contains(Core.Setups.QualityKind.MaximumStrength);

    private static bool IsTiring(WeekSession session) => session.IsOurs && (session.IsHeavy || session.IsHard);
}
