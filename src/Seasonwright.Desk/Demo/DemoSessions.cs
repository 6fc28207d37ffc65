using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Desk.Demo;

/// <summary>The demo's week of today and the next one, laid out on their days: the head coach's practices in the evening hall, ours around them. Practices are as many, as long and as hard as the week's table says.</summary>
internal static class DemoSessions
{
    private const string Hall = "Sports hall", Gym = "Gym";

    public static IEnumerable<SeasonEdit> Of(DemoCalendar calendar)
    {
        foreach (var day in new[] { DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday }) yield return Put(16, day, new(18, 30), SessionKind.Practice, 60, 4.5m, Hall);
        yield return Put(16, DayOfWeek.Monday, new(17, 0), SessionKind.UpperStrength, 45, 6m, Gym);
        yield return Put(16, DayOfWeek.Tuesday, new(10, 0), SessionKind.Test, 75, 5m, Gym);
        yield return Put(16, DayOfWeek.Friday, new(18, 0), SessionKind.Activation, 20, 3m, Hall);

        foreach (var day in new[] { DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Thursday, DayOfWeek.Friday }) yield return Put(17, day, new(18, 30), SessionKind.Practice, 85, 5m, Hall);
        yield return Put(17, DayOfWeek.Tuesday, new(17, 45), SessionKind.Speed, 35, 5m, Hall);
        yield return Put(17, DayOfWeek.Thursday, new(9, 30), SessionKind.LowerStrength, 55, 7m, Gym);
        yield return Put(17, DayOfWeek.Friday, new(9, 30), SessionKind.UpperStrength, 45, 6m, Gym);
        yield return Put(17, DayOfWeek.Saturday, new(10, 0), SessionKind.Intervals, 40, 8m, Hall);

        SetSession Put(int week, DayOfWeek day, TimeOnly start, SessionKind kind, int minutes, decimal rpe, string place) => new(new Session(
            new(calendar.Id("session", $"{week}", $"{day}", $"{kind}")), calendar.Day(week, day), start.Hour < 12 ? DaySlot.Morning : start.Hour < 18 ? DaySlot.Afternoon : DaySlot.Evening, kind, new Minutes(minutes), new Rpe(rpe), Start: start, Place: place));
    }
}
