using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Desk.Demo;

/// <summary>
/// What each week of the demo is for, how hard it is and how often the head coach practises in it. Targets are per cent of a
/// normal hard week, entered as AU. They keep to the rulebook's defaults, so that Check finds what the calendar brings about and little else.
/// </summary>
internal static class DemoWeeks
{
    private static readonly (int Week, WeekKind Kind, int Percent, int Practices, int Minutes, decimal Rpe)[] Table =
    [
        (1, WeekKind.Introductory, 50, 2, 75, 5m), (2, WeekKind.Building, 55, 3, 75, 5m), (3, WeekKind.Building, 60, 3, 80, 5m), (4, WeekKind.Unloading, 38, 2, 60, 4.5m),
        (5, WeekKind.Building, 65, 4, 75, 5m), (6, WeekKind.Building, 71, 4, 80, 5m), (7, WeekKind.Overload, 76, 4, 80, 5m), (8, WeekKind.Unloading, 49, 3, 60, 4.5m),

        (9, WeekKind.Competition, 72, 3, 80, 5m), (10, WeekKind.Competition, 78, 3, 80, 5m), (11, WeekKind.Overload, 80, 3, 85, 5m), (12, WeekKind.Unloading, 65, 3, 60, 4.5m),
        (13, WeekKind.Competition, 76, 3, 80, 5m), (14, WeekKind.Congested, 74, 2, 75, 4.5m), (15, WeekKind.Overload, 78, 3, 80, 5m), (16, WeekKind.Unloading, 66, 3, 60, 4.5m),
        (17, WeekKind.Building, 82, 4, 85, 5m), (18, WeekKind.Competition, 80, 3, 80, 5m), (19, WeekKind.Overload, 84, 3, 85, 5m), (20, WeekKind.Congested, 78, 2, 75, 4.5m),
        (21, WeekKind.Unloading, 68, 3, 60, 4.5m),
        (22, WeekKind.Competition, 76, 3, 80, 5m), (23, WeekKind.Overload, 80, 3, 85, 5m), (24, WeekKind.Unloading, 66, 3, 60, 4.5m),

        (25, WeekKind.Break, 45, 2, 75, 5m), (26, WeekKind.Break, 35, 0, 0, 0m),
        (27, WeekKind.ReEntry, 39, 3, 75, 5m), (28, WeekKind.ReEntry, 55, 3, 80, 5m),

        (29, WeekKind.Competition, 63, 3, 80, 5m), (30, WeekKind.Competition, 70, 3, 80, 5m), (31, WeekKind.Overload, 73, 3, 80, 5m), (32, WeekKind.Taper, 56, 3, 50, 4.5m),
        (33, WeekKind.Building, 80, 4, 85, 5m), (34, WeekKind.Overload, 82, 3, 85, 5m), (35, WeekKind.Congested, 76, 2, 75, 4.5m), (36, WeekKind.Unloading, 64, 3, 60, 4.5m),
        (37, WeekKind.Competition, 78, 3, 80, 5m), (38, WeekKind.Congested, 76, 2, 75, 4.5m), (39, WeekKind.Unloading, 66, 3, 60, 4.5m),

        (40, WeekKind.Overload, 78, 3, 80, 5m), (41, WeekKind.Taper, 54, 3, 50, 4m), (42, WeekKind.Taper, 68, 2, 50, 4m), (43, WeekKind.Taper, 48, 3, 50, 4m),

        (44, WeekKind.Transition, 20, 0, 0, 0m), (45, WeekKind.Transition, 25, 0, 0, 0m), (46, WeekKind.Transition, 30, 0, 0, 0m), (47, WeekKind.Transition, 35, 0, 0, 0m),
    ];

    public static IEnumerable<SeasonEdit> Of(DemoCalendar calendar)
    {
        var reference = ReferenceWeek;
        foreach (var (first, last, kind) in Runs(row => row.Kind)) yield return new SetWeekKind(calendar.Week(first), calendar.Week(last), kind);
        foreach (var (first, last, percent) in Runs(row => row.Percent))
            yield return new SetWeekLoad(calendar.Week(first), calendar.Week(last), Load.FromPercent(new Percent(percent), reference));
        foreach (var (first, last, (count, minutes, rpe)) in Runs(row => (row.Practices, row.Minutes, row.Rpe)))
            yield return new SetPractices(calendar.Week(first), calendar.Week(last), count == 0 ? new Practices(0) : new Practices(count, new Minutes(minutes), new Rpe(rpe)));
    }

    /// <summary>The weeks whose sessions are laid out: those done and the one of today.</summary>
    public static IEnumerable<SeasonEdit> LaidOut(DemoCalendar calendar) =>
        [new MarkReady(calendar.Week(1), calendar.Week(DemoSeason.WeekOfToday), true), new LockWeeks(calendar.Week(1), calendar.Week(8), true)];

    private static Load ReferenceWeek => DemoTeam.Setup.OfType<SetUsualWeek>().Single().Week.Load;

    /// <summary>Neighbouring weeks with one value, as one stroke of the pointer.</summary>
    private static IEnumerable<(int First, int Last, T Value)> Runs<T>(Func<(int Week, WeekKind Kind, int Percent, int Practices, int Minutes, decimal Rpe), T> valueOf)
    {
        var first = Table[0];
        var last = first;
        foreach (var row in Table.Skip(1))
        {
            if (!Equals(valueOf(row), valueOf(first)))
            {
                yield return (first.Week, last.Week, valueOf(first));
                first = row;
            }
            last = row;
        }
        yield return (first.Week, last.Week, valueOf(first));
    }
}
