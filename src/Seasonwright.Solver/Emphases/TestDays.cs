using Seasonwright.Core;
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

    /// <summary>A test day gives way by so much at most. Common practice, no source.</summary>
    private const int Farthest = 14;

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

    /// <summary>Test days that stand and have to give way: each to the nearest day that is left to it, in a week made for tests before any other.</summary>
    public ValueList<MovedTest> Moved()
    {
        List<MovedTest> moved = [];
        foreach (var test in problem.Tests.Where(test => test.IsDisplaced))
        {
            var others = problem.Tests.Where(other => other.Id != test.Id).Select(other => moved.Find(one => one.Id == other.Id)?.To ?? other.Day).ToList();
            var free = Enumerable.Range(1, Farthest).SelectMany(away => new[] { test.Day.AddDays(-away), test.Day.AddDays(away) })
                .Select(day => (Day: day, Week: WeekOf(day))).Where(place => place.Week is not null && !IsLocked(test.Day) && !others.Exists(other => Math.Abs(other.DayNumber - place.Day.DayNumber) <= Farthest) && IsDay(place.Week.Index, place.Day)).ToList();
            moved.Add(new(test.Id, test.Day, free.OrderByDescending(place => IsPlace(place.Week!)).Select(place => (DateOnly?)place.Day).FirstOrDefault()));
        }
        return moved.ToValueList();
    }

    /// <summary>The week of a day that may hold tests and is free to be planned; what a repair leaves as it is may hold them too, a locked week may not.</summary>
    private StructureWeek? WeekOf(DateOnly day) =>
        problem.Weeks.FirstOrDefault(week => week.Index >= problem.FirstOpen && (!week.IsSettled || week.IsLeft) && week.Holds(day)) is { } planned
            && structure.Weeks[planned.Index] is var found && IsFit(found) && (IsPlace(found) || found.Kind.IsLoading()) ? found : null;

    private bool IsLocked(DateOnly day) => problem.Weeks.Any(week => week.Index >= problem.FirstOpen && week is { IsSettled: true, IsLeft: false } && week.Holds(day));

    private bool IsWeek(StructureWeek week) => IsPlace(week) && IsFit(week);

    /// <summary>A week of light load, or one after it.</summary>
    private bool IsPlace(StructureWeek week)
    {
        var before = week.Index > 0 ? structure.Weeks[week.Index - 1].Kind : (WeekKind?)null;
        return week.Kind is WeekKind.Introductory or WeekKind.ReEntry or WeekKind.Unloading || week.Kind.IsLoading() && before is WeekKind.Unloading or WeekKind.Reduced;
    }

    private bool IsFit(StructureWeek week) => problem.Weeks[week.Index].Matches.Count <= 1 && comparison.BuildingRunTo(week.Index) < TiredFrom && !IsHeavy(week.Index);

    private bool IsHeavy(int week)
    {
        const int weeks = 4;
        var trained = comparison.TrainedBefore(week, weeks);
        return trained.Count == weeks && comparison.SinceAbsence(week) >= weeks && 1000L * weeks * loads.Points[week] > problem.Limits.TestHeavy * trained.Sum(other => (long)loads.Points[other]);
    }

    /// <summary>Whether matches and events leave a day to tests that tire.</summary>
    public static bool IsLeft(Problem problem, DateOnly day)
    {
        if (problem.Weeks.Any(week => week.Closed.Contains(day) || week.Matches.Any(match => match.Date == day))) return false;
        var (hoursBefore, hoursAfter, toKey) = problem.Limits.TestDistance;
        return !problem.Weeks.SelectMany(week => week.Matches).Where(match => match.IsOfficial).Any(match => match.Date < day ? 24 * (day.DayNumber - match.Date.DayNumber) < hoursAfter
            : match.Date.DayNumber - day.DayNumber is var days && (24 * days < hoursBefore || match.IsKey && days <= toKey));
    }

    private bool IsDay(int week, DateOnly day)
    {
        if (!IsLeft(problem, day)) return false;
        if (week > 0 && problem.Weeks[week - 1].Matches is { Count: > 1 } many && day.DayNumber - many[^1].Date.DayNumber <= DaysAfterMany) return false;
        // A week off is an absence too, if a short one.
        if (problem.Weeks[week].DaysOff > 0 && day.DayNumber - problem.Weeks[week].First.DayNumber < FirstDaysBack - 1) return false;
        return comparison.FirstDayBack(week) is not { } back || day.DayNumber - back.DayNumber >= FirstDaysBack;
    }
}
