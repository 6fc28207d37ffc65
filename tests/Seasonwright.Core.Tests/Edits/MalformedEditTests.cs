using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Tests.Drawn;

namespace Seasonwright.Core.Tests.Edits;

/// <summary>Several hundred edits that must not be done, each with the reason it must be refused for and the place that is named.</summary>
public class MalformedEditTests
{
    private static readonly DateOnly Day = new(2027, 10, 16);

    private static readonly Session Placed = new(new("placed"), Day, DaySlot.Morning, SessionKind.Power, new Minutes(40), new Rpe(5));

    private static readonly TypicalWeek TypicalWeek = new(new("y"), "Cup week", DaySpan.Of(Day), [], [Placed]);

    private static readonly Exercise Own = new(new("x"), "Squat with chains", MovementPattern.Squat, LoadedBy.Bar, [Muscle.Quadriceps], [Equipment.Barbell], [Demand.Legs]);

    private static readonly Prescription Fives = new(4, 5, WorkUnit.Repetitions, Effort.OfMax(80));

    private static readonly WorkoutPart Squats = new(PartKind.Straight, [new WorkoutItem(new("i"), new("back-squat"), Fives)], 180);

    private static readonly Workout Legs = new(new("k"), "Legs", [Squats], Progression.None);

    private static readonly Session Practice = new(new("s"), Day, DaySlot.Evening, SessionKind.Practice, new Minutes(90), new Rpe(5));

    private static readonly Season Season = History.After([
        new StartSeason(new(2027, 7, 5), DayOfWeek.Monday, Weeks(20), new("Harbour Vale")),
        new PaintPhase(new("w1"), new("w9"), new("p"), PhaseKind.GeneralPreparation, new("x")),
        new PaintBlock(new("w1"), new("w9"), new("b"), BlockKind.Base, new("x")),
        new SetMatch(new Match(new("m"), Day)),
        new SetGroup(new GroupLine(new("r"), "Rookies")),
        new SetTrack(new Track(new("text"), "Room", TrackForm.Text)),
        new SetTrack(new Track(new("number"), "Jumps", TrackForm.Number)),
        new SetTrack(new Track(new("tick"), "Sauna", TrackForm.Tick)),
        new SetTrack(new Track(new("choice"), "Hall", TrackForm.Choice, Choices: new(["A", "B"]))),
        new SetTrack(new Track(new("days"), "Bus", TrackForm.Text, TrackGrain.Day)),
        new SetCells(new([new(new("text"), CellPlace.Of(new WeekId("w1")), "small")])),
        new SetGoal(new Goal(new("g1"), 1, "a")), new SetGoal(new Goal(new("g2"), 2, "b")), new SetGoal(new Goal(new("g3"), 3, "c")),
        new LockWeeks(new("w7"), new("w7"), true), .. FullDays()]);

    private static IEnumerable<Case> Facilities()
    {
        var room = new Room(new("gym"), "Strength room", 40, 2, [new(DayOfWeek.Monday, new(16, 0), new(20, 0))]);
        SetFacility With(Room now) => new(new Facility(now));
        yield return new(With(room with { Name = " " }), "text-missing", "facility/gym.name");
        yield return new(With(room with { Name = new('a', 81) }), "text-long", "facility/gym.name");
        foreach (var places in new[] { int.MinValue, 0, 501, int.MaxValue }) yield return new(With(room with { Places = places }), "facility-number", "facility/gym.places");
        foreach (var coaches in new[] { int.MinValue, 0, 51, int.MaxValue }) yield return new(With(room with { Coaches = coaches }), "facility-number", "facility/gym.coaches");
        yield return new(With(room with { Open = [] }), "facility-number", "facility/gym.open");
        yield return new(With(room with { Open = [new(DayOfWeek.Monday, new(16, 15), new(20, 0))] }), "facility-grid", "facility/gym.open.Monday");
        yield return new(With(room with { Open = [new(DayOfWeek.Friday, new(20, 0), new(16, 0))] }), "facility-backward", "facility/gym.open.Friday");
        yield return new(With(room with { Open = [new(DayOfWeek.Friday, new(16, 0), new(16, 0))] }), "facility-backward", "facility/gym.open.Friday");
        yield return new(With(room with { Open = [new(DayOfWeek.Friday, new(16, 0), new(20, 0)), new(DayOfWeek.Friday, new(19, 30), new(21, 0))] }), "facility-overlap", "facility/gym.open.Friday");
        yield return new(With(room with { Closed = [DaySpan.Of(new(1900, 1, 1))] }), "day-impossible", "facility/gym.closed");
        yield return new(With(room with { Closed = Enumerable.Range(0, 101).Select(day => DaySpan.Of(Day.AddDays(day))).ToValueList() }), "facility-number", "facility/gym.closed");
        yield return new(new SetFacility(new(room, Gym.Usual(MassUnit.Kilogram) with { Racks = [GymRack.Usual(MassUnit.Kilogram) with { Name = "" }] })), "text-missing", "gym.racks.name");
        yield return new(new RemoveFacility(new("none")), "facility-unknown", "facility/none");
    }

    [Fact]
    public void Two_rooms_do_not_have_one_name()
    {
        var room = new Room(new("gym"), "Strength room", 40, 2, [new(DayOfWeek.Monday, new(16, 0), new(20, 0))]);
        var club = Club.Empty.With(Assert.IsType<Accepted>(Decider.Decide(Club.Empty, new SetFacility(new(room)))).Step);
        Assert.Equal("facility-name", Assert.IsType<Refused>(Decider.Decide(club, new SetFacility(new(room with { Id = new("annexe"), Name = "strength ROOM" })))).Reasons.Single().Id);
        Assert.IsType<Accepted>(Decider.Decide(club, new SetFacility(new(room with { Name = "strength ROOM" }))));
    }

    private static IEnumerable<Case> Workouts()
    {
        var gym = Gym.Usual(MassUnit.Kilogram);
        var rack = GymRack.Usual(MassUnit.Kilogram);
        yield return new(new SetGym(gym with { Racks = [rack, rack] }), "rack-twice", "gym.racks");
        yield return new(new SetGym(gym with { Racks = [rack with { Name = "" }] }), "text-missing", "gym.racks.name");
        yield return new(new SetGym(gym with { Racks = [rack with { Plates = [new(5), new(5)] }] }), "plate-twice", "gym.racks.plates");
        yield return new(new SetGym(gym with { Racks = [rack with { Collar = -1 }] }), "workout-number", "gym.racks.collar");
        foreach (var mass in new[] { -5m, 0, 0.0005m, 250.5m, decimal.MaxValue / 2000 }) yield return new(new SetGym(gym with { Racks = [rack with { Plates = [new(mass)] }] }), "plate-mass", "gym.racks.plates.mass");
        foreach (var pairs in new[] { int.MinValue, 0, 21 }) yield return new(new SetGym(gym with { Racks = [rack with { Plates = [new(5, pairs)] }] }), "workout-number", "gym.racks.plates.pairs");
        yield return new(new SetGym(gym with { Counts = [new(Equipment.TrapBar, 1), new(Equipment.TrapBar, 2)] }), "count-twice", "gym.counts");
        foreach (var count in new[] { int.MinValue, 0, 101 }) yield return new(new SetGym(gym with { Counts = [new(Equipment.TrapBar, count)] }), "workout-number", "gym.counts.count");
        foreach (var share in new[] { 0, 13 }) yield return new(new SetGym(gym with { AtOne = share }), "workout-number", "gym.atOne");
        yield return new(new SetGym(gym with { Dumbbells = new(10, 5, 1, MassUnit.Kilogram) }), "workout-number", "gym.steps.to");
        foreach (var step in new[] { 0, -1m }) yield return new(new SetGym(gym with { Kettlebells = new(10, 50, step, MassUnit.Kilogram) }), "plate-mass", "gym.steps.step");
        yield return new(new SetLift(new("back-squat"), new Lift("guess")), "lift-equation", "lift/back-squat.equation");
        foreach (var threshold in new[] { -1m, 0.04m, 1.51m, decimal.MaxValue / 2 }) yield return new(new SetLift(new("back-squat"), new Lift(null, threshold)), "workout-number", "lift/back-squat.threshold");
        yield return new(new RemoveWorkout(new("none")), "workout-unknown", "workout/none");
        yield return new(new SetSession(Practice with { Workout = new("none") }), "workout-unknown", "workout/none");
        yield return new(new SetWorkout(Legs with { Name = " " }), "text-missing", "workout/k.name");
        yield return new(new SetWorkout(Legs with { Parts = Enumerable.Repeat(Squats with { Items = [] }, 13).ToValueList() }), "workout-number", "workout/k.parts");
        yield return new(new SetWorkout(Legs with { Parts = [Squats with { Items = [] }] }), "workout-number", "workout/k.parts.items");
        yield return new(new SetWorkout(Legs with { Parts = [Squats, Squats] }), "workout-twice", "workout/k.parts");
        foreach (var rest in new[] { int.MinValue, -1, 901, int.MaxValue }) yield return new(new SetWorkout(Legs with { Parts = [Squats with { Rest = rest }] }), "workout-number", "workout/k.parts.rest");
        foreach (var sets in new[] { int.MinValue, 0, 21, int.MaxValue }) yield return Written(Fives with { Sets = sets }, "workout-number", "sets");
        foreach (var (amount, unit) in new[] { (0, WorkUnit.Repetitions), (101, WorkUnit.Repetitions), (3_601, WorkUnit.Seconds), (20_001, WorkUnit.Metres), (int.MinValue, WorkUnit.Metres) })
            yield return Written(Fives with { Amount = amount, Unit = unit }, "workout-number", "amount");
        foreach (var (kind, amount) in new[] { (EffortKind.OfMax, 19m), (EffortKind.OfMax, 130.5m), (EffortKind.Reserve, -1m), (EffortKind.Reserve, 10.5m), (EffortKind.Velocity, 0.04m), (EffortKind.Velocity, 4.1m), (EffortKind.OfBodyMass, 0m), (EffortKind.OfBodyMass, decimal.MaxValue / 2) })
            yield return Written(Fives with { Effort = new(kind, amount) }, "workout-number", "effort.amount");
        foreach (var effort in new[] { new Effort(EffortKind.Free, 5), new Effort(EffortKind.Fixed), new Effort(EffortKind.Fixed, 5, new Weight(20)), new Effort(EffortKind.OfMax, 80, new Weight(20)), new Effort(EffortKind.OfMax, 80, null, new Percent(20)) })
            yield return Written(Fives with { Effort = effort }, "workout-effort", "effort");
        foreach (var loss in new[] { 0, 4, 61, 300 }) yield return Written(Fives with { Effort = new(EffortKind.Velocity, 0.5m, null, new Percent(loss)) }, "workout-number", "effort.stopLoss");
        foreach (var percent in new[] { -1, 10.5m }) yield return new(new SetWorkout(Legs with { Progression = new(ProgressionKind.Linear, percent) }), "workout-number", "workout/k.progression.percent");
        foreach (var fewer in new[] { -1, 6 }) yield return new(new SetWorkout(Legs with { Progression = new(ProgressionKind.Linear, 0, fewer) }), "workout-number", "workout/k.progression.repetitions");
        foreach (var more in new[] { -1, 3 }) yield return new(new SetWorkout(Legs with { Progression = new(ProgressionKind.Linear, 0, 0, more) }), "workout-number", "workout/k.progression.sets");
        foreach (var cells in new ValueList<WorkoutCell>[] { [new(new("w1"), new("other"), null)], [new(new("w1"), new("i"), null), new(new("w1"), new("i"), Fives)] })
            yield return new(new SetWorkout(Legs with { Cells = cells }), "workout-cell", "workout/k.cells");
        yield return new(new SetWorkout(Legs with { Cells = [new(new("w1"), new("i"), Fives with { Sets = 0 })] }), "workout-number", "workout/k.sets");

        static Case Written(Prescription prescription, string id, string field) =>
            new(new SetWorkout(Legs with { Parts = [Squats with { Items = [new WorkoutItem(new("i"), new("back-squat"), prescription)] }] }), id, $"workout/k.{field}");
    }

    private static readonly HomeRun Intervals = new(6, 300, WorkUnit.Metres, new Percent(95), 90, 10);

    private static readonly HomeProgramme Break = new(new("h"), "Break", Day, 2, HomeKit.Nothing, [new HomeDay(DayOfWeek.Monday, null, Intervals)]);

    private static IEnumerable<Case> Homes()
    {
        yield return new(new RemoveHomeProgramme(new("none")), "home-unknown", "home/none");
        yield return new(new SetHomeProgramme(Break with { Name = " " }), "text-missing", "home/h.name");
        yield return new(new SetHomeProgramme(Break with { FirstDay = DateOnly.MaxValue }), "day-impossible", "home/h.firstDay");
        foreach (var weeks in new[] { int.MinValue, 0, 7, int.MaxValue }) yield return new(new SetHomeProgramme(Break with { Weeks = weeks }), "home-weeks", "home/h.weeks");
        foreach (var days in new ValueList<HomeDay>[] { [], [new(DayOfWeek.Monday)], [new(DayOfWeek.Monday, null, null, "Rest well")] }) yield return new(new SetHomeProgramme(Break with { Days = days }), "home-days", "home/h.days");
        yield return new(new SetHomeProgramme(Break with { Days = [.. Break.Days, .. Break.Days] }), "home-twice", "home/h");
        yield return new(new SetHomeProgramme(Break with { Kit = new([Equipment.Band, Equipment.Band]) }), "home-twice", "home/h");
        yield return new(new SetHomeProgramme(Break with { Groups = [] }), "home-nobody", "home/h.for");
        yield return new(new SetHomeProgramme(Break with { People = [] }), "home-nobody", "home/h.for");
        yield return new(new SetHomeProgramme(Break with { People = Enumerable.Range(0, 61).Select(n => new PersonId($"p{n}")).ToValueList() }), "home-nobody", "home/h.for");
        yield return new(new SetHomeProgramme(Break with { Groups = [new("none")] }), "group-unknown", "group/none");
        yield return new(new SetHomeProgramme(Break with { Days = [new(DayOfWeek.Monday, new("none"))] }), "workout-unknown", "workout/none");
        foreach (var (from, to, step, id, field) in new[] { (0m, 10m, 2m, "plate-mass", "from"), (2m, 10m, -1m, "plate-mass", "step"), (8m, 4m, 2m, "workout-number", "to") })
            yield return new(new SetHomeProgramme(Break with { Kit = new([], new WeightSteps(from, to, step, MassUnit.Kilogram)) }), id, $"home/h.kit.steps.{field}");
        foreach (var repetitions in new[] { int.MinValue, 0, 41, int.MaxValue }) yield return Running(Intervals with { Repetitions = repetitions }, "repetitions");
        foreach (var (amount, unit) in new[] { (0, WorkUnit.Metres), (19, WorkUnit.Metres), (20_001, WorkUnit.Metres), (9, WorkUnit.Seconds), (7_201, WorkUnit.Seconds), (int.MinValue, WorkUnit.Seconds) }) yield return Running(Intervals with { Amount = amount, Unit = unit }, "amount");
        foreach (var speed in new[] { 0, 49, 121, 300 }) yield return Running(Intervals with { Speed = new Percent(speed) }, "speed");
        foreach (var rest in new[] { -1, 901 }) yield return Running(Intervals with { Rest = rest }, "rest");
        foreach (var more in new[] { -1, 21 }) yield return Running(Intervals with { More = more }, "more");
        yield return new(new SetHomeProgramme(Break with { Days = [new(DayOfWeek.Monday, null, Intervals with { Unit = WorkUnit.Repetitions })] }), "run-unit", "home/h.days.run.unit");

        yield return Running(Intervals with { Repetitions = 40, Amount = 501 }, "inAll");
        yield return Running(Intervals with { Repetitions = 4, Amount = 1_801, Unit = WorkUnit.Seconds }, "inAll");

        static Case Running(HomeRun run, string field) => new(new SetHomeProgramme(Break with { Days = [new(DayOfWeek.Monday, null, run)] }), "run-number", $"home/h.days.run.{field}");
    }

    private static IEnumerable<Case> Sessions()
    {
        foreach (var minutes in new[] { 0, 4, 481, 1440 }) yield return new(new SetSession(Practice with { Minutes = new Minutes(minutes) }), "session-number", "session/s.minutes");
        foreach (var sets in new[] { int.MinValue, -1, 0, 61, int.MaxValue }) yield return new(new SetSession(Practice with { Doses = new([new Dose(new("power"), sets)]) }), "session-number", "session/s.doses.sets");
        foreach (var top in new[] { 0, 19, 131, 300 }) yield return new(new SetSession(Practice with { Doses = new([new Dose(new("power"), 3, new Percent(top))]) }), "session-number", "session/s.doses.top");
        foreach (var contacts in new[] { int.MinValue, -1, 0, 501, int.MaxValue }) yield return new(new SetSession(Practice with { Doses = new([new Dose(new("power"), Contacts: contacts)]) }), "session-number", "session/s.doses.contacts");
        foreach (var metres in new[] { int.MinValue, -1, 0, 3001, int.MaxValue }) yield return new(new SetSession(Practice with { Doses = new([new Dose(new("power"), Metres: metres)]) }), "session-number", "session/s.doses.metres");
        yield return new(new SetSession(Practice with { Doses = Enumerable.Range(1, 11).Select(n => new Dose(new($"q{n}"))).ToValueList() }), "session-number", "session/s.doses");
        yield return new(new SetSession(Practice with { Doses = new([new(new("power")), new(new("power"), 3)]) }), "session-twice", "session/s.doses");
        yield return new(new SetSession(Practice with { Waves = Enumerable.Range(1, 7).Select(n => new Wave($"{n}", new(8, n))).ToValueList() }), "session-number", "session/s.waves");
        yield return new(new SetSession(Practice with { Waves = new([new("Early", new(8, 0)), new("Early", new(9, 0))]) }), "session-twice", "session/s.waves");
        yield return new(new SetSession(Practice with { Groups = ValueList<GroupId>.Empty }), "session-number", "session/s.groups");
        yield return new(new SetSession(Practice with { Groups = new([new("r"), new("r")]) }), "session-twice", "session/s.groups");
        // A day with three practices for everyone, and one with two and one of the rookies' own.
        yield return new(new SetSession(Practice with { Day = Day.AddDays(1) }), "session-day-full", "session/s.day");
        yield return new(new SetSession(Practice with { Day = Day.AddDays(1), Groups = new([new("r")]) }), "session-day-full", "session/s.day");
        yield return new(new SetSession(Practice with { Day = Day.AddDays(2) }), "session-day-full", "session/s.day");
        yield return new(new SetSession(Practice with { Day = Day.AddDays(2), Groups = new([new("r")]) }), "session-day-full", "session/s.day");
    }

    private static IEnumerable<SeasonEdit> FullDays() => Enumerable.Range(1, 6).Select(n => new SetSession(Practice with { Id = new($"full{n}"), Day = Day.AddDays(n < 4 ? 1 : 2), Groups = n == 6 ? new([new("r")]) : null }));

    private static ValueList<WeekId> Weeks(int count, string prefix = "w") => Enumerable.Range(1, count).Select(n => new WeekId($"{prefix}{n}")).ToValueList();

    [Fact]
    public void A_full_day_takes_what_nobody_has_too_much_of()
    {
        foreach (var session in new[]
        {
            Practice with { Day = Day.AddDays(1), Kind = SessionKind.Power },
            Practice with { Day = Day.AddDays(1), IsCancelled = true },
            Practice with { Day = Day.AddDays(1), Id = new("full1"), Minutes = new Minutes(60) },
            Practice with { Day = Day.AddDays(2), Groups = new([new("other")]) },
        }) Assert.IsType<Accepted>(Decider.Decide(History.After(Season, new SetGroup(new GroupLine(new("other"), "Others"))), new SetSession(session)));
    }

    private sealed record Case(Edit Edit, string Id, string Subject);

    private static readonly (string Text, string Id)[] BadNames =
    [
        (new string('x', 121), "text-long"), (new string('x', 100_000), "text-long"), ("a\0b", "text-control"), ("a\u0007", "text-control"),
        ("\u001b[31m", "text-control"), ("a\u0085b", "text-control"), ("a\rb", "text-control"), ("\ud83d", "text-control"), ("a\udc00b", "text-control"),
    ];

    private static readonly (string Text, string Id)[] NoNames = [("", "text-missing"), ("   ", "text-missing"), ("\t\n", "text-missing")];

    private static readonly (string Text, string Id)[] BadTexts = [.. BadNames.Skip(1), (new string('x', 2001), "text-long")];

    private static readonly DateOnly[] ImpossibleDays = [DateOnly.MinValue, new(1900, 1, 1), new(1949, 12, 31), new(2150, 1, 1), new(2999, 6, 1), DateOnly.MaxValue];

    private static IEnumerable<Case> Texts()
    {
        foreach (var (text, id) in BadNames.Concat(NoNames))
        {
            yield return new(new NameTeam(new TeamCard(text)), id, "team.name");
            yield return new(new SetGoal(new Goal(new("g1"), 1, text)), id, "goal/g1.measure");
            yield return new(new SetEvent(new Event(new("e"), EventKind.Camp, text, DaySpan.Of(Day))), id, "event/e.title");
            yield return new(new SetTestDay(new TestDay(new("d"), Day, text)), id, "test/d.battery");
            yield return new(new SetSession(Practice with { Waves = new([new(text, new(8, 0))]) }), id, "session/s.waves");
            yield return new(new SetTrack(new Track(new("t"), text, TrackForm.Text)), id, "track/t.name");
            yield return new(new SetTrack(new Track(new("t"), "Hall", TrackForm.Choice, Choices: new(["A", text]))), id, "track/t.choices");
            yield return new(new SetGroup(new GroupLine(new("r"), text)), id, "group/r.name");
            yield return new(new SetTeamName(text), id, "name");
            yield return new(new SetQuality(new Quality(new("q"), text, QualityKind.Other, 1)), id, "quality/q.name");
        }
        foreach (var (text, id) in BadNames)
        {
            yield return new(new NameTeam(new TeamCard("a", text)), id, "team.title");
            yield return new(new NameTeam(new TeamCard("a", Sport: text)), id, "team.sport");
            yield return new(new PaintPhase(new("w1"), new("w2"), new("n"), PhaseKind.Peak, new("rest"), text), id, "phase/n.name");
            yield return new(new PaintBlock(new("w1"), new("w2"), new("n"), BlockKind.Peak, new("rest"), text), id, "block/n.name");
            yield return new(new RenamePhase(new("p"), text), id, "phase/p.name");
            yield return new(new RenameBlock(new("b"), text), id, "block/b.name");
            yield return new(new Publish(text), id, "name");
            yield return new(new SetSession(Practice with { Name = text }), id, "session/s.name");
            yield return new(new SetSession(Practice with { Place = text }), id, "session/s.place");
            yield return new(new SetSession(Practice with { Waves = new([new(text, new(8, 0))]) }), id, "session/s.waves");
            yield return new(new SetTestDay(new TestDay(new("d"), Day, "Jump", text)), id, "test/d.part");
            yield return new(new SetTestDay(new TestDay(new("d"), Day, "Jump", For: text)), id, "test/d.for");
            yield return new(new ImportFixtures(ValueList<Match>.Empty, text), id, "from");
            yield return new(new ImportEvents(ValueList<Event>.Empty, ValueList<TestDay>.Empty, text), id, "from");
            yield return new(new SetRuleParameter(new("ramp", "most"), text), id, "rule/ramp:most");
        }
        foreach (var (text, id) in BadTexts)
        {
            var match = new Match(new("m"), Day);
            yield return new(new SetMatch(match with { Opponent = text }), id, "match/m.opponent");
            yield return new(new SetMatch(match with { Competition = text }), id, "match/m.competition");
            yield return new(new SetMatch(match with { Round = text }), id, "match/m.round");
            yield return new(new SetMatch(match with { Place = text }), id, "match/m.place");
            yield return new(new SetMatch(match with { Result = text }), id, "match/m.result");
            yield return new(new SetMatch(match with { Note = text }), id, "match/m.note");
            yield return new(new SetMatch(match with { Condition = new Condition(Words: text) }), id, "match/m.condition");
            yield return new(new SetMatch(match with { Series = new Series(text, 1, 3) }), id, "match/m.series");
            yield return new(new SetMatch(match with { Source = new MatchSource(text) }), id, "match/m.source");
            yield return new(new ImportFixtures(new([match with { Opponent = text }]), "list"), id, "match/m.opponent");
            var item = new Event(new("e"), EventKind.Travel, "Away", DaySpan.Of(Day));
            yield return new(new SetEvent(item with { Part = text }), id, "event/e.part");
            yield return new(new SetEvent(item with { For = text }), id, "event/e.for");
            yield return new(new SetEvent(item with { Place = text }), id, "event/e.place");
            yield return new(new SetEvent(item with { Note = text }), id, "event/e.note");
            yield return new(new SetEvent(item with { Source = new EventSource(text, "Away") }), id, "event/e.source");
            yield return new(new SetEvent(item with { Source = new EventSource("list", text) }), id, "event/e.source");
            yield return new(new SetTestDay(new TestDay(new("d"), Day, "Jump", Source: new EventSource(text, "Jump"))), id, "test/d.source");
            yield return new(new SetEvent(item with { Legs = new([new Leg(Day, From: text)]) }), id, "event/e.leg");
            yield return new(new SetEvent(item with { Legs = new([new Leg(Day, To: text)]) }), id, "event/e.leg");
            yield return new(new SetWeekNote(new("w1"), text), id, "week/w1.note");
            yield return new(new AcceptFinding(new("ramp", "rise", "week/w1"), new Acceptance(text, 1m, "")), id, "reason");
            yield return new(new AcceptFinding(new("ramp", "rise", "week/w1"), new Acceptance("Camp", 1m, text)), id, "figures");
            yield return new(new SetPracticeWish(new("w1"), text), id, "week/w1.wish");
            yield return new(new SetNote(new Note(new("o"), DaySpan.Of(Day), text)), id, "note/o.text");
            yield return new(new SetCells(new([new(new("text"), CellPlace.Of(new WeekId("w1")), text.TrimEnd('\r') + "x")])), id, "track/text");
        }
        yield return new(new SetTrack(new Track(new("t"), "Weight", TrackForm.Number, Unit: new string('k', 21))), "text-long", "track/t.unit");
        yield return new(new NameTeam(new TeamCard("a", Crest: "ABCD")), "text-long", "team.crest");
        foreach (var colour in new[] { "", "red", "#12345", "#1234567", "123456#", "#12345g", "#１２３４５６" })
            yield return new(new NameTeam(new TeamCard("a", CrestColour: colour)), "colour", "team.crestColour");
    }

    private static IEnumerable<Case> Days()
    {
        foreach (var day in ImpossibleDays)
        {
            yield return new(new Redate(day, DayOfWeek.Monday, RedatePlan.Moves, ValueList<WeekId>.Empty), "day-impossible", "firstDay");
            yield return new(new Redate(day, DayOfWeek.Sunday, RedatePlan.Stays, Weeks(900, "n")), "day-impossible", "firstDay");
            yield return new(new SetMatch(new Match(new("n"), day)), "day-impossible", "match/n.day");
            yield return new(new SetMatch(new Match(new("n"), day < Day ? day : Day, day, Status: MatchStatus.Window)), "day-impossible", "match/n.lastDay");
            yield return new(new MoveMatch(new("m"), day), "day-impossible", "match/m.day");
            yield return new(new ImportFixtures(new([new Match(new("n"), day)]), "list"), "day-impossible", "match/n.day");
            yield return new(new SetEvent(new Event(new("e"), EventKind.Camp, "Camp", DaySpan.Of(day))), "day-impossible", "event/e.first");
            yield return new(new SetEvent(new Event(new("e"), EventKind.Travel, "Away", DaySpan.Of(Day), Legs: new([new Leg(day)]))), "day-impossible", "event/e.leg");
            yield return new(new SetEvent(new Event(new("e"), EventKind.Travel, "Away", DaySpan.Of(Day), Legs: new([new Leg(Day, ArrivalDay: day)]))), "day-impossible", "event/e.leg");
            yield return new(new ImportEvents(new([new Event(new("e"), EventKind.Camp, "Camp", DaySpan.Of(day))]), ValueList<TestDay>.Empty, "list"), "day-impossible", "event/e.last");
            yield return new(new SetTestDay(new TestDay(new("d"), day, "Jump")), "day-impossible", "test/d.day");
            yield return new(new SetSession(Practice with { Day = day }), "day-impossible", "session/s.day");
            yield return new(new SetNote(new Note(new("o"), DaySpan.Of(day), "a")), "day-impossible", "note/o.first");
            yield return new(new SetGoal(new Goal(new("g1"), 1, "a", By: day)), "day-impossible", "goal/g1.by");
            yield return new(new SetCells(new([new(new("days"), CellPlace.Of(day), "a")])), "day-impossible", "track/days");
        }
        yield return new(new SetMatch(new Match(new("n"), Day, Day.AddDays(-1), Status: MatchStatus.Window)), "days-backward", "match/n.lastDay");
        yield return new(new SetMatch(new Match(new("n"), null, Day, Status: MatchStatus.Conditional)), "days-backward", "match/n.lastDay");
        yield return new(new MoveMatch(new("m"), Day, Day.AddDays(-1)), "days-backward", "match/m.lastDay");
        yield return new(new SetMatch(new Match(new("n"), null)), "match-undated", "match/n");
        yield return new(new SetMatch(new Match(new("n"), null, Status: MatchStatus.Provisional)), "match-undated", "match/n");
        yield return new(new SetMatch(new Match(new("n"), Day, Status: MatchStatus.Window)), "window-open", "match/n");
        yield return new(new Redate(new(2126, 7, 1), DayOfWeek.Monday, RedatePlan.Stays, Weeks(6000, "n")), "weeks-kept", "weeks");
        yield return new(new Redate(new(1950, 7, 1), DayOfWeek.Monday, RedatePlan.Stays, Weeks(6000, "n")), "weeks-kept", "weeks");
    }

    private static IEnumerable<Case> Spans()
    {
        Func<WeekId, WeekId, SeasonEdit>[] edits =
        [
            (first, last) => new PaintPhase(first, last, new("n"), PhaseKind.Peak, new("rest")),
            (first, last) => new ErasePhase(first, last, new("rest")),
            (first, last) => new PaintBlock(first, last, new("n"), BlockKind.Peak, new("rest")),
            (first, last) => new EraseBlock(first, last, new("rest")),
            (first, last) => new SetWeekKind(first, last, WeekKind.Building),
            (first, last) => new SetWeekLoad(first, last, new Load(100)),
            (first, last) => new SetEmphasis(first, last, new("power"), Emphasis.Focus),
            (first, last) => new SetGroupWeek(new("r"), first, last, new Percent(80)),
            (first, last) => new SetGroupEmphasis(new("r"), first, last, new("power"), Emphasis.None),
            (first, last) => new SetPractices(first, last, new Practices(3)),
            (first, last) => new LockWeeks(first, last, true),
            (first, last) => new MarkReady(first, last, true),
        ];
        foreach (var (edit, index) in edits.Select((edit, index) => (edit, index)))
        {
            yield return new(edit(new("foreign"), new("w2")), "week-unknown", "week/foreign");
            yield return new(edit(new("w2"), new("foreign")), "week-unknown", "week/foreign");
            yield return new(edit(new("foreign"), new("foreign")), "week-unknown", "week/foreign");
            yield return new(edit(new("w21"), new("w22")), "week-unknown", "week/w22");
            yield return new(edit(new("w5"), new("w4")), "weeks-backward", "week/w5");
            yield return new(edit(new("w20"), new("w1")), "weeks-backward", "week/w20");
            // Practices, locks and ready marks may change in a locked week.
            if (index >= 9) continue;
            yield return new(edit(new("w7"), new("w7")), "week-locked", "week/w7");
            yield return new(edit(new("w1"), new("w20")), "week-locked", "week/w7");
        }
        yield return new(new SetPracticeWish(new("foreign"), "a"), "week-unknown", "week/foreign");
        yield return new(new SetWeekNote(new("foreign"), "a"), "week-unknown", "week/foreign");
        yield return new(new SetCells(new([new(new("text"), CellPlace.Of(new WeekId("foreign")), "a")])), "week-unknown", "week/foreign");
        yield return new(new ErasePhase(new("w4"), new("w4"), new("p")), "rest-taken", "phase/p");
        yield return new(new PaintBlock(new("w4"), new("w4"), new("n"), BlockKind.Peak, new("n")), "rest-taken", "block/n");
        yield return new(new PaintPhase(new("w15"), new("w16"), new("p"), PhaseKind.GeneralPreparation, new("rest")), "run-apart", "phase/p");
    }

    private static IEnumerable<Case> Unknown()
    {
        foreach (var id in new[] { "none", "M", "w1", "0", new string('z', 64) })
        {
            yield return new(new RemoveMatch(new(id)), "match-unknown", $"match/{id}");
            yield return new(new MoveMatch(new(id), Day), "match-unknown", $"match/{id}");
            yield return new(new SettleMatch(new(id), Outcome.Won), "match-unknown", $"match/{id}");
            yield return new(new SetMatch(new Match(new("n"), Day, Condition: new Condition(new MatchId(id)))), "match-unknown", $"match/{id}");
            yield return new(new ImportFixtures(new([new Match(new("n"), Day, Condition: new Condition(new MatchId(id)))]), "list"), "match-unknown", $"match/{id}");
            yield return new(new RemoveEvent(new(id)), "event-unknown", $"event/{id}");
            yield return new(new RemoveTestDay(new(id)), "test-unknown", $"test/{id}");
            yield return new(new RemoveSession(new(id)), "session-unknown", $"session/{id}");
            yield return new(new SetSession(Practice with { Groups = new([new("r"), new(id)]) }), "group-unknown", $"group/{id}");
            yield return new(new SetSession(Practice with { Groups = new([new("r")]), Waves = new([new("Early", new(8, 0), new(id))]) }), "wave-group", "session/s.waves");
            yield return new(new RemoveNote(new(id)), "note-unknown", $"note/{id}");
            yield return new(new RemoveGoal(new(id)), "goal-unknown", $"goal/{id}");
            yield return new(new RemoveGroup(new(id)), "group-unknown", $"group/{id}");
            yield return new(new RemoveTrack(new(id)), "track-unknown", $"track/{id}");
            yield return new(new RenamePhase(new(id), "a"), "phase-unknown", $"phase/{id}");
            yield return new(new RenameBlock(new(id), "a"), "block-unknown", $"block/{id}");
            yield return new(new SetGroupWeek(new(id), new("w1"), new("w1"), null), "group-unknown", $"group/{id}");
            yield return new(new SetGroupEmphasis(new(id), new("w1"), new("w1"), new("power"), null), "group-unknown", $"group/{id}");
            yield return new(new SetCells(new([new(new(id), CellPlace.Of(new WeekId("w1")), "a")])), "track-unknown", $"track/{id}");
            yield return new(new RemoveQuality(new(id)), "quality-unknown", $"quality/{id}");
        }
        foreach (var zone in new[] { "", "Berlin", "europe/berlin ", "UTC+1", "Europe/Atlantis" })
        {
            yield return new(new SetMatch(new Match(new("n"), Day, Zone: zone)), "zone-unknown", "match/n.zone");
            yield return new(new SetLocale(new LocaleSettings(Zone: zone)), "zone-unknown", "locale.zone");
        }
    }

    private static IEnumerable<Case> Numbers()
    {
        foreach (var count in new[] { int.MinValue, -1, 0, 61, 1000, int.MaxValue }) yield return new(new Resize(count, Weeks(100, "n")), "weeks-count", "weeks");
        yield return new(new Resize(21, ValueList<WeekId>.Empty), "new-weeks", "newWeeks");
        yield return new(new Resize(30, Weeks(9, "n")), "new-weeks", "newWeeks");
        yield return new(new Resize(21, new([new("w1")])), "new-weeks", "newWeeks");
        yield return new(new Resize(22, new([new("n"), new("n")])), "new-weeks", "newWeeks");
        yield return new(new Redate(new(2027, 8, 2), DayOfWeek.Monday, RedatePlan.Stays, Weeks(3, "n")), "new-weeks", "newWeeks");
        yield return new(new Redate(new(2027, 8, 2), DayOfWeek.Monday, RedatePlan.Stays, Weeks(4)), "new-weeks", "newWeeks");
        yield return new(new StartSeason(new(2027, 7, 5), DayOfWeek.Monday, Weeks(20), new("a")), "season-started", "frame");
        yield return new(new AdoptSeason(Season.Facts, "file"), "season-started", "frame");
        foreach (var count in new[] { int.MinValue, -1, 15, int.MaxValue })
        {
            yield return new(new SetPractices(new("w1"), new("w2"), new Practices(count)), "practices-count", "practices.count");
            var sessions = new Sessions(3, new Minutes(60), new Rpe(5));
            yield return new(new SetUsualWeek(new UsualWeek(sessions with { Count = count }, sessions, sessions)), "practices-count", "usualWeek.practices");
            yield return new(new SetUsualWeek(new UsualWeek(sessions, sessions with { Count = count }, sessions)), "practices-count", "usualWeek.gym");
            yield return new(new SetUsualWeek(new UsualWeek(sessions, sessions, sessions with { Count = count })), "practices-count", "usualWeek.conditioning");
        }
        foreach (var week in new[] { TypicalWeek with { Days = new(Day, Day.AddDays(7)) }, TypicalWeek with { MatchDays = [Day.AddDays(1)] }, TypicalWeek with { Sessions = [Placed with { Day = Day.AddDays(-1) }] } })
            yield return new(new SetTypicalWeek(week), "typical-week-days", "typicalWeek/y.days");
        foreach (var sessions in new[] { 0, 43 })
            yield return new(new SetTypicalWeek(TypicalWeek with { Sessions = Enumerable.Range(1, sessions).Select(number => Placed with { Id = new($"s{number}") }).ToValueList() }), "typical-week-sessions", "typicalWeek/y.sessions");
        yield return new(new SetTypicalWeek(TypicalWeek with { Sessions = [Placed, Placed] }), "session-twice", "typicalWeek/y.sessions");
        foreach (var session in new[] { Placed with { IsLocked = true }, Placed with { IsCancelled = true } })
            yield return new(new SetTypicalWeek(TypicalWeek with { Sessions = [session] }), "typical-week-locked", "typicalWeek/y.sessions");
        yield return new(new SetTypicalWeek(TypicalWeek with { Name = " " }), "text-missing", "typicalWeek/y.name");
        yield return new(new SetTypicalWeek(TypicalWeek with { Days = DaySpan.Of(DateOnly.MinValue), MatchDays = [], Sessions = [Placed with { Day = DateOnly.MinValue }] }), "day-impossible", "typicalWeek/y.days");
        yield return new(new RemoveTypicalWeek(new("y")), "typical-week-unknown", "typicalWeek/y");
        yield return new(new SetExercise(Own with { Name = " " }), "text-missing", "exercise/x.name");
        yield return new(new SetExercise(Own with { Muscles = [] }), "exercise-muscles", "exercise/x.muscles");
        foreach (var exercise in new[] { Own with { Muscles = [Muscle.Calves, Muscle.Calves] }, Own with { Equipment = [Equipment.Box, Equipment.Box] }, Own with { Demands = [Demand.Jump, Demand.Jump] } })
            yield return new(new SetExercise(exercise), "exercise-twice", "exercise/x");
        foreach (var contacts in new[] { int.MinValue, -1, 21, int.MaxValue }) yield return new(new SetExercise(Own with { Contacts = contacts }), "exercise-contacts", "exercise/x.contacts");
        yield return new(new SetExercise(Own with { Easier = Own.Id }), "exercise-itself", "exercise/x");
        yield return new(new SetExercise(Own with { Harder = new("none") }), "exercise-unknown", "exercise/x.harder");
        yield return new(new SetExercise(Own with { Easier = new("none") }), "exercise-unknown", "exercise/x.easier");
        yield return new(new SetExercise(Own with { MaxOf = new("none"), MaxShare = new Percent(80) }), "exercise-unknown", "exercise/x.maxOf");
        foreach (var share in new[] { 0, 9, 151, 300 }) yield return new(new SetExercise(Own with { MaxOf = new("back-squat"), MaxShare = new Percent(share) }), "exercise-share", "exercise/x.maxShare");
        foreach (var exercise in new[] { Own with { MaxOf = new("back-squat") }, Own with { MaxShare = new Percent(80) }, Own with { Load = LoadedBy.Nothing, MaxOf = new("back-squat"), MaxShare = new Percent(80) } })
            yield return new(new SetExercise(exercise), "exercise-share", "exercise/x.maxShare");
        foreach (var of in new[] { "front-squat", "press-up" }) yield return new(new SetExercise(Own with { MaxOf = new(of), MaxShare = new Percent(80) }), "exercise-guess", "exercise/x.maxOf");
        foreach (var id in new[] { "x", "back-squat" }) yield return new(new RemoveExercise(new(id)), "exercise-not-own", $"exercise/{id}");
        foreach (var percent in new[] { 0, 39, 201, 300 }) yield return new(new SetBrief(new Brief(new Percent(percent))), "brief-number", "brief.largestWeek");
        foreach (var weeks in new[] { int.MinValue, 1, 21, int.MaxValue }) yield return new(new SetBrief(Brief.Default with { WeeksBetween = weeks }), "brief-number", "brief.weeksBetween");
        foreach (var count in new[] { int.MinValue, -1, 31, int.MaxValue }) yield return new(new SetBrief(Brief.Default with { Tests = count }), "brief-number", "brief.tests");
        foreach (var days in new[] { 0, 1, 8 }) yield return new(new SetBrief(Brief.Default with { Time = new([new PhaseTime(PhaseKind.Peak, Days: days)]) }), "brief-number", "brief.time.days");
        foreach (var hours in new[] { 0, 1, 41 }) yield return new(new SetBrief(Brief.Default with { Time = new([new PhaseTime(PhaseKind.Peak, Hours: hours)]) }), "brief-number", "brief.time.hours");
        yield return new(new SetBrief(Brief.Default with { Time = new([new PhaseTime(PhaseKind.Peak), new PhaseTime(PhaseKind.Peak, 3)]) }), "brief-twice", "brief.time");
        yield return new(new SetBrief(Brief.Default with { Tapers = new([new MatchTaper(new("m"), TaperStyle.None), new MatchTaper(new("m"), TaperStyle.Full)]) }), "brief-twice", "brief.tapers");
        foreach (var rank in new[] { int.MinValue, 0, 4, int.MaxValue }) yield return new(new SetGoal(new Goal(new("g1"), rank, "a")), "goal-rank", "goal/g1.rank");
        foreach (var shift in new[] { int.MinValue, -61, 61, int.MaxValue }) yield return new(new SetGroup(new GroupLine(new("r"), "a", shift)), "phase-shift", "group/r.phaseShift");
        foreach (var nights in new[] { int.MinValue, -1, 121, int.MaxValue }) yield return new(new SetEvent(new Event(new("e"), EventKind.Camp, "a", DaySpan.Of(Day), Nights: nights)), "nights", "event/e.nights");
        foreach (var training in new[] { 131, 300 }) yield return new(new SetEvent(new Event(new("e"), EventKind.Camp, "a", DaySpan.Of(Day), Training: new Percent(training))), "training", "event/e.training");
        foreach (var shift in new[] { -26.5m, 27m, decimal.MaxValue }) yield return new(new SetEvent(new Event(new("e"), EventKind.Travel, "a", DaySpan.Of(Day), Legs: new([new Leg(Day, ZoneShift: shift)]))), "zone-shift", "event/e.leg");
        foreach (var (game, bestOf) in new[] { (0, 3), (4, 3), (-1, 5), (1, 2), (1, 4), (1, 1), (1, 11), (1, -3), (int.MaxValue, 3) })
            yield return new(new SetMatch(new Match(new("n"), Day, Series: new Series("final", game, bestOf))), "series", "match/n.series");
        yield return new(new SetGoal(new Goal(new("g4"), 1, "a")), "goals-full", "goal");
        yield return new(new SetMatch(new Match(new("m"), Day, Condition: new Condition(new MatchId("m")))), "condition-itself", "match/m");
        yield return new(new SetTrack(new Track(new("t"), "a", TrackForm.Choice)), "choices-missing", "track/t.choices");
        yield return new(new SetTrack(new Track(new("text"), "Room", TrackForm.Tick)), "track-filled", "track/text");
        yield return new(new SetTrack(new Track(new("text"), "Room", TrackForm.Text, TrackGrain.Day)), "track-filled", "track/text");
    }

    private static IEnumerable<Case> Cells()
    {
        Case Of(string track, CellPlace place, string value, string id) => new(new SetCells(new([new(new(track), place, value)])), id, $"track/{track}");
        foreach (var value in new[] { "many", "1,5", "1.5.2", "0x10", "½", "1 000", "NaN", "1e400", new string('9', 40) }) yield return Of("number", CellPlace.Of(new WeekId("w1")), value, "cell-value");
        foreach (var value in new[] { "true", "1", "Yes", "x" }) yield return Of("tick", CellPlace.Of(new WeekId("w1")), value, "cell-value");
        foreach (var value in new[] { "C", "a", "A, B" }) yield return Of("choice", CellPlace.Of(new WeekId("w1")), value, "cell-value");
        yield return Of("text", CellPlace.Of(Day), "a", "cell-grain");
        yield return Of("days", CellPlace.Of(new WeekId("w1")), "a", "cell-grain");
        // A place that is neither a week nor a day.
        yield return Of("text", default, "a", "cell-grain");
        yield return Of("days", default, "a", "cell-grain");
    }

    private static IEnumerable<Case> Lists()
    {
        var match = new Match(new("n"), Day);
        var item = new Event(new("e"), EventKind.Camp, "a", DaySpan.Of(Day));
        var test = new TestDay(new("d"), Day, "Jump");
        yield return new(new ImportFixtures(new([match, match]), "list"), "match-twice", "matches");
        yield return new(new ImportFixtures(new([match, match with { Day = Day.AddDays(7) }]), "list"), "match-twice", "matches");
        yield return new(new ImportFixtures(Enumerable.Range(0, 501).Select(n => new Match(new($"n{n}"), Day)).ToValueList(), "list"), "import-large", "matches");
        yield return new(new ImportEvents(new([item, item]), ValueList<TestDay>.Empty, "list"), "entry-twice", "events");
        yield return new(new ImportEvents(ValueList<Event>.Empty, new([test, test with { Battery = "Sprint" }]), "list"), "entry-twice", "events");
        yield return new(new ImportEvents(Enumerable.Range(0, 501).Select(n => item with { Id = new($"e{n}") }).ToValueList(), ValueList<TestDay>.Empty, "list"), "import-large", "events");
    }

    private static readonly Case[] All = [.. Texts(), .. Days(), .. Spans(), .. Unknown(), .. Numbers(), .. Cells(), .. Lists(), .. Sessions(), .. Workouts(), .. Facilities(), .. Homes()];

    [Fact]
    public void Every_one_is_refused_in_words()
    {
        Assert.True(All.Length > 700, $"{All.Length} cases");
        var before = FactSet.Empty.Evolve(Step.Between(FactSet.Empty, Season.Facts));
        foreach (var (edit, id, subject) in All)
        {
            var decision = edit switch
            {
                SeasonEdit season => Decider.Decide(Season, season),
                ClubEdit club => Decider.Decide(Club.Empty, club),
                SetupEdit setup => Decider.Decide(Setup.Empty(new("team")), setup),
                _ => throw new InvalidOperationException(),
            };
            var name = edit.ToString()[..Math.Min(200, edit.ToString().Length)];
            Assert.True(decision is Refused, $"{name} should be refused: {id}");
            var reasons = ((Refused)decision).Reasons;
            Assert.True(reasons.Any(reason => reason.Id == id && reason.Subject == subject), $"{name} should be refused for {id} at {subject}, not {string.Join("; ", reasons)}");
            Assert.All(reasons, reason => Assert.False(reason.Sentence.Contains('{', StringComparison.Ordinal) || string.IsNullOrWhiteSpace(reason.Sentence)));
            // Only what belongs to the fault is said: none of these has a second one of another kind.
            Assert.Single(reasons.Select(reason => reason.Id).Distinct(StringComparer.Ordinal));
        }
        Assert.Equal(before, Season.Facts);
    }

    [Fact]
    public void All_reasons_come_at_once_and_in_order()
    {
        var edit = new StartSeason(new(1900, 1, 1), DayOfWeek.Monday, new(Weeks(61).Append(new("w1"))), new(" ", Crest: "ABCD", CrestColour: "red"));
        Assert.Equal(["weeks-count", "weeks-twice", "day-impossible", "text-missing", "text-long", "colour"],
            Assert.IsType<Refused>(Decider.Decide(History.Nothing, edit)).Reasons.Select(reason => reason.Id), StringComparer.Ordinal);
    }

    [Fact]
    public void A_season_is_started_before_anything_else()
    {
        foreach (var edit in All.Select(some => some.Edit).OfType<SeasonEdit>().Where(edit => edit is not (StartSeason or AdoptSeason)))
            Assert.Equal("season-not-started", Assert.Single(Assert.IsType<Refused>(Decider.Decide(History.Nothing, edit)).Reasons).Id);
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    [InlineData(60, true)]
    [InlineData(61, false)]
    public void A_season_has_1_to_60_weeks(int count, bool starts) =>
        Assert.Equal(starts, Decider.Decide(History.Nothing, new StartSeason(new(2027, 7, 5), DayOfWeek.Monday, Weeks(count), new("a"))) is Accepted);

    [Theory]
    [InlineData("1950-01-01", true)]
    [InlineData("2149-12-31", true)]
    [InlineData("1949-12-31", false)]
    [InlineData("2150-01-01", false)]
    public void A_season_starts_on_a_possible_day(string day, bool starts)
    {
        var edit = new StartSeason(DateOnly.ParseExact(day, "O", System.Globalization.CultureInfo.InvariantCulture), DayOfWeek.Thursday, Weeks(60), new("a"));
        Assert.Equal(starts, Decider.Decide(History.Nothing, edit) is Accepted);
        if (starts) Whole.Check(History.After(edit), Setup.Empty(new("team")));
    }

    [Fact]
    public void The_last_quality_stays()
    {
        var setup = Quality.Defaults.Skip(1).Aggregate(Setup.Empty(new("team")), (now, quality) => now.With(Assert.IsType<Accepted>(Decider.Decide(now, new RemoveQuality(quality.Id))).Step));
        Assert.Equal(Quality.Defaults[0], Assert.Single(setup.Qualities));
        Assert.Equal("quality-last", Assert.IsType<Refused>(Decider.Decide(setup, new RemoveQuality(Quality.Defaults[0].Id))).Reasons.Single().Id);
    }

    [Fact]
    public void Forty_tracks_are_the_most()
    {
        var season = History.After(History.After(new StartSeason(new(2027, 7, 5), DayOfWeek.Monday, Weeks(2), new("a"))),
            [.. Enumerable.Range(1, 40).Select(n => new SetTrack(new Track(new($"t{n}"), "a", TrackForm.Text)))]);
        Assert.Equal("tracks-full", Assert.IsType<Refused>(Decider.Decide(season, new SetTrack(new Track(new("more"), "a", TrackForm.Text)))).Reasons.Single().Id);
        Assert.IsType<Accepted>(Decider.Decide(season, new SetTrack(new Track(new("t1"), "b", TrackForm.Text))));
    }
}
