namespace Seasonwright.Solver;

/// <summary>How a week's training usually spreads over its days. Working defaults (solver draft, 2.2): common practice, no source.</summary>
internal static class WeekShape
{
    private static readonly int[] WithoutMatch = [20, 18, 10, 20, 17, 15, 0];

    /// <summary>The share of each day, of their sum: a match, or one within four days, bends the week.</summary>
    public static int[] Of(WeekProblem problem)
    {
        var bends = problem.Days.Any(day => day.ToNext <= 4 || day.SinceLast <= 2);
        return [.. problem.Days.Select(day => day.IsMatch || day.IsClosed ? 0 : bends ? Around(day) : WithoutMatch[day.Index % 7])];
    }

    private static int Around(WeekDay day)
    {
        var share = day.ToNext switch { 1 => 50, 2 => 80, 3 => 160, 4 => 150, _ => 100 };
        return day.SinceLast switch { 1 => Math.Min(share, 35), 2 => Math.Min(share, 60), _ => share };
    }
}
