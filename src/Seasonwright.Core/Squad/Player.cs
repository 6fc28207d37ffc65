using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Squad;

/// <summary>A player of a team and everything that was told of them: rows, never in the log.</summary>
/// <param name="Memberships">Of every team, the earliest first; at least one.</param>
/// <param name="Reports">In the order they were written down.</param>
/// <param name="Absences">The earliest first.</param>
/// <param name="Weighings">The earliest first.</param>
/// <param name="Lifts">Tested sets, the earliest first.</param>
/// <param name="Grouped">Seasons of which it is told who of the squad is in which group: who has no place there is in none.</param>
/// <param name="Groups">In which groups of which seasons, the earliest first.</param>
public sealed record Player(
    Athlete Athlete, ValueList<Membership> Memberships, ValueList<AvailabilityReport> Reports, ValueList<Absence> Absences, ValueList<WeighIn> Weighings, ValueList<LiftTest> Lifts, ValueList<GroupPlace> Groups, ValueList<SeasonId> Grouped)
{
    /// <summary>Days for which an absence that is over is still told of: who comes back may bring load along. Common practice, no source.</summary>
    public const int BackDays = 14;

    public PersonId Id => Athlete.Id;

    /// <summary>Running tests, the earliest first.</summary>
    public ValueList<RunTest> Runs { get; init; } = [];

    /// <summary>What binds on a day.</summary>
    public Standing StandingOn(DateOnly day) => Standing.On(Reports, day);

    /// <summary>The most the person can lift once, as known on a day; null where nothing is known.</summary>
    public Maximum? MaximumOn(DateOnly day, Setups.Exercise exercise, Setups.Setup setup) => Maximum.On(day, Lifts, exercise, setup);

    /// <summary>The newest load-velocity profile of a lift on a day; null where there is none.</summary>
    public LiftProfile? ProfileOn(DateOnly day, ExerciseId exercise) => LiftProfile.On(day, Lifts, exercise);

    /// <summary>Kilograms on a day; null where the person was not weighed until then.</summary>
    public decimal? BodyMassOn(DateOnly day) => WeighIn.LastOn(Weighings, day)?.Mass.Kilograms;

    /// <summary>The person's time in the main squad of a team; null where they are in another squad of it only.</summary>
    public Membership? MainIn(TeamId team) => Memberships.LastOrDefault(one => one.Team == team && one.Squad is null);

    /// <summary>Whether the person is in some squad of a team on a day, or will be.</summary>
    public bool IsInOrComing(TeamId team, DateOnly day) => Memberships.Any(one => one.Team == team && one.Days.Last >= day);

    /// <summary>Where the person is on a day, as the main squad of a team sees it: that squad's plan is the season's.</summary>
    public Whereabouts WhereOn(TeamId team, DateOnly day) =>
        !Memberships.Any(one => one.Team == team && one.Contains(day)) ? Whereabouts.NoMember
        : Absences.Any(absence => absence.Days.Contains(day)) ? Whereabouts.Absent
        : Membership.LeadingOn(Memberships, day) is { Squad: null } leading && leading.Team == team ? Whereabouts.WithTeam
        : Whereabouts.OtherSquad;

    /// <summary>The absences that ended in the last <see cref="BackDays"/> days and after which the person was back, the earliest first.</summary>
    public IEnumerable<Absence> BackFrom(DateOnly day) => Absences.Where(absence => day.DayNumber - absence.Days.Last.DayNumber is >= 1 and <= BackDays
        && !Absences.Any(other => other.Days.Contains(absence.Days.Last.AddDays(1))));

    /// <summary>
    /// The sessions of a season's day that are the person's while they are with the team: those for everyone and those for a group
    /// they are in then. While nobody told who of the squad is in which group, everybody sees the sessions of all.
    /// </summary>
    /// <returns>By start, cancelled ones included.</returns>
    public IEnumerable<Session> SessionsOn(Season season, TeamId team, DateOnly day)
    {
        if (season.WeekOf(day) is not { } week || WhereOn(team, day) != Whereabouts.WithTeam) return [];
        var told = Groups.Where(place => place.Season == season.Id).ToList();
        return season.SessionsIn(week).Where(session => session.Day == day
            && (session.Groups is null || told.Count == 0 && !Grouped.Contains(season.Id) || told.Exists(place => place.Contains(day) && session.IsFor(place.Group))));
    }
}
