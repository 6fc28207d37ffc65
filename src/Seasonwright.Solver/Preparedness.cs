using Seasonwright.Core;

namespace Seasonwright.Solver;

/// <summary>
/// Preparedness (modelled): what training and matches before a match leave of fitness and fatigue on its day. A model of the group
/// with parameters from the literature, no measurement of anybody.
/// </summary>
/// <remarks>
/// Impulse-response model: Banister EW et al. 1975, Aust J Sports Med 7:57-61; Morton RH, Fitz-Clarke JR, Banister EW 1990, J Appl
/// Physiol 69(3):1171-1177. Time constants 42 and 7 days with weights 1 and 2 are later rounded values (from memory). The load of the
/// day itself does not count.
/// </remarks>
public static class Preparedness
{
    /// <summary>What one is in the numbers given here: a billionth of the steady state at 100 points a week. A per mille is a million of them.</summary>
    public const long PerMille = 1_000_000;

    private const double Fitness = 42, Fatigue = 7, FatigueWeight = 2;

    /// <summary>Days of a week without a match, from its start. Common practice, no source.</summary>
    private static readonly double[] WithoutMatch = [0.20, 0.18, 0.10, 0.20, 0.17, 0.15, 0];

    /// <summary>Weights of the days 1 to 4 before a match; farther away a day weighs 1.</summary>
    private static readonly double[] Before = [0.5, 0.8, 1.6, 1.5];

    /// <summary>The most that the days 1 and 2 after a match weigh.</summary>
    private static readonly double[] After = [0.35, 0.6];

    /// <summary>Effect, so many days later, of one unit of load: below 0 first, above 0 from the sixth day on.</summary>
    /// <param name="days">1 or more; 0 for what is not yet over.</param>
    public static double Kernel(int days) => days <= 0 ? 0 : Math.Exp(-days / Fitness) - FatigueWeight * Math.Exp(-days / Fatigue);

    /// <summary>The sum of the kernel over all days after: what one unit every day leaves.</summary>
    public static double SteadyState { get; } = 1 / (Math.Exp(1 / Fitness) - 1) - FatigueWeight / (Math.Exp(1 / Fatigue) - 1);

    /// <summary>The part of a week's training that falls on each of its seven days; they sum to 1. Days cut off a short first week have none.</summary>
    /// <param name="matchDays">Days of matches counted from this week's start, those of neighbouring weeks below 0 and above 6.</param>
    public static double[] DayShares(IReadOnlyCollection<int> matchDays, int days = 7)
    {
        var shares = new double[7];
        for (var day = 7 - days; day < 7; day++) shares[day] = matchDays.Any(match => match is >= 0 and < 7) ? Weight(matchDays, day) : WithoutMatch[day];
        var sum = shares.Sum();
        // Matches on every day, or a first week of one free day.
        if (sum <= 0) return [.. shares.Select((_, day) => day < 7 - days ? 0 : 1.0 / days)];
        return [.. shares.Select(share => share / sum)];
    }

    /// <summary>
    /// For each official match in order: what it has from matches and from the weeks before the season, and what a point of training
    /// in each week adds, in units of <see cref="PerMille"/>. Rounded here, once.
    /// </summary>
    public static ValueList<MatchPreparedness> Of(Problem problem)
    {
        if (problem.Weeks.Count == 0) return ValueList<MatchPreparedness>.Empty;
        var scale = 1000 * PerMille / (100.0 / 7 * SteadyState);
        var points = 100.0 / problem.Points.Hundred.Au;
        var matches = problem.Weeks.SelectMany(week => week.Matches).ToList();
        var allDays = matches.ConvertAll(match => match.Date.DayNumber);
        var shares = problem.Weeks.Select(week => DayShares([.. allDays.Select(day => day - WeekStart(week)).Where(day => day is > -7 and < 14)], week.Days)).ToList();
        var first = problem.Weeks[0].First.DayNumber;
        return problem.Weeks.SelectMany(week => week.Matches.Where(match => match.IsOfficial).Select(match =>
        {
            var day = match.Date.DayNumber;
            var before = Enumerable.Range(1, 28).Sum(back => problem.Start.PointsBefore() / 7.0 * Kernel(day - first + back));
            var played = matches.Sum(other => other.Au * points * Kernel(day - other.Date.DayNumber));
            var weeks = problem.Weeks.Select(other => Round(scale * Enumerable.Range(0, 7).Sum(at => shares[other.Index][at] * Kernel(day - WeekStart(other) - at))));
            return new MatchPreparedness(match, week.Index, Round(scale * (before + played)), weeks.ToValueList());
        })).ToValueList();
    }

    private static int WeekStart(PlannedWeek week) => week.First.DayNumber - 7 + week.Days;

    private static double Weight(IReadOnlyCollection<int> matchDays, int day)
    {
        if (matchDays.Contains(day)) return 0;
        var toNext = matchDays.Where(match => match > day).Select(match => match - day).DefaultIfEmpty(int.MaxValue).Min();
        var sinceLast = matchDays.Where(match => match < day).Select(match => day - match).DefaultIfEmpty(int.MaxValue).Min();
        var weight = toNext <= Before.Length ? Before[toNext - 1] : 1;
        return sinceLast <= After.Length ? Math.Min(weight, After[sinceLast - 1]) : weight;
    }

    private static long Round(double value) => (long)Math.Round(value, MidpointRounding.AwayFromZero);
}
