using System.Collections.Immutable;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Seasons;

/// <summary>Every family of places a season has. The names are part of the file format: add, never rename.</summary>
public static class SeasonFacets
{
    public static readonly Facet<Only, Frame> Frame = new("frame");
    public static readonly Facet<Only, TeamCard> Team = new("team");
    public static readonly Facet<PersonId, StaffRole> Staff = new("staff");
    public static readonly Facet<GoalId, Goal> Goal = new("goal");

    /// <summary>What is asked of a proposal.</summary>
    public static readonly Facet<Only, Brief> Brief = new("brief");

    public static readonly Facet<MatchId, Match> Match = new("match");
    public static readonly Facet<EventId, Event> Event = new("event");
    public static readonly Facet<TestDayId, TestDay> TestDay = new("test");
    public static readonly Facet<SessionId, Session> Session = new("session");
    public static readonly Facet<WorkoutId, Workout> Workout = new("workout");
    public static readonly Facet<HomeProgrammeId, HomeProgramme> Home = new("home");
    public static readonly Facet<NoteId, Note> Note = new("note");

    public static readonly Facet<PhaseId, Phase> Phase = new("phase");
    public static readonly Facet<BlockId, Block> Block = new("block");

    public static readonly Facet<WeekId, PhaseId> WeekPhase = new("week.phase");
    public static readonly Facet<WeekId, BlockId> WeekBlock = new("week.block");
    public static readonly Facet<WeekId, WeekKind> WeekKind = new("week.kind");
    public static readonly Facet<WeekId, Load> WeekLoad = new("week.load");
    public static readonly Facet<Pair<WeekId, QualityId>, Emphasis> WeekEmphasis = new("week.emphasis");
    public static readonly Facet<WeekId, Practices> WeekPractices = new("week.practices");
    public static readonly Facet<WeekId, string> WeekNote = new("week.note");

    /// <summary>What is asked of the head coach's practices in a week, in words.</summary>
    public static readonly Facet<WeekId, string> PracticeWish = new("week.wish");
    public static readonly Facet<WeekId, bool> WeekLock = new("week.lock");
    public static readonly Facet<WeekId, bool> WeekReady = new("week.ready");

    public static readonly Facet<TrackId, Track> Track = new("track");

    /// <summary>Own cells as text: what was typed, an invariant number, or "yes" for a tick.</summary>
    public static readonly Facet<Pair<TrackId, CellPlace>, string> TrackCell = new("track.cell");

    public static readonly Facet<GroupId, GroupLine> Group = new("group");
    public static readonly Facet<Pair<GroupId, WeekId>, GroupWeek> GroupWeek = new("group.week");
    public static readonly Facet<Pair<GroupId, Pair<WeekId, QualityId>>, Emphasis> GroupEmphasis = new("group.emphasis");

    public static readonly Facet<VersionNumber, Publication> Publication = new("publication");

    /// <summary>Findings of the rulebook that the coach lives with.</summary>
    public static readonly Facet<FindingKey, Acceptance> Accepted = new("accepted");

    public static ImmutableArray<Facet> All { get; } =
    [
        Frame, Team, Staff, Goal, Match, Event, TestDay, Session, Note, Phase, Block, WeekPhase, WeekBlock, WeekKind, WeekLoad, WeekEmphasis,
        WeekPractices, WeekNote, PracticeWish, WeekLock, WeekReady, Track, TrackCell, Group, GroupWeek, GroupEmphasis, Publication, Accepted, Brief, Workout, Home,
    ];
}
