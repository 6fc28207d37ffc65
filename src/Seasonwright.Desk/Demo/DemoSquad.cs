using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Desk.Squad;

namespace Seasonwright.Desk.Demo;

/// <summary>
/// Harbour Vale's squad: 22 players, all invented. Two are injured, one is under 18, one trains with the second team as well, three are rookies, two are
/// called up in week 17. Rows beside the season, so that no byte of it changes. The same season gives the same people.
/// </summary>
internal static class DemoSquad
{
    private const string Physio = "Siri Fenwold";

    /// <summary>Who has trained longer is in no group.</summary>
    private const int RookieYears = 2;

    /// <summary>Age on the first day in whole years, and days since that birthday.</summary>
    private static readonly (string Number, string Given, string Family, string Positions, int Age, int Since, int Trained, decimal Kilograms)[] Everyone =
    [
        ("1", "Ylva", "Brennick", "goalkeeper", 27, 40, 9, 73.5m),
        ("2", "Tuva", "Ellermoor", "left wing", 22, 210, 4, 61m),
        ("3", "Alva", "Wrenfield", "left wing", 25, 101, 6, 63.5m),
        ("4", "Ida", "Norlund", "right wing", 24, 75, 6, 62m),
        ("5", "Selma", "Hartvale", "right wing", 20, 300, 3, 60.5m),
        ("6", "Thea", "Koldmere", "left back", 29, 12, 11, 76m),
        ("7", "Vilde", "Ashgrove", "left back", 23, 188, 5, 74.5m),
        ("8", "Mira", "Stenlowe", "left back/centre back", 26, 333, 8, 72m),
        ("9", "Ronja", "Pellworth", "centre back", 28, 150, 10, 68m),
        ("10", "Hanne", "Dunmarsh", "centre back", 31, 61, 13, 69.5m),
        ("11", "Liv", "Carrowick", "centre back/left wing", 21, 270, 4, 65m),
        ("12", "Karla", "Ostwell", "goalkeeper", 23, 5, 5, 71m),
        ("13", "Dagny", "Westermoor", "right back", 27, 222, 9, 75m),
        ("14", "Astri", "Fellbrook", "right back", 24, 140, 6, 73m),
        ("15", "Eira", "Longmead", "right back/right wing", 19, 90, 2, 66.5m),
        ("16", "Nia", "Farrowdal", "goalkeeper", 20, 18, 3, 70m),
        ("17", "Saga", "Millhaven", "pivot", 30, 199, 12, 79.5m),
        ("18", "Petra", "Orwyn", "pivot", 25, 250, 7, 78m),
        ("19", "Jorun", "Easkell", "pivot", 22, 33, 4, 77m),
        ("20", "Bea", "Thornquay", "left wing/centre back", 26, 118, 8, 64m),
        ("21", "Ebba", "Tarnwick", "right wing", 17, 25, 1, 58.5m),
        ("22", "Oda", "Vintersea", "centre back", 18, 160, 2, 64.5m),
    ];

    /// <param name="first">First day of week 1.</param>
    /// <param name="by">Who recorded it all.</param>
    public static IEnumerable<Player> Of(DateOnly first, TeamId team, PersonId by)
    {
        var calendar = new DemoCalendar(first, new NaturalIds(NaturalIds.Season(DemoSeason.TeamName, first)));
        foreach (var (number, given, family, positions, age, since, trained, kilograms) in Everyone)
        {
            var id = new PersonId(calendar.Id("athlete", $"{given} {family}"));
            var athlete = new Athlete(id, family, given, number, positions.Split('/').ToValueList(), first.AddYears(-age).AddDays(-since), new TrainingAge(trained, first));
            // A player of the second team who leads with it on Tuesdays and Thursdays.
            ValueList<Membership> memberships = family == "Vintersea"
                ? [new(id, team, first, null, LeadingDays.None), new(id, team, first, null, new([DayOfWeek.Tuesday, DayOfWeek.Thursday], []), "Second team")]
                : [new(id, team, first, null, LeadingDays.None)];
            yield return new Player(athlete, memberships, Reports(calendar, id, family, by), Absences(calendar, id, family), [new(Named(calendar, "weighing", family), id, first, new(kilograms, BodyMassUnit.Kilogram), At(first, 8, 30))],
                Lifts(calendar, id, family, kilograms, trained, age),
                trained <= RookieYears ? [new(id, DemoBirth.Id, DemoRows.RookiesId(calendar), first, null)] : [], [DemoBirth.Id])
            { Runs = Runs(calendar, id, family, kilograms, trained) };
        }
    }

    /// <summary>
    /// Shares of body mass lifted three times in the first test week (five times by who has trained less), a little more by who has trained longer: made up, and such as a
    /// handball coach sees. Nobody under 18 lifts a maximum, and one player was ill.
    /// </summary>
    private static ValueList<LiftTest> Lifts(DemoCalendar calendar, PersonId id, string family, decimal kilograms, int trained, int age)
    {
        if (age < Athlete.GrownUp || family == "Carrowick") return [];
        var day = calendar.Day(2, DayOfWeek.Thursday);
        var (repetitions, more) = (trained <= RookieYears ? 5 : 3, 1 + 0.02m * Math.Min(trained, 10));
        return new (string Exercise, decimal Share, decimal With)[] { ("back-squat", 1.0m, 0), ("bench-press", 0.62m, 0), ("trap-bar-deadlift", 1.2m, 0), ("pull-up", 0.06m, kilograms) }
            .Select(lift => new LiftTest(Named(calendar, lift.Exercise, family), id, new(lift.Exercise), day,
                new Weight(lift.With + decimal.Floor(kilograms * lift.Share * more / 2.5m) * 2.5m), repetitions, null, At(day, 17, 0))).ToValueList();
    }

    /// <summary>1,500 m in the third test week, faster by who is lighter and has trained longer: made up. Two players were not there, and one ran in the first week only.</summary>
    private static ValueList<RunTest> Runs(DemoCalendar calendar, PersonId id, string family, decimal kilograms, int trained)
    {
        if (family is "Brennick" or "Carrowick") return [];
        var day = family == "Vintersea" ? calendar.Day(1, DayOfWeek.Tuesday) : calendar.Day(8, DayOfWeek.Monday);
        return [new(Named(calendar, "run", family), id, day, 1_500, 330 + (int)decimal.Floor((kilograms - 55) * 3) - 2 * Math.Min(trained, 10), At(day, 11, 0))];
    }

    private static ValueList<AvailabilityReport> Reports(DemoCalendar calendar, PersonId id, string family, PersonId by) => family switch
    {
        "Ashgrove" => [Report(calendar, id, family, Availability.Out, calendar.Day(13, DayOfWeek.Tuesday), calendar.Day(17, DayOfWeek.Tuesday), ReportedHow.InPerson, by, confirmed: true)],
        "Stenlowe" => [Report(calendar, id, family, Availability.Modified(new([RestrictionTag.NoJump, RestrictionTag.NoChangeOfDirection, RestrictionTag.NoContact], new Minutes(40))),
            calendar.Day(15, DayOfWeek.Thursday), calendar.Day(16, DayOfWeek.Friday), ReportedHow.Message, by, confirmed: false)],
        _ => [],
    };

    private static AvailabilityReport Report(DemoCalendar calendar, PersonId id, string family, Availability availability, DateOnly from, DateOnly review, ReportedHow how, PersonId by, bool confirmed) =>
        new(Named(calendar, "report", family), id, availability, from, review, new(ReporterRole.Therapist, true, Physio), how, by, At(from, 5, 3), confirmed);

    private static ValueList<Absence> Absences(DemoCalendar calendar, PersonId id, string family) => family switch
    {
        // One national team has told what it does a day, the other has not yet.
        "Brennick" => [CalledUp(calendar, id, family, OutsideLoad.Of(new Minutes(90), new Rpe(5.5m)))],
        "Pellworth" => [CalledUp(calendar, id, family, null)],
        _ => [],
    };

    private static Absence CalledUp(DemoCalendar calendar, PersonId id, string family, OutsideLoad? load) =>
        new(Named(calendar, "absence", family), id, AbsenceKind.NationalTeam, calendar.Days(17, DayOfWeek.Monday, DayOfWeek.Sunday), OutsideLoads.Of(load), At(calendar.Day(15, DayOfWeek.Wednesday), 11, 20));

    private static Guid Named(DemoCalendar calendar, string kind, string name) => Guid.ParseExact(calendar.Id(kind, name), "N");

    private static DateTimeOffset At(DateOnly day, int hour, int minute) => new(day.ToDateTime(new TimeOnly(hour, minute)), TimeSpan.Zero);
}
