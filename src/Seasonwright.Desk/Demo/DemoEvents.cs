using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Desk.Demo;

/// <summary>What changes the demo's weeks and is no match, and the days it tests on.</summary>
internal static class DemoEvents
{
    public static IEnumerable<SeasonEdit> Of(DemoCalendar calendar) => [.. Events(calendar).Select(item => new SetEvent(item)), .. TestDays(calendar)];

    private static Event[] Events(DemoCalendar calendar)
    {
        EventId Id(string name) => new(calendar.Id("event", name));
        return
        [
            new(Id("camp"), EventKind.Camp, "Training camp", calendar.Days(5, DayOfWeek.Tuesday, DayOfWeek.Saturday), Training: new Percent(120), Place: "Askvale", Nights: 4,
                Legs: new([new Leg(calendar.Day(5, DayOfWeek.Tuesday), "Harbour Vale", "Askvale", new(9, 0), new(12, 30)), new Leg(calendar.Day(5, DayOfWeek.Saturday), "Askvale", "Harbour Vale", new(15, 0), new(18, 30))])),
            new(Id("sponsors"), EventKind.Other, "Sponsors' evening", calendar.Days(8, DayOfWeek.Thursday, DayOfWeek.Thursday), Part: "from 18:00", Training: new Percent(80)),
            new(Id("floor"), EventKind.RoomClosed, "Gym hall closed, new floor", calendar.Days(13, DayOfWeek.Monday, DayOfWeek.Wednesday), Training: new Percent(80), Place: "Gym hall"),
            new(Id("window-1"), EventKind.NationalTeamWindow, "National-team window", calendar.Days(17, DayOfWeek.Monday, DayOfWeek.Sunday), For: "four players", Training: new Percent(100)),
            Journey(calendar, 19, "Skeldby", 1),
            new(Id("break"), EventKind.Holiday, "Mid-season break", calendar.Days(25, DayOfWeek.Wednesday, 26, DayOfWeek.Sunday), Training: new Percent(30), Note: "Home programme, three sessions a week."),
            new(Id("room-break"), EventKind.RoomClosed, "Hall closed", calendar.Days(25, DayOfWeek.Friday, 26, DayOfWeek.Sunday), Place: "Main hall"),
            Journey(calendar, 31, "Navesby", 1),
            new(Id("window-2"), EventKind.NationalTeamWindow, "National-team window", calendar.Days(33, DayOfWeek.Monday, DayOfWeek.Sunday), For: "five players", Training: new Percent(100), Provisional: true),
            new(Id("exams"), EventKind.Exams, "Exams", calendar.Days(36, DayOfWeek.Monday, 37, DayOfWeek.Wednesday), For: "six students", Training: new Percent(70), Provisional: true),
            new(Id("finals-journey"), EventKind.Travel, "To the second final", calendar.Days(42, DayOfWeek.Saturday, DayOfWeek.Sunday), Training: new Percent(50), Provisional: true, Nights: 1),
            new(Id("leave"), EventKind.Holiday, "Leave", calendar.Days(44, DayOfWeek.Wednesday, 45, DayOfWeek.Sunday), Training: new Percent(30), Note: "Rest first, then easy running and swimming by choice."),
        ];
    }

    /// <summary>Out by coach the day before an away match and back after it.</summary>
    private static Event Journey(DemoCalendar calendar, int week, string place, int nights)
    {
        var leaving = calendar.Day(week, DayOfWeek.Friday);
        var back = calendar.Day(week, DayOfWeek.Saturday);
        return new Event(new(calendar.Id("event", "journey", place)), EventKind.Travel, $"To {place}", new(leaving, back), Training: new Percent(60), Place: place, Nights: nights,
            Legs: new([new Leg(leaving, "Harbour Vale", place, new(13, 0), new(17, 30)), new Leg(back, place, "Harbour Vale", new(19, 30), new(23, 59))]));
    }

    // Tiring tests lie in unloading weeks, 72 hours before a match and 48 hours after one (rule test-timing).
    private static SeasonEdit[] TestDays(DemoCalendar calendar) =>
    [
        Test(calendar, 1, DayOfWeek.Tuesday, "Movement screen, jumps"),
        Test(calendar, 4, DayOfWeek.Thursday, "Strength, sprint, intermittent running"),
        Test(calendar, 8, DayOfWeek.Monday, "Jumps, sprint"),
        Test(calendar, 16, DayOfWeek.Tuesday, "Strength, jumps, sprint"),
        Test(calendar, 28, DayOfWeek.Tuesday, "Strength, intermittent running"),
        Test(calendar, 36, DayOfWeek.Tuesday, "Strength, jumps"),
        Test(calendar, 40, DayOfWeek.Tuesday, "Jumps"),
        Test(calendar, 44, DayOfWeek.Tuesday, "End of season: screen, jumps"),
    ];

    private static SetTestDay Test(DemoCalendar calendar, int week, DayOfWeek day, string battery) =>
        new(new TestDay(new(calendar.Id("test", battery, $"{week}")), calendar.Day(week, day), battery, Part: "morning"));
}
