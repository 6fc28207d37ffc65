using Seasonwright.Core.Seasons;
using Seasonwright.Core;

namespace Seasonwright.Solver;

/// <summary>How long the squad is back from an absence, told from the calendar alone: the season's start, breaks and lost weeks. Transitions are the plan's and not known here.</summary>
/// <param name="Since">Training weeks since the last long absence before this one; far more than any limit where there was none.</param>
/// <param name="IsStart">The absence is the one before the season.</param>
public sealed record WeekBack(int Since, bool IsStart);

/// <summary>Reads them off a season.</summary>
public static class WeeksBack
{
    private const int Long = 1000;

    public static ValueList<WeekBack> Of(Problem problem)
    {
        var (since, isStart, hasTrained) = (problem.Start == StartLevel.Kept ? Long : 0, true, false);
        List<WeekBack> weeks = [];
        foreach (var week in problem.Weeks)
        {
            if (week.IsOff)
            {
                weeks.Add(new(since, isStart));
                continue;
            }
            if (week.DaysOff >= problem.Limits.AbsenceDays) (since, isStart) = (0, !hasTrained);
            weeks.Add(new(since++, isStart));
            hasTrained = true;
        }
        return weeks.ToValueList();
    }
}
