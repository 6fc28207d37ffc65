using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>Which weeks are tapers: told from the calendar and the wishes alone.</summary>
public static class Tapers
{
    /// <summary>A taper lies in the match's own week from its fifth day on, else in the week before, so that four to seven days are reduced.</summary>
    private const int DayOfOwnWeek = 4;

    /// <summary>Matches so close before another belong to it, as in a tournament.</summary>
    private const int DaysOfTournament = 2;

    /// <summary>With more match-free training days than these before the match, a full taper fits. Bosquet L et al. 2007, Med Sci Sports Exerc 39(8):1358-1365: two weeks worked best.</summary>
    private const int DaysForFull = 10;

    /// <summary>taper-length: a squad loses what it has trained for when it is kept fresh for longer.</summary>
    private const int MostWeeks = 3;

    /// <summary>
    /// The part of a taper that each week is, by its index; <see cref="Variant.None"/> for the others. Key matches close together are
    /// one cluster: the first of them is tapered for, and the taper is held until the last where both take three weeks at most. Going back from the last cluster, those are kept that fit the most tapers and
    /// their distance; what the coach asks for or refuses goes before.
    /// </summary>
    public static ValueList<Variant> Of(Problem problem)
    {
        var parts = new Variant[problem.Weeks.Count];
        var back = WeeksBack.Of(problem);
        foreach (var (own, match, style, last) in Wanted(problem, back))
        {
            var week = WeekFor(own, match);
            // A longer taper must not begin too soon after the one before.
            var before = Array.FindLastIndex(parts, part => part != Variant.None);
            while (before > 0 && parts[before - 1] is Variant.FullEarlier or Variant.BeforeMany) before--;
            var held = last > own ? Enumerable.Range(week + 1, last - week).ToList() : [];
            var isFree = MayTaper(problem, back, week - 1) && parts[week - 1] == Variant.None && (style is not null || HasTrained(problem, back, week - 1) && (before < 0 || week - 1 - before >= problem.Limits.WeeksBetweenPeaks));
            // Where other matches lead up to it, the reduced days lie before them all.
            var isAmongMany = week == own && problem.Weeks[own].Matches.Any(other => other.Date < match.Date && other.Date.DayNumber >= match.Date.DayNumber - DaysOfTournament);
            var isFull = (style ?? (DaysBefore(problem, back, match) > DaysForFull && held.Count + 2 <= MostWeeks ? TaperStyle.Full : TaperStyle.Short)) == TaperStyle.Full;
            var isLong = isFree && (isFull || isAmongMany);
            if (isLong) parts[week - 1] = isAmongMany ? Variant.BeforeMany : Variant.FullEarlier;
            if (held.Count + (isLong ? 2 : 1) > MostWeeks || !held.TrueForAll(other => MayTaper(problem, back, other))) held.Clear();
            foreach (var earlier in held) parts[earlier - 1] = Variant.FullEarlier;
            parts[week + held.Count] = isLong || held.Count > 0 ? Variant.FullLast : Variant.Short;
        }
        return [.. parts];
    }

    /// <summary>The first match of each cluster that is tapered for, with its week, the style asked for and the week of the cluster's last match. Key matches that cannot be tapered for stand aside.</summary>
    private static IEnumerable<(int Week, PlannedMatch Match, TaperStyle? Style, int Last)> Wanted(Problem problem, ValueList<WeekBack> back)
    {
        List<(int Week, PlannedMatch Match, TaperStyle? Style, int Last)> clusters = [];
        PlannedMatch? before = null;
        foreach (var (week, match) in problem.Weeks.SelectMany(week => week.Matches.Where(match => match.IsKey && MayTaper(problem, back, WeekFor(week.Index, match))).Select(match => (week.Index, match))))
        {
            var said = problem.Tapers.LastOrDefault(wish => wish.Match == match.Id)?.Style;
            if (said is null && !HasTrained(problem, back, WeekFor(week, match))) continue;
            if (before is null || match.Date.DayNumber - before.Date.DayNumber > problem.Limits.ClusterDays) clusters.Add((week, match, said, week));
            else clusters[^1] = clusters[^1] with { Style = said ?? clusters[^1].Style, Last = week };
            before = match;
        }
        var kept = clusters.Where(cluster => cluster.Style is TaperStyle.Short or TaperStyle.Full).ToList();
        foreach (var cluster in clusters.Where(cluster => cluster.Style is null).Reverse())
            if (kept.Count < problem.Limits.Peaks && kept.TrueForAll(other => Math.Abs(other.Match.Date.DayNumber - cluster.Match.Date.DayNumber) >= 7 * problem.Limits.WeeksBetweenPeaks)) kept.Add(cluster);
        return kept.OrderBy(cluster => cluster.Match.Date);
    }

    private static int WeekFor(int own, PlannedMatch match) => match.Day >= DayOfOwnWeek ? own : own - 1;

    /// <summary>No taper where nobody trains, in a week back, or before anything was trained.</summary>
    private static bool MayTaper(Problem problem, ValueList<WeekBack> back, int week) =>
        week > 0 && !problem.Weeks[week].IsOff && problem.Weeks[week].DaysOff == 0 && back[week].Since >= 2;

    /// <summary>
    /// A taper cuts what a squad has got used to. After a long absence in the season that is nothing before so many ordinary weeks as its
    /// size is held against lie between the first ones back and it: the squad is fresh and still rising, and a cut from what the weeks
    /// before the absence held would be more than it has done since. Common practice, no source. Who asks for one has it.
    /// </summary>
    private static bool HasTrained(Problem problem, ValueList<WeekBack> back, int week) =>
        back[week].IsStart || problem.Weeks.Take(week).Reverse().TakeWhile(other => back[other.Index].Since > 0)
            .Count(other => !other.IsBreak && !other.IsReduced && back[other.Index].Since >= Comparison.WeeksBack) >= Comparison.WeeksBeforeTaper;

    /// <summary>Days without a match that end on the day before this one, back to the last match, break, week back or reduced week.</summary>
    private static int DaysBefore(Problem problem, ValueList<WeekBack> back, PlannedMatch match)
    {
        var days = 0;
        for (var day = match.Date.AddDays(-1); ; day = day.AddDays(-1), days++)
        {
            var week = problem.Weeks.LastOrDefault(other => other.First <= day);
            if (week is null || week.IsReduced || !MayTaper(problem, back, week.Index) || week.Matches.Any(other => other.Date == day)) return days;
        }
    }
}
