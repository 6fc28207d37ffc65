using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>Where a calendar has changed since a plan was made.</summary>
public static class Disruption
{
    /// <summary>The weeks that hold, or held, a match, an event or practices that are otherwise now, in order.</summary>
    public static ValueList<WeekId> Weeks(Season before, Season now)
    {
        List<DaySpan> days = [];
        HashSet<string> weeks = new(StringComparer.Ordinal);
        foreach (var change in Step.Between(before.Facts, now.Facts).Changes)
        {
            if (Equals(Weighs(change.Before), Weighs(change.After))) continue;
            foreach (var value in new[] { change.Before, change.After })
            {
                switch (value)
                {
                    case Match { Days: { } played }: days.Add(played); break;
                    case Event item: days.Add(item.Days); break;
                    case Practices: weeks.Add(change.Key.Subject); break;
                }
            }
        }
        return now.Weeks.Where(week => weeks.Contains(week.Id.Text) || days.Exists(span => span.First <= week.Days.Last && span.Last >= week.Days.First)).Select(week => week.Id).ToValueList();
    }

    /// <summary>The plan as it is now, with all that was changed by hand since, in the calendar that it was made for: what a repair keeps to.</summary>
    public static Season Undisrupted(Season before, Season now) =>
        now.With(new Step(Step.Between(now.Facts, before.Facts).Changes.Where(change => (change.Before ?? change.After) is Match or Event or Practices).ToValueList()));

    /// <summary>What of a match or an event a plan goes by: not its kick-off, its opponent or how it ended.</summary>
    private static object? Weighs(object? value) => value switch
    {
        Match { IsOff: false } match => (match.Days, match.Importance),
        Event item when Problem.Reads(item) => (item.Days, item.Training),
        Practices => value,
        _ => null,
    };
}
