using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

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

        SetSession Put(int week, DayOfWeek day, TimeOnly start, SessionKind kind, int minutes, decimal rpe, string place) => new(At(calendar, week, day, start, kind, minutes, rpe, place) with { Workout = DemoWorkouts.For(kind) });
    }

    /// <summary>A week of the competition around a match on Saturday, as the team lays it out when nothing is against it; taken from week 18.</summary>
    public static SetTypicalWeek OneMatch(DemoCalendar calendar)
    {
        Session[] sessions =
        [
            .. new[] { DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday }.Select(day => At(calendar, 18, day, new(18, 30), SessionKind.Practice, 80, 5m, Hall)),
            At(calendar, 18, DayOfWeek.Monday, new(17, 0), SessionKind.UpperStrength, 45, 6m, Gym),
            At(calendar, 18, DayOfWeek.Tuesday, new(17, 45), SessionKind.Speed, 30, 5m, Hall),
            At(calendar, 18, DayOfWeek.Wednesday, new(9, 30), SessionKind.LowerStrength, 55, 7m, Gym),
            At(calendar, 18, DayOfWeek.Friday, new(18, 0), SessionKind.Activation, 20, 3m, Hall),
        ];
        return new(new TypicalWeek(new("one-match-saturday"), "One match, Saturday", new DaySpan(calendar.Day(18, DayOfWeek.Monday), calendar.Day(18, DayOfWeek.Sunday)), [calendar.Day(18, DayOfWeek.Saturday)], sessions.ToValueList(), PhaseKind.Competition));
    }

    private static Session At(DemoCalendar calendar, int week, DayOfWeek day, TimeOnly start, SessionKind kind, int minutes, decimal rpe, string place) => new(
        new(calendar.Id("session", $"{week}", $"{day}", $"{kind}")), calendar.Day(week, day), start.Hour < 12 ? DaySlot.Morning : start.Hour < 18 ? DaySlot.Afternoon : DaySlot.Evening, kind, new Minutes(minutes), new Rpe(rpe), Start: start, Place: place);
}
