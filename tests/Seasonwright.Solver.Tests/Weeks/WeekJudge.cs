using Seasonwright.Core.Seasons;
using static Seasonwright.Core.Seasons.SessionKind;

namespace Seasonwright.Solver.Tests;

/// <summary>
/// Judges a laid-out week by the conditions as they are written in docs/planning-choices.md, in plain figures: it reads the week's days
/// and sessions and no condition, limit or price of the engine. Figures of rules are the rulebook's defaults.
/// </summary>
internal static class WeekJudge
{
    private static bool IsHeavy(WeekSession one) => one.Kind is LowerStrength or Hypertrophy || one.IsHeavy;

    private static bool IsLegs(WeekSession one) => IsHeavy(one) || one.Kind == SmallDose || one.Kind == Test && one.Qualities.Contains(Core.Setups.QualityKind.MaximumStrength);

    private static bool IsStrength(WeekSession one) => one.Kind is LowerStrength or Hypertrophy or SmallDose or UpperStrength;

    private static bool IsGym(WeekSession one) => IsStrength(one) || one.Kind == Power;

    private static bool HasJumps(WeekSession one) => one.Kind is not (Practice or Activation or Test) && one.Qualities.Contains(Core.Setups.QualityKind.Power);

    private static bool IsConditioning(WeekSession one) => one.Kind is Intervals or Endurance;

    private static bool IsHard(WeekSession one) => one.Rpe >= 7 && one.Minutes >= 20;

    /// <param name="ours">What was laid out, tests aside.</param>
    /// <returns>What is broken, by name; nothing that is given alone breaks.</returns>
    public static List<string> Of(WeekProblem week, IReadOnlyList<WeekSession> ours)
    {
        List<string> broken = [];
        List<WeekSession> given = [.. week.Given, .. week.Tests];
        var matches = week.Days.Count(day => day.Around.ToNext == 0 && !day.IsOpen) + week.OpenMatches;
        foreach (var one in ours)
        {
            var day = week.Days[one.Day];
            var (next, last) = (day.Around.ToNext ?? 99, day.Around.SinceLast ?? 99);
            void Not(bool isSo, string what) { if (isSo) broken.Add($"{what}: {one.Kind} on day {one.Day}"); }
            Not(day.IsPast, "past");
            Not(day.Left == 0, "closed");
            Not(next == 0, "match");
            Not(IsHeavy(one) && next < 3, "heavy before a match");
            Not(one.Kind == SmallDose && next < 2, "small dose before a match");
            Not(next == 1 && one.Kind is not (Activation or Prevention) && !(one.Kind == Recovery && last == 1), "light before a match");
            Not(last <= 1 && one.Kind is not (Recovery or UpperStrength), "light after a match");
            Not(last <= 1 && one.Rpe > 4, "hard after a match");
            Not(one.Kind == Speed && next is not (2 or 3 or 4) && !(next > 4 && last > 2), "speed");
            Not(one.Kind == Intervals && (next <= 2 || last <= 2), "intervals");
            Not(one.Kind == Endurance && next <= 2, "endurance");
            Not(one.Kind == Activation && next != 1, "activation");
            Not(one.Kind == Recovery && last > 2 && day.Travel != WeekTravel.Arrival, "recovery");
            Not(one.Kind == Hypertrophy && matches > 1, "muscle beside two matches");
            Not(one.Kind == SmallDose && !(week.Phase is PhaseKind.Competition or PhaseKind.Peak || week.Kind is WeekKind.Taper or WeekKind.Competition or WeekKind.Congested or WeekKind.Reduced or WeekKind.Transition), "small dose while building");
            Not(day.Travel == WeekTravel.Long && one.Rpe > 4, "effort on a journey");
            Not(day.Travel == WeekTravel.Arrival && one.Kind != Recovery, "work on arrival");
            Not(day.Travel == WeekTravel.After && one.Rpe > 4, "effort after arrival");
            if (week.IsBack)
            {
                var begins = week.Days.Where(other => other.Left > 0 && other.Around.ToNext != 0).Select(other => other.Index).Append(99).Min();
                Not(one.Day <= begins && one.Kind is not (Endurance or Prevention or UpperStrength or Recovery), "no general work first");
                Not(one.Day <= begins + 1 && one.Kind is Speed or Intervals && one.Day <= begins + 1, "fast too soon");
                Not(one.Kind is Speed or Intervals && given.Concat(ours).Count(other => other.Kind == one.Kind && other.Day >= 0 && other.Day < week.Days.Count) > 1, "fast twice in a week back");
            }
            foreach (var other in given.Concat(ours.Where(other => !ReferenceEquals(other, one))))
            {
                var apart = other.Day - one.Day;
                Not(Math.Abs(apart) < 2 && IsHeavy(one) && IsHeavy(other), "heavy apart");
                Not(Math.Abs(apart) < 2 && IsLegs(one) && IsLegs(other), "legs apart");
                Not(Math.Abs(apart) < 2 && one.Kind == Speed && other.Kind == Speed, "sprints apart");
                Not(apart == 1 && IsHeavy(one) && other.Kind == Speed || apart == -1 && IsHeavy(other) && one.Kind == Speed, "sprint after heavy");
                Not(Math.Abs(apart) < 2 && HasJumps(one) && HasJumps(other), "jumps apart");
                Not(Math.Abs(apart) < 2 && one.Kind == Intervals && other.Kind == Intervals, "intervals apart");
                Not(other.Kind == Test && (apart == 0 || apart == 1 && (IsHeavy(one) || IsHard(one))), "tired for a test");
                if (apart != 0) continue;
                Not(IsGym(one) && IsGym(other), "twice in the gym");
                Not(IsConditioning(one) && IsConditioning(other), "two of conditioning");
                Not(IsStrength(one) && IsConditioning(other) || IsConditioning(one) && IsStrength(other), "strength and conditioning");
                Not(one.Kind == other.Kind, "twice");
                Not(one.Slot == other.Slot && other.Kind != Practice, "slot");
            }
        }
        foreach (var day in week.Days.Where(day => ours.Any(one => one.Day == day.Index)))
        {
            var (next, last) = (day.Around.ToNext ?? 99, day.Around.SinceLast ?? 99);
            var all = given.Concat(ours).Where(one => one.Day == day.Index).ToList();
            var points = 32;
            if (next == 1) points = Math.Min(points, 10);
            if (next == 2) points = Math.Min(points, 16);
            if (last == 1) points = Math.Min(points, 7);
            if (last == 2) points = Math.Min(points, 14);
            // Whole AU of the points, and of what events leave of them.
            var most = (int)Math.Floor(Math.Floor((points * week.Hundred + 50) / 100m) * day.Left / 100m);
            if (all.Sum(one => Math.Round(one.Minutes * one.Rpe, MidpointRounding.AwayFromZero)) > most) broken.Add($"load of day {day.Index}");
            if (next == 1 && all.Sum(one => one.Minutes) > 60) broken.Add($"minutes of day {day.Index}, before a match");
            if (day.IsTravel && all.Sum(one => one.Minutes) > 45) broken.Add($"minutes of day {day.Index}, a journey");
            if (all.Count > (week.Phase is PhaseKind.Competition or PhaseKind.Peak ? 2 : 3)) broken.Add($"sessions on day {day.Index}");
            if (all.Count(one => one.Kind != Practice) > 2) broken.Add($"ours on day {day.Index}");
        }
        WholeWeek(week, matches, ours, [.. given.Where(one => one.Day >= 0 && one.Day < week.Days.Count)], given, broken);
        return broken;
    }

    private static void WholeWeek(WeekProblem week, int matches, IReadOnlyList<WeekSession> ours, List<WeekSession> given, List<WeekSession> around, List<string> broken)
    {
        if (ours.Count == 0) return;
        var isCompetition = week.Phase is PhaseKind.Competition or PhaseKind.Peak;
        if (week.Kind == WeekKind.Transition && given.Concat(ours).Count(one => one.Kind != Practice) > 3) broken.Add("sessions of the transition");
        if (given.Count + ours.Count > (isCompetition ? 9 : 14)) broken.Add("sessions of the week");
        if (isCompetition && matches > 0 && ours.Any(IsStrength) && given.Concat(ours).Count(IsStrength) > (matches == 1 ? 2 : 1)) broken.Add("strength of the week");
        if (ours.Any(one => one.Kind == SmallDose) && given.Concat(ours).Count(one => one.Kind == SmallDose) > 1) broken.Add("small doses of the week");
        if (week.MostMinutes is { } minutes && given.Concat(ours).Sum(one => one.Minutes) > minutes) broken.Add("hours of the week");
        HashSet<int> before = [.. given.Select(one => one.Day)], after = [.. before, .. ours.Select(one => one.Day)];
        if (week.MostDays is { } days && after.Count > Math.Max(days, before.Count)) broken.Add("days of training");
        foreach (var (from, by) in new[] { (0, 6), (0, week.RestBy ?? 6), (week.RestFrom ?? 0, 6) })
        {
            bool IsFree(HashSet<int> trained) => week.Days.Any(day => day.Index >= from && day.Index <= by && day.Around.ToNext != 0 && !day.IsTravel && !day.IsTestDay && !trained.Contains(day.Index));
            if (IsFree(before) && !IsFree(after)) broken.Add($"a free day from {from} by {by}");
        }
        bool IsHardDay(int day) => week.MatchesBeside.Contains(day) || week.Days.Any(one => one.Index == day && one.Around.ToNext == 0) || around.Concat(ours).Any(one => one.Day == day && IsHard(one));
        foreach (var hard in ours.Where(IsHard))
            for (var first = hard.Day - 2; first <= hard.Day; first++)
                if (IsHardDay(first) && IsHardDay(first + 1) && IsHardDay(first + 2)) broken.Add($"hard days from {first}");
    }
}
