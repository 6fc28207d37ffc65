using System.Collections.Immutable;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Seasons;

/// <summary>
/// A season: an id and its facts, read in the words of the trade. Immutable. Lists are in calendar order; what lies outside
/// the weeks of the season is found under <see cref="Outside"/> only.
/// </summary>
public sealed class Season : IEquatable<Season>
{
    private readonly Lazy<ImmutableArray<SeasonWeek>> weeks;
    private readonly Lazy<ImmutableDictionary<WeekId, SeasonWeek>> weeksById;
    private readonly Lazy<ImmutableArray<Match>> allMatches;
    private readonly Lazy<ImmutableArray<Session>> allSessions;
    private readonly Lazy<ILookup<int, Session>> sessionsByWeek;
    private readonly Lazy<ImmutableArray<PhaseRun>> phases;
    private readonly Lazy<ImmutableArray<BlockRun>> blocks;

    public Season(SeasonId id, FactSet facts)
    {
        Id = id;
        Facts = facts;
        Frame = facts.Find(SeasonFacets.Frame, default) ?? Frame.None;
        weeks = new(() => [.. Numbered(Frame.Weeks, 1)]);
        weeksById = new(() => weeks.Value.ToImmutableDictionary(week => week.Id));
        allMatches = new(() => [.. Facts.All(SeasonFacets.Match).Select(match => match.Value)
            .OrderBy(match => match.Day ?? DateOnly.MaxValue).ThenBy(match => match.KickOff ?? TimeOnly.MaxValue).ThenBy(match => match.Id.Text, StringComparer.Ordinal)]);
        allSessions = new(() => [.. Facts.All(SeasonFacets.Session).Select(session => session.Value)
            .OrderBy(session => session.Day).ThenBy(session => session.Begins).ThenBy(session => session.Id.Text, StringComparer.Ordinal)]);
        sessionsByWeek = new(() => allSessions.Value.ToLookup(session => Frame.Grid.NumberOf(session.Day)));
        phases = new(() => [.. PhaseRuns()]);
        blocks = new(() => [.. BlockRuns()]);
    }

    public static Season Empty(SeasonId id) => new(id, FactSet.Empty);

    public SeasonId Id { get; }

    public FactSet Facts { get; }

    public Frame Frame { get; }

    public bool IsStarted => Frame.Weeks.Count > 0;

    public TeamCard Team => Facts.Find(SeasonFacets.Team, default) ?? new TeamCard("");

    public ImmutableArray<SeasonWeek> Weeks => weeks.Value;

    /// <summary>The week with an id, if it is in the season now.</summary>
    public SeasonWeek? Week(WeekId id) => weeksById.Value.GetValueOrDefault(id);

    /// <summary>The week that holds a day, or null outside the season.</summary>
    public SeasonWeek? WeekOf(DateOnly day) => Frame.Grid.Holds(day) ? Weeks[Frame.Grid.NumberOf(day) - 1] : null;

    /// <summary>From the first day of week 1 to the last of the last week; null before the season is started.</summary>
    public DaySpan? Days => IsStarted ? Frame.Grid.Span : null;

    /// <summary>Matches that touch the season, by day and kick-off, called-off ones included.</summary>
    public IEnumerable<Match> Matches => allMatches.Value.Where(match => Touches(match.Days));

    /// <summary>All matches, wherever they lie, undated ones last.</summary>
    public ImmutableArray<Match> AllMatches => allMatches.Value;

    public Match? Match(MatchId id) => Facts.Find(SeasonFacets.Match, id);

    /// <summary>Matches of a week: those whose day, or first possible day, lies in it.</summary>
    public IEnumerable<Match> MatchesIn(SeasonWeek week) => allMatches.Value.Where(match => match.Day is { } day && week.Days.Contains(day));

    /// <summary>Days with a match that counts as played on that day, ascending, once each.</summary>
    public ImmutableArray<DateOnly> MatchDays => [.. allMatches.Value.Where(match => match.IsOnOneDay).Select(match => match.Day!.Value).Distinct()];

    public IEnumerable<Event> Events => AllEvents.Where(e => Touches(e.Days));

    public IEnumerable<Event> AllEvents => Facts.All(SeasonFacets.Event).Select(e => e.Value).OrderBy(e => e.Days).ThenBy(e => e.Id.Text, StringComparer.Ordinal);

    /// <summary>Nobody trains on the day.</summary>
    public bool IsClosed(DateOnly day) => AllEvents.Any(item => item.IsClosing && item.Days.Contains(day));

    public IEnumerable<TestDay> TestDays => AllTestDays.Where(test => WeekOf(test.Day) is not null);

    public IEnumerable<TestDay> AllTestDays => Facts.All(SeasonFacets.TestDay).Select(test => test.Value).OrderBy(test => test.Day);

    /// <summary>Sessions on days of the season, by day and start, cancelled ones included.</summary>
    public IEnumerable<Session> Sessions => AllSessions.Where(session => WeekOf(session.Day) is not null);

    public ImmutableArray<Session> AllSessions => allSessions.Value;

    public Session? Session(SessionId id) => Facts.Find(SeasonFacets.Session, id);

    /// <summary>Sessions of a week, by day and start, cancelled ones included.</summary>
    public IEnumerable<Session> SessionsIn(SeasonWeek week) => sessionsByWeek.Value[week.Number];

    /// <summary>By name.</summary>
    public IEnumerable<Workout> Workouts => Facts.All(SeasonFacets.Workout).Select(workout => workout.Value).OrderBy(workout => workout.Name, StringComparer.OrdinalIgnoreCase).ThenBy(workout => workout.Id.Text, StringComparer.Ordinal);

    public Workout? Workout(WorkoutId id) => Facts.Find(SeasonFacets.Workout, id);

    /// <summary>By first day, wherever they lie.</summary>
    public IEnumerable<HomeProgramme> HomeProgrammes => Facts.All(SeasonFacets.Home).Select(home => home.Value).OrderBy(home => home.FirstDay).ThenBy(home => home.Name, StringComparer.OrdinalIgnoreCase).ThenBy(home => home.Id.Text, StringComparer.Ordinal);

    public HomeProgramme? HomeProgramme(HomeProgrammeId id) => Facts.Find(SeasonFacets.Home, id);

    public IEnumerable<Note> Notes => Facts.All(SeasonFacets.Note).Select(note => note.Value).Where(note => Touches(note.Days)).OrderBy(note => note.Days);

    /// <summary>What is asked of a proposal.</summary>
    public Brief Brief => Facts.Find(SeasonFacets.Brief, default) ?? Brief.Default;

    public IEnumerable<Goal> Goals => Facts.All(SeasonFacets.Goal).Select(goal => goal.Value).OrderBy(goal => goal.Rank);

    public IEnumerable<(PersonId Person, StaffRole Role)> Staff => Facts.All(SeasonFacets.Staff);

    public IEnumerable<Track> Tracks => Facts.All(SeasonFacets.Track).Select(track => track.Value).OrderBy(track => track.Place).ThenBy(track => track.Id.Text, StringComparer.Ordinal);

    public IEnumerable<GroupLine> Groups => Facts.All(SeasonFacets.Group).Select(group => group.Value);

    public Publication? LastPublication => Facts.All(SeasonFacets.Publication).Select(p => p.Value).MaxBy(p => p.Number);

    public IEnumerable<(FindingKey Finding, Acceptance Acceptance)> Accepted => Facts.All(SeasonFacets.Accepted);

    /// <summary>Unbroken runs of weeks with one phase, in order.</summary>
    public ImmutableArray<PhaseRun> Phases => phases.Value;

    /// <summary>Unbroken runs of weeks with one block, in order.</summary>
    public ImmutableArray<BlockRun> Blocks => blocks.Value;

    public PhaseRun? PhaseOf(SeasonWeek week) => Phases.FirstOrDefault(run => run.First.Number <= week.Number && week.Number <= run.Last.Number);

    public BlockRun? BlockOf(SeasonWeek week) => Blocks.FirstOrDefault(run => run.First.Number <= week.Number && week.Number <= run.Last.Number);

    public WeekKind? KindOf(WeekId week) => Facts.FindValue(SeasonFacets.WeekKind, week);

    /// <summary>The stored target of a week.</summary>
    public Load? TargetOf(WeekId week) => Facts.FindValue(SeasonFacets.WeekLoad, week);

    public Emphasis EmphasisOf(WeekId week, QualityId quality) =>
        Facts.FindValue(SeasonFacets.WeekEmphasis, new Pair<WeekId, QualityId>(week, quality)) ?? Emphasis.None;

    public Practices? PracticesOf(WeekId week) => Facts.Find(SeasonFacets.WeekPractices, week);

    public string? NoteOf(WeekId week) => Facts.Find(SeasonFacets.WeekNote, week);

    /// <summary>What is asked of the head coach's practices in a week.</summary>
    public string? PracticeWishOf(WeekId week) => Facts.Find(SeasonFacets.PracticeWish, week);

    public bool IsLocked(WeekId week) => Facts.FindValue(SeasonFacets.WeekLock, week) ?? false;

    public bool IsReady(WeekId week) => Facts.FindValue(SeasonFacets.WeekReady, week) ?? false;

    public string? CellOf(TrackId track, CellPlace place) => Facts.Find(SeasonFacets.TrackCell, new Pair<TrackId, CellPlace>(track, place));

    /// <summary>What is kept but has no place in the season now.</summary>
    public Outside Outside => Outside.Of(this);

    public Season With(Step step) => new(Id, Facts.Evolve(step));

    public bool Equals(Season? other) => other is not null && Id == other.Id && Facts.Equals(other.Facts);

    public override bool Equals(object? obj) => Equals(obj as Season);

    public override int GetHashCode() => HashCode.Combine(Id, Facts);

    internal IEnumerable<SeasonWeek> Numbered(IReadOnlyList<WeekId> ids, int first) =>
        ids.Select((id, index) => new SeasonWeek(first + index, id, Frame.Grid.Week(first + index)));

    private bool Touches(DaySpan? span) => span is { } days && Days is { } season && season.Overlaps(days);

    private IEnumerable<PhaseRun> PhaseRuns() =>
        from run in Runs(week => Facts.FindValue(SeasonFacets.WeekPhase, week.Id))
        let phase = Facts.Find(SeasonFacets.Phase, run.Mark)
        where phase is not null
        select new PhaseRun(run.Mark, phase, run.Weeks[0], run.Weeks[^1]);

    private IEnumerable<BlockRun> BlockRuns() =>
        from run in Runs(week => Facts.FindValue(SeasonFacets.WeekBlock, week.Id))
        let block = Facts.Find(SeasonFacets.Block, run.Mark)
        where block is not null
        let kinds = run.Weeks.Select(week => KindOf(week.Id)).ToList()
        select new BlockRun(run.Mark, block, run.Weeks[0], run.Weeks[^1],
            kinds.Count(kind => kind?.IsLoading() == true), kinds.Count(kind => kind?.IsClosing() == true));

    private IEnumerable<(TMark Mark, List<SeasonWeek> Weeks)> Runs<TMark>(Func<SeasonWeek, TMark?> markOf)
        where TMark : struct, IEquatable<TMark>
    {
        List<SeasonWeek> run = [];
        foreach (var week in Weeks)
        {
            if (run.Count > 0 && !Nullable.Equals(markOf(run[0]), markOf(week)))
            {
                if (markOf(run[0]) is { } mark) yield return (mark, run);
                run = [];
            }
            run.Add(week);
        }
        if (run.Count > 0 && markOf(run[0]) is { } last) yield return (last, run);
    }
}
