using System.Collections.Immutable;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Desk.Demo;

/// <summary>
/// Harbour Vale, a women's handball team, with a whole season: everything in it is invented, and made by the edits a coach
/// would make. The same anchor gives the same bytes. Its figures are examples of common practice, no source, held within
/// the rulebook's defaults where those have one.
/// </summary>
/// <param name="Setup">The team's setup, edit by edit.</param>
/// <param name="Edits">The season, edit by edit; the first starts it.</param>
/// <param name="People">Names of the staff, for the register of people: they stand in no edit.</param>
public sealed record DemoSeason(
    SeasonId Id, ImmutableArray<SetupEdit> Setup, ImmutableArray<SeasonEdit> Edits, ImmutableDictionary<PersonId, string> People)
{
    public const string TeamName = "Harbour Vale";

    /// <summary>The week in which the demo is looked at: before it everything is done, after it everything is planned.</summary>
    public const int WeekOfToday = 16;

    /// <summary>The first day of the season that has <paramref name="today"/> in week 16: a Monday.</summary>
    public static DateOnly AnchorFor(DateOnly today) =>
        WeekGrid.StartOfWeek(today, DayOfWeek.Monday).AddDays(-7 * (WeekOfToday - 1));

    /// <param name="anchor">The first day; one that is no Monday stands for the Monday of its week.</param>
    public static DemoSeason Make(DateOnly anchor)
    {
        var first = WeekGrid.StartOfWeek(anchor, DayOfWeek.Monday);
        var id = NaturalIds.Season(TeamName, first);
        var calendar = new DemoCalendar(first, new NaturalIds(id));
        return new DemoSeason(id, [.. DemoTeam.Setup, DemoWorkouts.Gym, DemoSessions.OneMatch(calendar)],
            [
                new StartSeason(first, DayOfWeek.Monday, calendar.Weeks, DemoTeam.Card(calendar)),
                .. DemoTeam.Staff(calendar),
                .. DemoTeam.Goals(calendar),
                .. DemoMatches.Fixtures(calendar),
                .. DemoEvents.Of(calendar),
                .. DemoPlan.Phases(calendar),
                .. DemoPlan.Blocks(calendar),
                .. DemoWeeks.Of(calendar),
                .. DemoEmphasis.Of(calendar),
                .. DemoRows.Tracks(calendar),
                .. DemoRows.Notes(calendar),
                .. DemoRows.Wishes(calendar),
                .. DemoRows.Rookies(calendar),
                new Publish("Pre-season"),
                .. DemoMatches.Played(calendar),
                .. DemoWorkouts.Of(),
                DemoWorkouts.Home(calendar),
                .. DemoSessions.Of(calendar),
                .. DemoWeeks.LaidOut(calendar),
                new Publish("Cup, second round"),
                .. DemoRows.Draft(calendar),
            ],
            DemoTeam.People(calendar));
    }
}
