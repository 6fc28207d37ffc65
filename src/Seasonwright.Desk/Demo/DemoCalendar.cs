using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Desk.Demo;

/// <summary>Where the demo's weeks and days lie, and what its things are called in the log.</summary>
/// <param name="monday">First day of week 1.</param>
internal sealed class DemoCalendar(DateOnly monday, NaturalIds ids)
{
    public const int WeekCount = 47;

    public ValueList<WeekId> Weeks { get; } = Enumerable.Range(1, WeekCount).Select(ids.Week).ToValueList();

    public WeekId Week(int number) => Weeks[number - 1];

    public DateOnly Day(int week, DayOfWeek day) => monday.AddDays((7 * (week - 1)) + (((int)day + 6) % 7));

    public DaySpan Days(int firstWeek, DayOfWeek first, int lastWeek, DayOfWeek last) => new(Day(firstWeek, first), Day(lastWeek, last));

    public DaySpan Days(int week, DayOfWeek first, DayOfWeek last) => Days(week, first, week, last);

    public string Id(string kind, params ReadOnlySpan<string> key) => ids.Of(kind, key);
}
