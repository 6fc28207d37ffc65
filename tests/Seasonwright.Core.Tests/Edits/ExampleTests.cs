using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Tests.Drawn;

namespace Seasonwright.Core.Tests.Edits;

/// <summary>Every edit once: what it changes, and its line in the history.</summary>
public class ExampleTests
{
    private static readonly DateOnly Saturday = new(2027, 10, 16);

    private static readonly Session Gym = new(new("gym"), new(2027, 7, 6), DaySlot.Morning, SessionKind.LowerStrength, new Minutes(60), new Rpe(7));

    private static readonly TypicalWeek OneMatch = new(new("one"), "One match", new DaySpan(new(2027, 7, 5), new(2027, 7, 11)), [new(2027, 7, 10)], [Gym]);

    private static readonly Workout Legs = new(new("legs"), "Legs", [new WorkoutPart(PartKind.Straight, [new WorkoutItem(new("a"), new("back-squat"), new Prescription(4, 5, WorkUnit.Repetitions, Effort.OfMax(80)))], 180)], Progression.None);

    private static readonly Exercise Own = new(new("chain-squat"), "Squat with chains", MovementPattern.Squat, LoadedBy.Bar, [Muscle.Quadriceps], [Equipment.Barbell, Equipment.Rack], [Demand.DeepKnee, Demand.Legs, Demand.Arms, Demand.Spine], Easier: new("back-squat"));

    private static readonly HomeProgramme Break = new(new("break"), "Winter break", new(2027, 7, 12), 2, HomeKit.Nothing, [new HomeDay(DayOfWeek.Monday, null, new HomeRun(1, 1_200, WorkUnit.Seconds, new Percent(70)))], [new("own")]);

    private static readonly SeasonEdit Start = new StartSeason(new(2027, 7, 5), DayOfWeek.Monday, new(Enumerable.Range(1, 20).Select(n => new WeekId($"w{n}"))), new("Harbour Vale"));

    private static readonly Season Season = History.After(Start,
        new PaintPhase(new("w1"), new("w6"), new("p"), PhaseKind.GeneralPreparation, new("x")),
        new PaintBlock(new("w1"), new("w4"), new("b"), BlockKind.Base, new("x"), "Engine"),
        new SetMatch(new Match(new("m"), Saturday, Opponent: "Turnes", Venue: Venue.Home)),
        new SetMatch(new Match(new("n"), null, Status: MatchStatus.Conditional, Condition: new Condition(new MatchId("m"), Words: "if we win"))),
        new SetEvent(new Event(new("e"), EventKind.Camp, "Camp", new DaySpan(new(2027, 8, 2), new(2027, 8, 6)))),
        new SetTestDay(new TestDay(new("d"), new DateOnly(2027, 7, 8), "Jump")),
        new SetSession(Gym),
        new SetGroup(new GroupLine(new("own"), "Keepers")),
        new SetSession(Gym with { Id = new("own"), Kind = SessionKind.Practice, Groups = new([new("own")]) }),
        new SetWorkout(Legs),
        new SetSession(Gym with { Id = new("built"), Workout = Legs.Id }),
        new SetHomeProgramme(Break),
        new SetNote(new Note(new("o"), DaySpan.Of(new(2027, 7, 8)), "Hall closed")),
        new SetGoal(new Goal(new("g"), 1, "Jump height, cm")),
        new SetTrack(new Track(new("t"), "Room", TrackForm.Text)),
        new SetTrack(new Track(new("i"), "Sauna", TrackForm.Tick)),
        new SetCells(new([new(new("t"), CellPlace.Of(new WeekId("w1")), "small")])),
        new SetGroup(new GroupLine(new("r"), "Rookies")),
        new SetGroupWeek(new("r"), new("w1"), new("w1"), new Percent(80)),
        new SetStaff(new("s"), StaffRole.Doctor),
        new AcceptFinding(new("weekly-ramp", "rise", "week/w2"), new Acceptance("Camp", 4m, "")),
        new LockWeeks(new("w9"), new("w9"), true),
        new MarkReady(new("w9"), new("w9"), true));

    /// <summary>A normal hard week of 3150 AU: 2432 AU are 77.2 % of it.</summary>
    private static readonly Setup TeamSetup = Setup.Empty(new("team")).With(Assert.IsType<Accepted>(Decider.Decide(Setup.Empty(new("team")), new SetReferenceWeek(new Load(3150)))).Step);

    private sealed record Example(SeasonEdit Edit, string Description, string Places);

    private static IEnumerable<Example> OfSeason() =>
    [
        new(new NameTeam(new TeamCard("Harbour Vale", "2027-28")), "Headed the season Harbour Vale", "team"),
        new(new SetStaff(new("s2"), StaffRole.HeadCoach), "Put a person on the staff: head coach", "staff/s2"),
        new(new SetStaff(new("s"), null), "Took a person off the staff", "staff/s"),
        new(new SetGoal(new Goal(new("h"), 2, "Availability, %")), "Set the goal Availability, %", "goal/h"),
        new(new SetBrief(Brief.Default with { Boldness = Boldness.Careful }), "Said what is asked of a proposal", "brief"),
        new(new RemoveGoal(new("g")), "Removed the goal Jump height, cm", "goal/g"),
        new(new SetMatch(new Match(new("k"), Saturday.AddDays(7), Venue: Venue.Away, Opponent: "Öster")), "Added the match Sat 23 Oct 2027, away at Öster", "match/k"),
        new(new SetMatch(new Match(new("m"), Saturday)), "Changed the match Sat 16 Oct 2027, v unknown", "match/m"),
        new(new MoveMatch(new("m"), Saturday.AddDays(1)), "Moved the match Sat 16 Oct 2027, home v Turnes to Sun 17 Oct 2027", "match/m"),
        new(new RemoveMatch(new("m")), "Removed the match Sat 16 Oct 2027, home v Turnes", "match/m match/n"),
        new(new SettleMatch(new("m"), Outcome.Won), "Settled: won, Sat 16 Oct 2027, home v Turnes", "match/m match/n"),
        new(new SettleMatch(new("m"), Outcome.Lost), "Settled: out, Sat 16 Oct 2027, home v Turnes", "match/m match/n"),
        new(new ImportFixtures(new([new Match(new("m"), Saturday), new Match(new("k"), Saturday.AddDays(7))]), "league.csv"), "Took in league.csv: 1 new, 1 changed", "match/k match/m"),
        new(new ImportEvents(new([new Event(new("e2"), EventKind.Exams, "Exams", DaySpan.Of(Saturday))]), new([new TestDay(new("d2"), Saturday, "Sprint")]), "terms.csv"), "Took in terms.csv: 2 entries", "event/e2 test/d2"),
        new(new SetEvent(new Event(new("e2"), EventKind.Exams, "Exams", new DaySpan(new(2027, 9, 30), new(2027, 10, 2)))), "Added Exams, 30 Sep to 2 Oct 2027", "event/e2"),
        new(new SetEvent(new Event(new("e"), EventKind.Camp, "Camp", DaySpan.Of(new(2027, 8, 2)))), "Changed Camp, 2 Aug to 2 Aug 2027", "event/e"),
        new(new RemoveEvent(new("e")), "Removed Camp", "event/e"),
        new(new SetTestDay(new TestDay(new("d"), new DateOnly(2027, 7, 9), "Jump")), "Set the test day Jump on Fri 9 Jul 2027", "test/d"),
        new(new RemoveTestDay(new("d")), "Removed the test day Jump", "test/d"),
        new(new SetSession(Gym with { Id = new("new"), Name = "Legs", Start = new TimeOnly(8, 30) }), "Added Legs, Tue 6 Jul 2027, morning", "session/new"),
        new(new SetSession(Gym with { Day = new(2027, 7, 7), Slot = DaySlot.Evening, Minutes = new Minutes(45) }), "Lower-body strength, Tue 6 Jul 2027, morning: moved to Wed 7 Jul 2027, evening, shortened to 45 min", "session/gym"),
        new(new SetSession(Gym with { Minutes = new Minutes(75), Rpe = new Rpe(8) }), "Lower-body strength, Tue 6 Jul 2027, morning: lengthened to 75 min, harder, RPE 8", "session/gym"),
        new(new SetSession(Gym with { Rpe = new Rpe(5.5m), Start = new TimeOnly(9, 0), Groups = new([new("r")]) }), "Lower-body strength, Tue 6 Jul 2027, morning: start open → 09:00, easier, RPE 5.5, for changed", "session/gym"),
        new(new SetSession(Gym with { IsCancelled = true }), "Lower-body strength, Tue 6 Jul 2027, morning: cancelled", "session/gym"),
        new(new SetSession(Gym), "Lower-body strength, Tue 6 Jul 2027, morning: as it was", ""),
        new(new SetSession(Gym with { Workout = Legs.Id }), "Lower-body strength, Tue 6 Jul 2027, morning: workout changed", "session/gym"),
        new(new SetWorkout(Legs with { Id = new("arms"), Name = "Arms" }), "Wrote the workout Arms", "workout/arms"),
        new(new SetWorkout(Legs with { Progression = new(ProgressionKind.Linear, 2.5m) }), "Changed the workout Legs", "workout/legs"),
        new(new RemoveWorkout(Legs.Id), "Removed the workout Legs", "session/built workout/legs"),
        new(new RemoveSession(new("gym")), "Removed Lower-body strength, Tue 6 Jul 2027, morning", "session/gym"),
        new(new SetHomeProgramme(Break with { Id = new("leave"), Name = "Leave" }), "Wrote the home programme Leave", "home/leave"),
        new(new SetHomeProgramme(Break with { Weeks = 3 }), "Changed the home programme Winter break", "home/break"),
        new(new RemoveHomeProgramme(Break.Id), "Removed the home programme Winter break", "home/break"),
        new(new RemoveGroup(new("own")), "Removed the group Keepers", "group/own home/break session/own"),
        new(new SetNote(new Note(new("o2"), DaySpan.Of(Saturday), "Derby")), "Wrote a note from 16 Oct 2027", "note/o2"),
        new(new RemoveNote(new("o")), "Removed the note Hall closed", "note/o"),
        new(new PaintPhase(new("w3"), new("w4"), new("q"), PhaseKind.Competition, new("rest")), "Painted Competition over weeks 3 to 4", "phase/q phase/rest week.phase/w3 week.phase/w4 week.phase/w5 week.phase/w6"),
        new(new PaintPhase(new("w8"), new("w8"), new("q"), PhaseKind.Peak, new("rest"), "Cup week"), "Painted Cup week over week 8", "phase/q week.phase/w8"),
        new(new ErasePhase(new("w1"), new("w6"), new("rest")), "Cleared the phase of weeks 1 to 6", "phase/p week.phase/w1 week.phase/w2 week.phase/w3 week.phase/w4 week.phase/w5 week.phase/w6"),
        new(new PaintBlock(new("w5"), new("w5"), new("c"), BlockKind.ReEntry, new("rest"), "  "), "Painted the block Re-entry over week 5", "block/c week.block/w5"),
        new(new EraseBlock(new("w4"), new("w5"), new("rest")), "Cleared the block of weeks 4 to 5", "week.block/w4"),
        new(new RenamePhase(new("p"), "Summer"), "Renamed the phase General preparation to Summer", "phase/p"),
        new(new RenameBlock(new("b"), ""), "Renamed the block Engine to Base", "block/b"),
        new(new SetWeekKind(new("w1"), new("w2"), WeekKind.ReEntry), "Made weeks 1 to 2: re-entry", "week.kind/w1 week.kind/w2"),
        new(new SetWeekKind(new("w1"), new("w1"), null), "Took back the kind of week 1", ""),
        new(new SetWeekLoad(new("w2"), new("w2"), new Load(2432)), "Set the load of week 2: 77 %", "week.load/w2"),
        new(new SetWeekLoad(new("w2"), new("w3"), null), "Took back the load of weeks 2 to 3", ""),
        new(new SetEmphasis(new("w1"), new("w1"), new("power"), Emphasis.Focus), "Set Power to focus in week 1", "week.emphasis/w1:power"),
        new(new SetPractices(new("w1"), new("w2"), new Practices(4)), "Entered practices of weeks 1 to 2: 4", "week.practices/w1 week.practices/w2"),
        new(new SetPractices(new("w1"), new("w1"), null), "Took back the practices of week 1", ""),
        new(new SetPracticeWish(new("w1"), " Keep Thursday short "), "Said what is wished of practice in week 1", "week.wish/w1"),
        new(new SetWeekNote(new("w1"), " Hall B "), "Wrote the note of week 1", "week.note/w1"),
        new(new LockWeeks(new("w8"), new("w9"), true), "Locked weeks 8 to 9", "week.lock/w8"),
        new(new LockWeeks(new("w8"), new("w9"), false), "Unlocked weeks 8 to 9", "week.lock/w9"),
        new(new MarkReady(new("w1"), new("w1"), true), "Marked week 1 ready", "week.ready/w1"),
        new(new MarkReady(new("w9"), new("w9"), false), "Marked week 9 not ready", "week.ready/w9"),
        new(new SetTrack(new Track(new("u"), "Bus", TrackForm.Text)), "Added the track Bus", "track/u"),
        new(new SetTrack(new Track(new("t"), "Gym room", TrackForm.Text)), "Changed the track Gym room", "track/t"),
        new(new RemoveTrack(new("t")), "Removed the track Room", "track/t track.cell/t:w=w1"),
        new(new SetCells(new([new(new("t"), CellPlace.Of(new WeekId("w1")), ""), new(new("i"), CellPlace.Of(new WeekId("w2")), "yes")])), "Filled 2 cells of Room, Sauna", "track.cell/i:w=w2 track.cell/t:w=w1"),
        new(new SetCells(new([new(new("t"), CellPlace.Of(new WeekId("w2")), "large")])), "Filled a cell of Room", "track.cell/t:w=w2"),
        new(new SetCells(new([new(new("t"), CellPlace.Of(new WeekId("w1")), null)])), "Emptied a cell of Room", "track.cell/t:w=w1"),
        new(new SetCells(new([new(new("t"), CellPlace.Of(new WeekId("w1")), null), new(new("t"), CellPlace.Of(new WeekId("w2")), "")])), "Emptied 2 cells of Room", "track.cell/t:w=w1"),
        new(new SetGroup(new GroupLine(new("r2"), "Backs", -1)), "Set the group Backs", "group/r2"),
        new(new RemoveGroup(new("r")), "Removed the group Rookies", "group/r group.week/r:w1"),
        new(new SetGroupWeek(new("r"), new("w1"), new("w2"), new Percent(70)), "Set the load of Rookies to 70 % in weeks 1 to 2", "group.week/r:w1 group.week/r:w2"),
        new(new SetGroupWeek(new("r"), new("w1"), new("w1"), null), "Took back the load of Rookies in week 1", "group.week/r:w1"),
        new(new SetGroupEmphasis(new("r"), new("w1"), new("w1"), new("power"), Emphasis.None), "Set Power to none for Rookies in week 1", "group.emphasis/r:w1:power"),
        new(new SetGroupEmphasis(new("r"), new("w1"), new("w1"), new("gliding"), null), "Took back a quality the team no longer plans for Rookies in week 1", ""),
        new(new Redate(new(2027, 7, 12), DayOfWeek.Monday, RedatePlan.Moves, ValueList<WeekId>.Empty), "Moved the season to start on 12 Jul 2027, the plan with it", "frame session/built session/gym session/own test/d"),
        new(new Redate(new(2027, 7, 12), DayOfWeek.Monday, RedatePlan.Stays, new([new("w21")])), "Moved the season's start to 12 Jul 2027, the plan stayed", "frame"),
        new(new Resize(18, ValueList<WeekId>.Empty), "Changed the season from 20 to 18 weeks", "frame"),
        new(new AcceptFinding(new("match-gap-short", "short", "week/w3"), new Acceptance("Cup tie", 20m, "")), "Accepted a finding of match-gap-short: Cup tie", "accepted/match-gap-short:short:week/w3"),
        new(new AcceptFinding(new("match-gap-short", "short", "week/w4"), new Acceptance("Minutes capped", 20m, "", "Mara Lindt", StaffRole.Doctor)), "Released a stop of match-gap-short by Mara Lindt: Minutes capped", "accepted/match-gap-short:short:week/w4"),
        new(new ReopenFinding(new("weekly-ramp", "rise", "week/w2")), "Reopened a finding of weekly-ramp", "accepted/weekly-ramp:rise:week/w2"),
        new(new Publish("Agreed"), "Published version 1 (Agreed)", "publication/1"),
    ];

    [Fact]
    public void Every_season_edit()
    {
        foreach (var (edit, description, places) in OfSeason())
        {
            var accepted = Assert.IsType<Accepted>(Decider.Decide(Season, edit));
            Assert.Equal((description, places), (edit.Describe(Season, TeamSetup), string.Join(' ', accepted.Step.Changes.Select(change => change.Key))));
        }
        Assert.Equal("Started the season of Harbour Vale: 20 weeks from 5 Jul 2027", Start.Describe(History.Nothing, TeamSetup));
        var adopt = new AdoptSeason(Season.Facts, "2026-27");
        Assert.IsType<Accepted>(Decider.Decide(History.Nothing, adopt));
        Assert.Equal("Filled the season from 2026-27", adopt.Describe(History.Nothing, TeamSetup));
        Assert.Equal(AnyEdit.OfSeason.Keys.Order(StringComparer.Ordinal),
            OfSeason().Select(example => example.Edit.GetType().Name).Concat([nameof(StartSeason), nameof(AdoptSeason)]).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    [Fact]
    public void Every_setup_edit()
    {
        var sessions = new Sessions(3, new Minutes(60), new Rpe(6));
        var team = Setup.Empty(new("team"));
        foreach (var edit in new SetupEdit[] { new SetTypicalWeek(OneMatch), new SetExercise(Own), new SetExercise(Own with { Id = new("heavier"), Easier = Own.Id }), new SetExercise(Own with { Id = new("back-squat"), Easier = null }) })
            team = team.With(Assert.IsType<Accepted>(Decider.Decide(team, edit)).Step);
        (SetupEdit Edit, string Description, string Places)[] examples =
        [
            (new SetTeamName("Harbour Vale"), "Named the team", "team.name"),
            (new SetUsualWeek(new UsualWeek(sessions, sessions, sessions)), "Set the usual week", "usual.week"),
            (new SetMatchLoad(new MatchLoad(new Minutes(80), new Rpe(8), new Rpe(5))), "Set what a match loads", "match.load"),
            (new SetReferenceWeek(new Load(3000)), "Set the normal hard week", "reference.week"),
            (new SetLocale(new LocaleSettings(Zone: "Europe/Oslo")), "Set how the team writes and reads", "locale"),
            (new SetRuleParameter(new("ramp", "most"), "12"), "Set ramp:most to 12", "rule/ramp:most"),
            (new SetQuality(new Quality(new("power"), "Jump", QualityKind.Power, 3)), "Set the quality Jump", "quality/aerobic quality/change-of-direction quality/high-intensity quality/hypertrophy quality/maximum-strength quality/power quality/prevention quality/speed"),
            (new SetTypicalWeek(OneMatch with { Id = new("cup"), Name = "Cup week" }), "Kept the typical week Cup week", "typical.week/cup"),
            (new SetGym(Core.Setups.Gym.Usual(MassUnit.Pound)), "Said what the gym has: 1 racks", "gym"),
            (new SetLift(new("bench-press"), new Lift("epley", 0.17m)), "Said how the maximum of Bench press is worked out", "lift/bench-press"),
            (new RemoveTypicalWeek(OneMatch.Id), "Forgot the typical week One match", "typical.week/one"),
            (new SetExercise(Own with { Id = new("front-squat"), Name = "Front squat, straps" }), "Set the exercise Front squat, straps", "exercise/front-squat"),
            (new RemoveExercise(Own.Id), "Removed the exercise Squat with chains", "exercise/chain-squat exercise/heavier"),
            (new RemoveExercise(new("back-squat")), "Took back the book's Back squat", "exercise/back-squat"),
            (new RemoveQuality(new("hypertrophy")), "Removed the quality Hypertrophy", "quality/aerobic quality/change-of-direction quality/high-intensity quality/maximum-strength quality/power quality/prevention quality/speed"),
        ];
        foreach (var (edit, description, places) in examples)
        {
            var accepted = Assert.IsType<Accepted>(Decider.Decide(team, edit));
            Assert.Equal((description, places), (edit.Describe(team), string.Join(' ', accepted.Step.Changes.Select(change => change.Key))));
        }
        Assert.Equal(AnyEdit.OfSetup.Keys.Order(StringComparer.Ordinal), examples.Select(example => example.Edit.GetType().Name).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    [Fact]
    public void Every_club_edit()
    {
        var gym = new Facility(new Room(new("gym"), "Strength room", 40, 2, [new(DayOfWeek.Monday, new(16, 0), new(20, 0))]));
        var club = Club.Empty.With(Assert.IsType<Accepted>(Decider.Decide(Club.Empty, new SetFacility(gym))).Step);
        (ClubEdit Edit, string Description, string Places)[] examples =
        [
            (new SetFacility(gym with { Room = gym.Room with { Id = new("annexe"), Name = "Annexe" } }), "Added the room Annexe", "facility/annexe"),
            (new SetFacility(gym with { Room = gym.Room with { Places = 30 } }), "Said anew how the room Strength room is", "facility/gym"),
            (new RemoveFacility(gym.Room.Id), "Removed the room Strength room", "facility/gym"),
        ];
        foreach (var (edit, description, places) in examples)
        {
            var accepted = Assert.IsType<Accepted>(Decider.Decide(club, edit));
            Assert.Equal((description, places), (edit.Describe(club), string.Join(' ', accepted.Step.Changes.Select(change => change.Key))));
        }
        Assert.Equal(AnyEdit.OfClub.Keys.Order(StringComparer.Ordinal), examples.Select(example => example.Edit.GetType().Name).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    [Fact]
    public void A_removed_match_leaves_the_words_of_those_that_waited() =>
        Assert.Equal(new Condition(null, Outcome.Won, "if we win"), History.After(Season, new RemoveMatch(new("m"))).Match(new("n"))!.Condition);

    [Theory]
    [InlineData(MatchStatus.Postponed, false, MatchStatus.Confirmed)]
    [InlineData(MatchStatus.Postponed, true, MatchStatus.Window)]
    [InlineData(MatchStatus.Window, false, MatchStatus.Confirmed)]
    [InlineData(MatchStatus.Confirmed, true, MatchStatus.Window)]
    [InlineData(MatchStatus.Provisional, false, MatchStatus.Provisional)]
    [InlineData(MatchStatus.Conditional, true, MatchStatus.Conditional)]
    [InlineData(MatchStatus.Cancelled, false, MatchStatus.Cancelled)]
    public void A_match_that_gets_a_day_has_the_status_that_follows(MatchStatus was, bool window, MatchStatus becomes)
    {
        var season = History.After(Season, new SetMatch(new Match(new("k"), Saturday, Saturday.AddDays(2), Status: was)));
        var moved = History.After(season, new MoveMatch(new("k"), Saturday.AddDays(7), window ? Saturday.AddDays(9) : null)).Match(new("k"))!;
        Assert.Equal((becomes, !window && becomes != MatchStatus.Cancelled), (moved.Status, moved.IsOnOneDay));
    }

    [Theory]
    [InlineData("5", "5")]
    [InlineData(" 5.50 ", "5.5")]
    [InlineData("-0.0", "0")]
    [InlineData("1000", "1000")]
    [InlineData("79228162514264337593543950335", "79228162514264337593543950335")]
    [InlineData("0.0000000000000000000000000001", "0.0000000000000000000000000001")]
    public void Numbers_in_cells_have_one_way_of_being_written(string typed, string kept)
    {
        var season = History.After(Season, new SetTrack(new Track(new("k"), "Jumps", TrackForm.Number)));
        var place = CellPlace.Of(new WeekId("w1"));
        season = History.After(season, new SetCells(new([new(new("k"), place, typed)])));
        Assert.Equal(kept, season.CellOf(new("k"), place));
        Assert.Equal(season, History.After(season, new SetCells(new([new(new("k"), place, kept)]))));
    }

    [Fact]
    public void A_decision_conflicts_with_what_it_read_or_wrote()
    {
        var accepted = Assert.IsType<Accepted>(Decider.Decide(Season, new SetWeekLoad(new("w1"), new("w2"), new Load(1))));
        Assert.Equal("week.lock/w1", accepted.ConflictsWith(new HashSet<Core.Facts.Key> { new("week.lock", "w1") }).ToString());
        Assert.Equal("week.load/w2", accepted.ConflictsWith(new HashSet<Core.Facts.Key> { new("week.load", "w2") }).ToString());
        Assert.Null(accepted.ConflictsWith(new HashSet<Core.Facts.Key> { new("week.load", "w3"), new("week.kind", "w1") }));
    }
}
