using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver.Tests;

/// <summary>
/// The least cost of a small week by trying every layout: every set of sessions on its days, every length, everything they can carry,
/// everything that practice can be asked. Conditions are <see cref="WeekJudge"/>'s; prices and ranges are written out once more, as in
/// docs/planning-choices.md.
/// </summary>
internal sealed class WeekBruteForce(WeekProblem week)
{
    private static readonly Dictionary<SessionKind, (int Least, int Usual, int Most, int Rpe, QualityKind[] Own, QualityKind[] Carries, int Carried)> Ranges = new()
    {
        [SessionKind.LowerStrength] = (30, 55, 70, 7, [QualityKind.MaximumStrength], [QualityKind.Power, QualityKind.Hypertrophy, QualityKind.Prevention], 2),
        [SessionKind.SmallDose] = (20, 30, 40, 6, [QualityKind.MaximumStrength], [QualityKind.Power, QualityKind.Prevention], 2),
        [SessionKind.UpperStrength] = (25, 45, 60, 6, [QualityKind.MaximumStrength], [QualityKind.Hypertrophy, QualityKind.Prevention], 2),
        [SessionKind.Power] = (25, 40, 50, 5, [QualityKind.Power], [QualityKind.Prevention], 1),
        [SessionKind.Speed] = (20, 35, 50, 5, [QualityKind.Speed], [QualityKind.ChangeOfDirection, QualityKind.Power], 2),
        [SessionKind.Intervals] = (20, 40, 50, 8, [QualityKind.HighIntensityConditioning], [QualityKind.ChangeOfDirection], 1),
        [SessionKind.Endurance] = (30, 45, 75, 4, [QualityKind.AerobicConditioning], [], 0),
    };

    /// <summary>The most of its own work that fits a day, in minutes: portions, one more not reached.</summary>
    private int OwnMost(WeekDay day, SessionKind kind)
    {
        var isNear = (day.Around.ToNext ?? 99) <= 3 || week.Days.Count(one => one.Around.ToNext == 0) > 1;
        return kind switch
        {
            SessionKind.LowerStrength => isNear ? 10 + 5 * 7 - 1 : 10 + 5 * 11 - 1,
            SessionKind.SmallDose => 5 + 5 * 5 - 1,
            SessionKind.UpperStrength => 5 + 4 * 11 - 1,
            SessionKind.Power => isNear ? 10 + 5 * 6 - 1 : 10 + 5 * 8 - 1,
            SessionKind.Speed => 10 + 31 - 1,
            SessionKind.Intervals => 50,
            _ => 75,
        };
    }

    private long best = long.MaxValue;

    /// <summary>Layouts that keep every condition.</summary>
    public long Tried { get; private set; }

    public long Least()
    {
        List<List<List<WeekSession>>> days = [.. week.Days.Select(day => OnDay(day).ToList())];
        Try(days, 0, []);
        return best;
    }

    private void Try(List<List<List<WeekSession>>> days, int at, List<WeekSession> so)
    {
        if (at == days.Count)
        {
            if (WeekJudge.Of(week, so).Count > 0) return;
            Tried++;
            Asks(so, [], Practices(), CostOf(so));
            return;
        }
        foreach (var some in days[at]) Try(days, at + 1, [.. so, .. some]);
    }

    /// <summary>Nothing, one or two sessions; what no condition allows alone is left out at once.</summary>
    private IEnumerable<List<WeekSession>> OnDay(WeekDay day)
    {
        var one = week.Kinds.SelectMany(kind => Sessions(day, kind)).Where(session => WeekJudge.Of(week, [session]).Count == 0).ToList();
        yield return [];
        foreach (var session in one) yield return [session];
        for (var i = 0; i < one.Count; i++)
            for (var j = i + 1; j < one.Count; j++)
                if (one[i].Kind != one[j].Kind && !one[i].Qualities.Intersect(one[j].Qualities).Any()) yield return [one[i], one[j] with { Slot = DaySlot.Afternoon }];
    }

    private IEnumerable<WeekSession> Sessions(WeekDay day, SessionKind kind)
    {
        var (least, _, most, rpe, own, carries, carried) = Ranges[kind];
        if (kind == SessionKind.UpperStrength && day.SinceLast <= 1) rpe = 4;
        var isCongested = week.Days.Count(one => one.Around.ToNext == 0) > 1;
        QualityKind[] open = [.. carries.Where(quality => week.Asked[(int)quality] > 0 && !(quality == QualityKind.Hypertrophy && isCongested))];
        for (var mask = 0; mask < 1 << open.Length; mask++)
        {
            if (int.PopCount(mask) > carried) continue;
            List<QualityKind> some = [.. open.Where((_, at) => (mask & 1 << at) != 0)];
            var beside = some.Sum(quality => quality == QualityKind.Hypertrophy ? 10 : 5);
            int Up(int minutes) => (minutes + week.Step - 1) / week.Step * week.Step;
            int Down(int minutes) => minutes / week.Step * week.Step;
            // Lengths are whole steps; where the shortest is longer than the longest there is no session.
            if (Up(least) > Math.Min(Down(most), Down(OwnMost(day, kind)))) continue;
            for (var minutes = week.Step; minutes <= most; minutes += week.Step)
                if (minutes >= Up(least) + beside && minutes <= Down(Math.Min(most, OwnMost(day, kind))) + beside) yield return new WeekSession(day.Index, DaySlot.Morning, kind, minutes, rpe, [.. own, .. some]);
        }
    }

    private List<WeekSession> Practices() => [.. week.Given.Where(session => session.Kind == SessionKind.Practice && session.Day >= 0 && session.Day < week.Days.Count && session.Minutes >= 30 && session.Qualities.Count == 0)];

    private void Asks(List<WeekSession> so, List<(int Day, QualityKind Quality)> asked, List<WeekSession> left, long cost)
    {
        if (left.Count == 0)
        {
            best = Math.Min(best, cost + 6000 * asked.Count + Exposures(so, asked));
            return;
        }
        var (practice, rest) = (left[0], left[1..]);
        Asks(so, asked, rest, cost);
        foreach (var quality in new[] { QualityKind.Speed, QualityKind.ChangeOfDirection, QualityKind.HighIntensityConditioning })
            if (week.Asked[(int)quality] > 0 && CanBeAsked(so, asked, practice.Day, quality)) Asks(so, [.. asked, (practice.Day, quality)], rest, cost);
    }

    private bool CanBeAsked(List<WeekSession> so, List<(int Day, QualityKind Quality)> asked, int at, QualityKind quality)
    {
        var day = week.Days[at];
        var (next, last) = (day.Around.ToNext ?? 99, day.Around.SinceLast ?? 99);
        if (day.Left == 0 || next <= 1 || last <= 1) return false;
        if (so.Exists(one => one.Day == at && one.Qualities.Contains(quality))) return false;
        if (quality == QualityKind.Speed)
        {
            if (next > 4 && last <= 2) return false;
            if (so.Exists(one => one.Kind == SessionKind.Speed && Math.Abs(one.Day - at) == 1 || one.Kind == SessionKind.LowerStrength && (one.Day == at || one.Day == at - 1))) return false;
            return !asked.Exists(one => one.Quality == quality && Math.Abs(one.Day - at) < 2);
        }
        if (quality == QualityKind.HighIntensityConditioning)
            return next > 2 && last > 2 && !so.Exists(one => one.Kind == SessionKind.Intervals && Math.Abs(one.Day - at) == 1) && !asked.Exists(one => one.Quality == quality && Math.Abs(one.Day - at) < 2);
        return !asked.Exists(one => one.Quality == quality && one.Day == at);
    }

    private long Exposures(List<WeekSession> so, List<(int Day, QualityKind Quality)> asked)
    {
        long cost = 0;
        for (var quality = 0; quality < 8; quality++)
        {
            var has = so.Count(one => one.Qualities.Contains((QualityKind)quality)) + asked.Count(one => (int)one.Quality == quality);
            cost += 40_000L * Math.Max(0, week.Asked[quality] - has) + 3_000L * Math.Max(0, has - week.Asked[quality]);
        }
        return cost;
    }

    private long CostOf(List<WeekSession> so)
    {
        long cost = 0;
        foreach (var one in so)
        {
            var last = week.Days[one.Day].Around.SinceLast ?? 99;
            cost += 2_000 + 20L * Math.Abs(one.Minutes - Ranges[one.Kind].Usual);
            if (!Ranges[one.Kind].Own.Any(quality => week.Asked[(int)quality] > 0)) cost += 12_000;
            if (last == 2 && one.Kind is SessionKind.LowerStrength or SessionKind.Speed && last == 2) cost += 12_000;
            if (last <= 1) cost += 45_000;
        }
        List<WeekSession> all = [.. week.Given, .. so];
        double Day(WeekDay day) => all.Where(one => one.Day == day.Index).Sum(one => Au(one));
        // An AU has whole thousandths.
        cost += (long)Math.Abs(so.Sum(Au) - week.Ours!.Value) * (long)Math.Round(20_000 * 100m / week.Hundred, MidpointRounding.AwayFromZero);
        var shape = week.Days.Select(Share).ToList();
        var whole = (long)week.Ours.Value + week.Given.Sum(Au);
        if (shape.Sum() > 0)
            foreach (var day in week.Days.Where(day => Share(day) > 0)) cost += (long)Math.Abs(Day(day) - whole * Share(day) / shape.Sum()) * (long)Math.Round(1_000 * 100m / week.Hundred, MidpointRounding.AwayFromZero);
        bool IsHard(int at) => at >= 0 && at < week.Days.Count && week.Days[at].Around.ToNext == 0 || week.MatchesBeside.Contains(at) || all.Exists(one => one.Day == at && one.Rpe >= 7 && one.Minutes >= 20);
        bool IsHardAnyway(int at) => at >= 0 && at < week.Days.Count && week.Days[at].Around.ToNext == 0 || week.MatchesBeside.Contains(at) || week.Given.Any(one => one.Day == at && one.Rpe >= 7 && one.Minutes >= 20);
        for (var at = -1; at < week.Days.Count; at++)
            if (IsHard(at) && IsHard(at + 1) && !(IsHardAnyway(at) && IsHardAnyway(at + 1))) cost += 6_000;
        var legs = Math.Min(week.Phase == PhaseKind.Competition || week.Days.Any(day => day.Around.ToNext == 0) ? 1 : 2, Math.Max(week.Asked[0], week.Asked[1]));
        if (legs > 0 && week.Asked[1] > 1 && !so.Exists(one => one.Kind == SessionKind.LowerStrength)) cost += 10_000;
        if (week.Asked[(int)QualityKind.Speed] > 0 && !so.Exists(one => one.Kind == SessionKind.Speed)) cost += 70_000;
        cost += 20_000L * Math.Max(0, legs - so.Count(one => one.Kind is SessionKind.LowerStrength or SessionKind.SmallDose));
        bool IsUsed(WeekDay day) => day.Around.ToNext == 0 || all.Exists(one => one.Day == day.Index);
        // A weekend without a match is left free.
        bool IsWeekend(WeekDay day) => day.Date.DayOfWeek is DayOfWeek.Saturday or DayOfWeek.Sunday;
        if (!week.Days.Any(day => IsWeekend(day) && day.Around.ToNext == 0)) cost += 4_000L * week.Days.Count(day => IsWeekend(day) && so.Exists(one => one.Day == day.Index) && !week.Given.Any(one => one.Day == day.Index));
        var canBeFree = week.Days.Count(day => day.Around.ToNext != 0 && !week.Given.Any(one => one.Day == day.Index));
        if (canBeFree >= 2 && week.Days.Count(day => !IsUsed(day)) < 2) cost += 10_000;
        var loads = week.Days.Select(day => Day(day) + day.MatchAu).ToList();
        if (loads.Count(load => load * 7 * 100 <= 45 * loads.Sum()) < 2) cost += 60_000;
        return cost;
    }

    private static int Au(WeekSession one) => (int)Math.Round(one.Minutes * one.Rpe, MidpointRounding.AwayFromZero);

    private int Share(WeekDay day)
    {
        var (next, last) = (day.Around.ToNext ?? 99, day.Around.SinceLast ?? 99);
        if (next == 0 || day.Left == 0) return 0;
        if (!week.Days.Any(one => (one.Around.ToNext ?? 99) <= 4 || (one.Around.SinceLast ?? 99) <= 2)) return new[] { 20, 18, 10, 20, 17, 15, 0 }[day.Index];
        var share = next == 1 ? 50 : next == 2 ? 80 : next == 3 ? 160 : next == 4 ? 150 : 100;
        return last == 1 ? Math.Min(35, share) : last == 2 ? Math.Min(60, share) : share;
    }
}
