using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>Weeks and days on which tests that tire may lie (test-timing, return-after-break-strength).</summary>
internal sealed class TestDays(Problem problem, Structure structure, LoadPlan loads, Comparison comparison)
{
    /// <summary>Planning preferences, no source.</summary>
    public const int WeeksApart = 4, FirstWeeks = 2, WeeksBeforeCompetition = 3, Window = 12;

    /// <summary>test-timing: from this building week in a row on a squad is tired.</summary>
    private const int TiredFrom = 3;

    /// <summary>return-after-break-strength: no tests on the first days back.</summary>
    private const int FirstDaysBack = 4;

    /// <summary>Days after a week of two matches or more before which nobody is tested. Common practice, no source.</summary>
    private const int DaysAfterMany = 3;

    /// <summary>Days of the week in order of preference: after the weekend's day of rest, early in the week.</summary>
    private static readonly int[] Preferred = [1, 2, 0, 3, 4, 5, 6];

    /// <summary>The best day of every week that has one.</summary>
    public IEnumerable<(DateOnly Day, int Week)> All()
    {
        foreach (var week in structure.Weeks.Where(week => week.Index >= problem.FirstOpen && !problem.Weeks[week.Index].IsSettled && IsWeek(week)))
        {
            var planned = problem.Weeks[week.Index];
            var days = Preferred.Where(day => day >= 7 - planned.Days).Select(day => planned.First.AddDays(day - 7 + planned.Days)).Where(day => IsDay(week.Index, day)).ToList();
            if (days.Count > 0) yield return (days[0], week.Index);
        }
    }

    private bool IsWeek(StructureWeek week)
    {
        var before = week.Index > 0 ? structure.Weeks[week.Index - 1].Kind : (WeekKind?)null;
        if (problem.Weeks[week.Index].Matches.Count > 1) return false;
        var isPlace = week.Kind is WeekKind.Introductory or WeekKind.ReEntry or WeekKind.Unloading || week.Kind.IsLoading() && before is WeekKind.Unloading or WeekKind.Reduced;
        return isPlace && comparison.BuildingRunTo(week.Index) < TiredFrom && !IsHeavy(week.Index);
    }

    private bool IsHeavy(int week)
    {
        const int weeks = 4;
        var trained = comparison.TrainedBefore(week, weeks);
        return trained.Count == weeks && comparison.SinceAbsence(week) >= weeks && 1000L * weeks * loads.Points[week] > problem.Limits.TestHeavy * trained.Sum(other => (long)loads.Points[other]);
    }

    private bool IsDay(int week, DateOnly day)
    {
        if (problem.Weeks[week] is var planned && (planned.Closed.Contains(day) || planned.Matches.Any(match => match.Date == day))) return false;
        var (hoursBefore, hoursAfter, toKey) = problem.Limits.TestDistance;
        var official = problem.Weeks.SelectMany(other => other.Matches).Where(match => match.IsOfficial).ToList();
        if (official.Exists(match => match.Date >= day && 24 * (match.Date.DayNumber - day.DayNumber) < hoursBefore || match.Date < day && 24 * (day.DayNumber - match.Date.DayNumber) < hoursAfter)) return false;
        if (week > 0 && problem.Weeks[week - 1].Matches is { Count: > 1 } many && day.DayNumber - many[^1].Date.DayNumber <= DaysAfterMany) return false;
        if (official.Exists(match => match.IsKey && match.Date >= day && match.Date.DayNumber - day.DayNumber <= toKey)) return false;
        // A week off is an absence too, if a short one.
        if (problem.Weeks[week].DaysOff > 0 && day.DayNumber - problem.Weeks[week].First.DayNumber < FirstDaysBack - 1) return false;
        return comparison.FirstDayBack(week) is not { } back || day.DayNumber - back.DayNumber >= FirstDaysBack;
    }
}
