using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>
/// Practices where the head coach has named no days: the number that was entered, or that makes up the usual load, on days on which
/// squads practise. They are assumed, and told as such. Common practice, no source.
/// </summary>
internal static class AssumedPractices
{
    private const int Least = 20, OneStep = 5;

    /// <param name="au">What the practices of the week load together.</param>
    /// <param name="restBy">Index of the day by which one is to be free; null for any of the week's.</param>
    public static List<WeekSession> Of(Season season, Setup setup, SeasonWeek week, ValueList<WeekDay> days, int au, DaySlot slot, WeekLimits limits, int? restBy)
    {
        var usual = SessionUse.Of(SessionKind.Practice, setup);
        var entered = season.PracticesOf(week.Id);
        var open = days.Where(day => !day.IsMatch && !day.IsClosed && !day.IsTravel).ToList();
        var rpe = Math.Max(1, (entered?.Rpe ?? usual.Rpe).Value);
        var habits = Habits(season, week);
        var tests = season.TestDays.Select(test => test.Day).ToHashSet();
        if (au == 0 || open.Count == 0) return [];
        if (entered is not null)
        {
            // One day is left free, and more practices than days are twice a day.
            var named = Best(Math.Clamp(days.Count(day => day.CanBeFree) - 1, 1, Math.Min(open.Count, Math.Max(1, entered.Count))));
            return [.. named.Concat(named).Take(entered.Count).Select((day, at) => Practice(day, (entered.Minutes ?? usual.Minutes).Value) with { Slot = at < named.Count ? slot : WeekSlots.BeforePractice(slot) })];
        }
        // As few as hold the load, each no longer than usual and within its day.
        for (var count = 1; ; count++)
        {
            var chosen = Best(count);
            var most = chosen.ConvertAll(day => Math.Min(usual.Minutes.Value, (int)(setup.ReferenceWeek.Au * WeekLimits.PointsOf(day) / 100 / RpeOn(day))));
            if (count < Math.Min(open.Count, setup.UsualWeek.Practices.Count) && chosen.Zip(most, (day, minutes) => minutes * RpeOn(day)).Sum() < au) continue;
            return [.. chosen.Zip(Lengths(chosen.ConvertAll(Weight), most, au / rpe), Practice)];
        }

        List<WeekDay> Best(int count) => Chosen(open, count).MinBy(some => Cost(some, days, habits, tests, restBy))!;

        // Light on the day before a match, after one and after a far journey (day-before-match-heavy, day-after-match-hard, travel-day-load).
        decimal RpeOn(WeekDay day) => new[] { rpe, day.ToNext == 1 ? limits.RpeBefore : rpe, day.SinceLast <= limits.HardAfter ? limits.RpeAfter : rpe, day.Travel == WeekTravel.After ? limits.TravelRpe : rpe }.Min();

        WeekSession Practice(WeekDay day, int length) => new(day.Index, slot, SessionKind.Practice, Math.Clamp(day.ToNext == 1 ? Math.Min(length, limits.MinutesBefore) : length, Least, Session.MostMinutes), Math.Max(1, RpeOn(day)), ValueList<QualityKind>.Empty) { IsAssumed = true };
    }

    /// <summary>Minutes by weight; what one day cannot hold goes to the others, as far as they can.</summary>
    private static List<int> Lengths(List<int> weights, List<int> most, decimal minutes)
    {
        var lengths = weights.ConvertAll(_ => 0m);
        for (var left = minutes; left > 1;)
        {
            var open = Enumerable.Range(0, weights.Count).Where(at => lengths[at] < most[at]).ToList();
            if (open.Count == 0) break;
            var (part, sum) = (left, open.Sum(at => weights[at]));
            foreach (var at in open)
            {
                var more = Math.Min(most[at] - lengths[at], part * weights[at] / sum);
                (lengths[at], left) = (lengths[at] + more, left - more);
            }
        }
        return lengths.ConvertAll(length => (int)Math.Round(length / OneStep) * OneStep);
    }

    /// <summary>The share of a full practice on a day, in per cent: the shares of training by day (solver draft, 2.2), no day more than a full one.</summary>
    private static int Weight(WeekDay day) => new[] { day.ToNext == 1 ? 50 : 100, day.ToNext == 2 ? 80 : 100, day.SinceLast == 1 ? 35 : 100, day.SinceLast == 2 ? 60 : 100 }.Min();

    private static IEnumerable<List<WeekDay>> Chosen(List<WeekDay> open, int count)
    {
        for (var mask = 0; mask < 1 << open.Count; mask++)
            if (int.PopCount(mask) == count) yield return [.. open.Where((_, at) => (mask & 1 << at) != 0)];
    }

    /// <summary>Not on the day after a match, seldom on the one before, apart from each other, and on the weekdays of weeks that are known.</summary>
    private static int Cost(List<WeekDay> days, ValueList<WeekDay> week, Dictionary<DayOfWeek, int> habits, HashSet<DateOnly> tests, int? restBy)
    {
        var cost = days.Sum(day => (day.SinceLast == 1 ? 60 : 0) + (day.ToNext == 1 ? 15 : 0) + (day.SinceLast == 2 ? 8 : 0) + (day.Left < 100 ? (100 - day.Left) / 4 : 0) + (day.IsPast ? 1 : 0) + (tests.Contains(day.Date) ? 20 : 0) + (day.Travel == WeekTravel.After ? 30 : 0)
            - 10 * habits.GetValueOrDefault(day.Date.DayOfWeek) + (day.Index == week.Count - 1 ? 12 : 0) + (day.Index == week.Count - 2 ? 4 : 0));
        if (restBy is { } by && !week.Any(day => day.Index <= by && day.CanBeFree && !days.Contains(day))) cost += 200;
        for (var at = 1; at < days.Count; at++) cost += (days[at].Index - days[at - 1].Index) switch { 1 => 10, 2 => 0, var gap => 2 * (gap - 2) };
        return cost;
    }

    /// <summary>How often each weekday held a practice in the last four weeks before that name the days.</summary>
    private static Dictionary<DayOfWeek, int> Habits(Season season, SeasonWeek week) => season.Weeks.Take(week.Number - 1)
        .Select(before => season.SessionsIn(before).Where(session => session is { IsOurs: false, IsCancelled: false }).Select(session => session.Day.DayOfWeek).Distinct().ToList())
        .Where(known => known.Count > 0).TakeLast(4).SelectMany(known => known).GroupBy(day => day).ToDictionary(day => day.Key, day => day.Count());
}
