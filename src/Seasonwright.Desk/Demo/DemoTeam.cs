using System.Collections.Immutable;
using System.Globalization;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Desk.Demo;

/// <summary>Who the demo's people are and what they agreed on.</summary>
internal static class DemoTeam
{
    private static readonly (string Name, StaffRole Role)[] Everyone =
    [
        ("Runa Eskdale", StaffRole.HeadCoach),
        ("Hedda Quill", StaffRole.AssistantCoach),
        ("Tove Marrin", StaffRole.StrengthAndConditioning),
        ("Siri Fenwold", StaffRole.Physiotherapist),
    ];

    /// <summary>3,620 AU in a normal hard week, 825 AU a match. Common practice, no source.</summary>
    public static ImmutableArray<SetupEdit> Setup { get; } =
    [
        new SetTeamName(DemoSeason.TeamName),
        new SetLocale(new LocaleSettings(Zone: "Europe/Copenhagen")),
        new SetUsualWeek(new UsualWeek(
            new Sessions(4, new Minutes(90), new Rpe(5.5m)),
            new Sessions(3, new Minutes(60), new Rpe(6m)),
            new Sessions(2, new Minutes(40), new Rpe(7m)))),
        new SetMatchLoad(new MatchLoad(new Minutes(110), new Rpe(7.5m), new Rpe(5m))),
    ];

    public static TeamCard Card(DemoCalendar calendar)
    {
        var first = calendar.Day(1, DayOfWeek.Monday).Year;
        var last = calendar.Day(DemoCalendar.WeekCount, DayOfWeek.Sunday).Year;
        var title = first == last ? first.ToString(CultureInfo.InvariantCulture) : string.Create(CultureInfo.InvariantCulture, $"{first}-{last % 100:00}");
        return new TeamCard(DemoSeason.TeamName, title, "HV", "#0f5f63", "Women's handball");
    }

    public static ImmutableDictionary<PersonId, string> People(DemoCalendar calendar) =>
        Everyone.ToImmutableDictionary(person => Id(calendar, person.Name), person => person.Name);

    public static IEnumerable<SeasonEdit> Staff(DemoCalendar calendar) =>
        Everyone.Select(person => new SetStaff(Id(calendar, person.Name), person.Role));

    public static IEnumerable<SeasonEdit> Goals(DemoCalendar calendar) =>
    [
        new SetGoal(new Goal(new(calendar.Id("goal", "squat")), 1, "Back squat, kg per kg body mass", 1.25m, 1.45m, calendar.Day(28, DayOfWeek.Tuesday), new("maximum-strength"))),
        new SetGoal(new Goal(new(calendar.Id("goal", "jump")), 2, "Countermovement jump, cm", 31.5m, 34m, calendar.Day(40, DayOfWeek.Tuesday), new("power"))),
        new SetGoal(new Goal(new(calendar.Id("goal", "availability")), 3, "Squad availability, %", 84m, 90m)),
    ];

    private static PersonId Id(DemoCalendar calendar, string name) => new(calendar.Id("person", name));
}
