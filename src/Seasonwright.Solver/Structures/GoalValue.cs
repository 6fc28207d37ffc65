using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>What a week in a phase can do for the goals: the share it adds to the stock of each quality on the season's key matches, at the most that the phase allows.</summary>
internal static class GoalValue
{
    private const long Worth = 3 * Solver.Worth.Point;

    /// <summary>Days in which a quality falls to e^-1 of itself without training. Common practice, no source.</summary>
    public static readonly int[] Lasting = [60, 60, 28, 21, 21, 28, 60];

    /// <summary>The value of a loading week, by its index and phase, in units.</summary>
    public static Func<int, PhaseKind, long> Of(Problem problem)
    {
        var aims = Aims(problem);
        return (week, phase) =>
        {
            if (aims.Count == 0) return 0;
            var middle = problem.Weeks[week].First.DayNumber + problem.Weeks[week].Days / 2;
            var sum = problem.Goals.Sum(goal => goal.Weight / 100.0 * ExposureTable.Most(phase, (int)goal.Quality) * aims.Where(day => day > middle).Sum(day => Math.Exp((double)(middle - day) / Lasting[(int)goal.Quality])) / aims.Count / Full((int)goal.Quality));
            return (long)Math.Round(Worth * 1000 * sum, MidpointRounding.AwayFromZero);
        };
    }

    /// <summary>Eight weeks at three exposures: the stock that counts as full.</summary>
    public static double Full(int quality) => 3 * Enumerable.Range(0, 8).Sum(week => Math.Exp(-7.0 * week / Lasting[quality]));

    /// <summary>The first days of the clusters of key matches; without any the last official match of each period, without those the season's end.</summary>
    public static List<int> Aims(Problem problem)
    {
        List<int> days = [];
        var last = int.MinValue;
        foreach (var day in problem.Weeks.SelectMany(week => week.Matches).Where(match => match.IsKey).Select(match => match.Date.DayNumber))
        {
            if (last == int.MinValue || day - last > problem.Limits.ClusterDays) days.Add(day);
            last = day;
        }
        if (days.Count == 0) days.AddRange(problem.Cycles.Where(cycle => cycle.First <= cycle.Last).Select(cycle => problem.Weeks[cycle.Last].Matches.Last(match => match.IsOfficial).Date.DayNumber));
        if (days.Count == 0 && problem.Weeks.Count > 0) days.Add(problem.Weeks[^1].First.DayNumber + 6);
        return days;
    }
}
