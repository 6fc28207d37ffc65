using CsCheck;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using static Seasonwright.Core.Tests.Drawn.Any;

namespace Seasonwright.Core.Tests.Drawn;

/// <summary>What a season and a setup hold, drawn at random: any combination a caller could bring, the senseless ones too.</summary>
internal static class AnyThing
{
    public static readonly Gen<TeamCard> TeamCards = Gen.Select(Texts, MaybeTexts, Gen.Null(Gen.OneOf("HV", "ABC", "ABCD")), Gen.Null(Gen.OneOf("#12ab9f", "red", "#12ab9g")), MaybeTexts,
        (name, title, crest, colour, sport) => new TeamCard(name, title, crest, colour, sport));

    private static readonly Gen<Condition> Conditions = Gen.Select(Gen.Nullable(MatchIds), Gen.Enum<Outcome>(), MaybeTexts, (on, needs, words) => new Condition(on, needs, words));

    private static readonly Gen<Series> AnySeries = Gen.Select(Gen.OneOf("final", "semi-final"), Gen.Int[0, 6], Gen.Frequency((8, Gen.OneOf(3, 5, 7)), (1, Gen.Int[-1, 11])),
        (name, game, bestOf) => new Series(name, game, bestOf));

    private static readonly Gen<MatchStatus> Statuses = Gen.Frequency((3, Gen.Const(MatchStatus.Confirmed)), (2, Gen.Enum<MatchStatus>()));

    private static readonly Gen<Match> MatchOnDays = Gen.Select(
        Gen.Select(MatchIds, Gen.Frequency((8, AnyDay.Select(day => (DateOnly?)day)), (1, Gen.Const((DateOnly?)null))), Gen.Frequency((6, Gen.Const((int?)null)), (1, Gen.Int[-1, 9].Select(n => (int?)n)))),
        Gen.Nullable(AnyTime), Gen.Frequency((3, Gen.Const((string?)null)), (1, AnyZone.Select(zone => (string?)zone))),
        Statuses,
        (dated, time, zone, status) => new Match(dated.Item1, dated.Item2, LastDay(dated.Item2, dated.Item3), time, zone, Status: status));

    private static readonly Gen<Listing> Listings = Gen.Select(MatchOnDays, Gen.Select(MaybeTexts, MaybeTexts, MaybeTexts), Gen.Nullable(Gen.Enum<Venue>()), Gen.Null(AnySeries),
        (match, texts, venue, series) => new Listing(match.Day, match.LastDay, match.KickOff, texts.Item1, venue, texts.Item2, Place: texts.Item3, Status: match.Status, Series: series));

    private static readonly Gen<MatchSource> Sources = Gen.Select(MaybeTexts, Gen.Bool, Gen.Null(Listings), (id, vanished, listed) => new MatchSource(id, vanished, listed));

    public static readonly Gen<Match> Matches = Gen.Select(
        MatchOnDays,
        Gen.Select(MaybeTexts, Gen.Nullable(Gen.Enum<Venue>()), MaybeTexts, MaybeTexts, MaybeTexts),
        Gen.Select(Gen.Enum<Importance>(), Gen.Frequency((2, Gen.Const((Condition?)null)), (1, Conditions.Select(c => (Condition?)c))), Gen.Frequency((4, Gen.Const((Series?)null)), (1, AnySeries.Select(s => (Series?)s)))),
        Gen.Select(MaybeTexts, Gen.Nullable(Gen.Enum<Outcome>()), MaybeTexts, Gen.Null(Sources)),
        (match, whom, why, after) => match with
        {
            Opponent = whom.Item1,
            Venue = whom.Item2,
            Competition = whom.Item3,
            Round = whom.Item4,
            Place = whom.Item5,
            Importance = why.Item1,
            Condition = why.Item2,
            Series = why.Item3,
            Result = after.Item1,
            Outcome = after.Item2,
            Note = after.Item3,
            Source = after.Item4,
        });

    private static readonly Gen<Leg> Legs = Gen.Select(AnyDay, MaybeTexts, MaybeTexts, Gen.Nullable(AnyTime), Gen.Nullable(AnyDay), Gen.Nullable(Gen.Int[-30, 30].Select(n => n / 2m)),
        (day, from, to, departs, arrival, shift) => new Leg(day, from, to, departs, null, arrival, shift));

    private static readonly Gen<EventListing> EventListings = Gen.Select(DaySpans, Gen.Nullable(Gen.Enum<EventKind>()), Gen.Select(MaybeTexts, MaybeTexts, MaybeTexts), Gen.Nullable(Gen.Int[0, 135].Select(n => new Core.Quantities.Percent(n))), Gen.Bool, Gen.Null(ListOf(Legs, 2)),
        (days, kind, texts, training, provisional, legs) => new EventListing(days, kind, texts.Item1, texts.Item2, training, provisional, Legs: legs, Note: texts.Item3));

    private static readonly Gen<EventSource> EventSources = Gen.Select(Texts, Texts, Gen.Bool, Gen.Null(EventListings), (list, entry, vanished, listed) => new EventSource(list, entry, vanished, listed));

    public static readonly Gen<Event> Events = Gen.Select(
        Gen.Select(EventIds, Gen.Enum<EventKind>(), Texts, DaySpans),
        Gen.Select(MaybeTexts, MaybeTexts, Gen.Nullable(Gen.Frequency((8, Gen.Int[0, 130]), (1, Gen.Int[131, 300])).Select(n => new Core.Quantities.Percent(n))), Gen.Bool),
        Gen.Select(MaybeTexts, Gen.Nullable(Gen.Frequency((8, Gen.Int[0, 20]), (1, Gen.Int[-2, 200]))), Gen.Null(ListOf(Legs, 2)), MaybeTexts),
        Gen.Null(EventSources),
        (what, how, journey, source) => new Event(what.Item1, what.Item2, what.Item3, what.Item4, how.Item1, how.Item2, how.Item3, how.Item4, journey.Item1, journey.Item2, journey.Item3, journey.Item4, source));

    private static readonly Gen<TestDay> TestDaysAsListed = Gen.Select(TestDayIds, AnyDay, Texts, MaybeTexts, MaybeTexts, Gen.Null(EventSources),
        (id, day, battery, part, whom, source) => new TestDay(id, day, battery, part, whom, source is null ? null : source with { Listed = null }));

    /// <summary>As listed, or with what a list said of a day of its own.</summary>
    public static readonly Gen<TestDay> TestDays = Gen.Select(TestDaysAsListed, Gen.Null(TestDaysAsListed), (test, listed) => listed is null ? test : test.ListedAs(listed with { Source = test.Source }));

    private static readonly Gen<Dose> Doses = Gen.Select(QualityIds, Gen.Nullable(Gen.Frequency((20, Gen.Int[1, 60]), (1, Gen.Int[-1, 61]))), Gen.Nullable(Gen.Int[19, 131].Select(n => new Core.Quantities.Percent(n))), Gen.Nullable(Gen.Int[1, 500]), Gen.Nullable(Gen.Int[1, 3000]),
        (quality, sets, top, contacts, metres) => new Dose(quality, sets, top, contacts, metres));

    private static readonly Gen<Wave> Waves = Gen.Select(Texts, AnyTime, Gen.Nullable(GroupIds), (name, start, group) => new Wave(name, start, group));

    private static readonly Gen<Effort> Efforts = Gen.Frequency(
        (6, Gen.OneOf(Effort.Free, Effort.OfMax(72.5m), Effort.Reserve(2), new(EffortKind.Velocity, 0.45m, null, new Core.Quantities.Percent(20)), new(EffortKind.OfBodyMass, 50), new(EffortKind.Fixed, null, new Core.Quantities.Weight(45, Core.Quantities.MassUnit.Pound)))),
        (1, Gen.Select(Gen.Enum<EffortKind>(), Gen.Nullable(Gen.Int[-1, 400].Select(n => n / 2m)), (kind, amount) => new Effort(kind, amount))));

    private static readonly Gen<Prescription> Prescriptions = Gen.Select(Gen.Frequency((9, Gen.Int[1, 20]), (1, Gen.Int[-1, 21])), Gen.Frequency((9, Gen.Int[1, 100]), (1, Gen.Int[-1, 20_001])), Gen.Enum<WorkUnit>(), Efforts, Gen.Nullable(Gen.Const(new Core.Quantities.Tempo(3, 1, null, 0))),
        (sets, amount, unit, effort, tempo) => new Prescription(sets, amount, unit, effort, tempo));

    private static readonly Gen<WorkoutItem> WorkoutItems = Gen.Select(WorkoutItemIds, ExerciseIds, Prescriptions, MaybeTexts, (id, exercise, prescription, note) => new WorkoutItem(id, exercise, prescription, note));

    private static readonly Gen<WorkoutPart> WorkoutParts = Gen.Select(Gen.Enum<PartKind>(), ListOf(WorkoutItems, 3), Gen.Int[0, 905], (kind, items, rest) => new WorkoutPart(kind, items, rest));

    private static readonly Gen<Progression> Progressions = Gen.Select(Gen.Enum<ProgressionKind>(), Gen.Int[0, 21].Select(n => n / 2m), Gen.Int[0, 5], Gen.Int[0, 2], (kind, percent, repetitions, sets) => new Progression(kind, percent, repetitions, sets));

    public static readonly Gen<Workout> Workouts = Gen.Select(WorkoutIds, Texts, ListOf(WorkoutParts, 2), Progressions, Gen.Nullable(QualityIds), Gen.Null(ListOf(Gen.Select(WeekIds, WorkoutItemIds, Gen.Null(Prescriptions), (week, item, prescription) => new WorkoutCell(week, item, prescription)), 1)),
        (id, name, parts, progression, quality, cells) => new Workout(id, name, parts, progression, quality, cells));

    private static readonly Gen<HomeRun> HomeRuns = Gen.Frequency(
        (9, Gen.Select(Gen.Int[1, 12], Gen.Int[20, 600], Gen.OneOf(WorkUnit.Seconds, WorkUnit.Metres), Gen.Int[50, 120], Gen.Int[0, 900], Gen.Int[0, 20], (repetitions, amount, unit, speed, rest, more) => new HomeRun(repetitions, amount, unit, new Core.Quantities.Percent(speed), rest, more))),
        (1, Gen.Select(Gen.Int[-1, 41], Gen.Int[-1, 30_000], Gen.Enum<WorkUnit>(), Gen.Int[45, 125], Gen.Int[0, 950], Gen.Int[-1, 21], (repetitions, amount, unit, speed, rest, more) => new HomeRun(repetitions, amount, unit, new Core.Quantities.Percent(speed), rest, more))));

    private static readonly Gen<HomeKit> HomeKits = Gen.Select(ListOf(Gen.Enum<Equipment>(), 2), Gen.Null(Gen.Select(Gen.Int[0, 10], Gen.Int[9, 50], (from, to) => new Core.Quantities.WeightSteps(from, to, 2, Core.Quantities.MassUnit.Kilogram))),
        (equipment, dumbbells) => new HomeKit(equipment, dumbbells));

    private static readonly Gen<HomeDay> HomeDays = Gen.Select(Gen.Enum<DayOfWeek>(), Gen.Frequency((4, Gen.Const((WorkoutId?)null)), (1, WorkoutIds.Select(id => (WorkoutId?)id))), Gen.Frequency((8, HomeRuns.Select(run => (HomeRun?)run)), (1, Gen.Const((HomeRun?)null))), MaybeTexts,
        (day, workout, run, note) => new HomeDay(day, workout, run, note));

    /// <summary>Now and then without a day, with one twice, for nobody, or too long.</summary>
    public static readonly Gen<HomeProgramme> HomeProgrammes = Gen.Select(
        Gen.Select(HomeIds, Texts, AnyDay, Gen.Frequency((9, Gen.Int[1, 6]), (1, Gen.Int[-1, 8]))), HomeKits, ListOf(HomeDays, 2),
        Gen.Select(Gen.Frequency((3, Gen.Const((ValueList<GroupId>?)null)), (1, ListOf(GroupIds, 2).Select(groups => (ValueList<GroupId>?)groups))), Gen.Frequency((3, Gen.Const((ValueList<PersonId>?)null)), (1, ListOf(People, 2).Select(people => (ValueList<PersonId>?)people)))),
        (what, kit, days, whom) => new HomeProgramme(what.Item1, what.Item2, what.Item3, what.Item4, kit, days, whom.Item1, whom.Item2));

    private static readonly Gen<GymRack> Racks = Gen.Select(Gen.OneOf("1", "2", "Window"), Gen.OneOf(15m, 20m, 0.5m), Gen.OneOf(25m, 2.5m, 1.25m, 0.0001m, -5m), Gen.Int[0, 5], Gen.Bool,
        (name, bar, plate, pairs, platform) => new GymRack(name, new Core.Quantities.Weight(bar), [new(plate, pairs)], 0, platform));

    public static readonly Gen<Gym> Gyms = Gen.Select(ListOf(Racks, 2), Gen.Null(Gen.Select(Gen.Int[-1, 10], Gen.Int[5, 50], (from, to) => new Core.Quantities.WeightSteps(from, to, 2, Core.Quantities.MassUnit.Kilogram))), Gen.Bool, Gen.Null(ListOf(Gen.Select(Gen.Enum<Equipment>(), Gen.Int[0, 5], (one, count) => new EquipmentCount(one, count)), 1)), (racks, dumbbells, down, counts) =>
        new Gym(racks, dumbbells, null, new Core.Quantities.Weight(5), [Equipment.Bench, Equipment.Box], null, down, counts, counts?.Count));

    public static readonly Gen<RoomId> RoomIds = Gen.OneOf("gym", "annexe").Select(text => new RoomId(text));

    private static readonly Gen<RoomHours> Hours = Gen.Select(Gen.Enum<DayOfWeek>(), Gen.Int[10, 40], Gen.Frequency((9, Gen.Int[1, 7]), (1, Gen.Int[-2, 7])), Gen.Frequency((9, Gen.Const(0)), (1, Gen.Const(5))),
        (day, half, halves, odd) => new RoomHours(day, Clock.Time(half * Clock.HalfHour + odd), Clock.Time((half + halves) * Clock.HalfHour)));

    public static readonly Gen<Facility> Facilities = Gen.Select(RoomIds, Texts, Gen.Int[0, 60], Gen.Int[0, 4], ListOf(Hours, 3), Gen.Null(ListOf(DaySpans, 2)), Gen.Null(Gyms),
        (id, name, places, coaches, open, closed, gym) => new Facility(new Room(id, name, places, coaches, open, closed), gym));

    private static readonly DateOnly Monday = new(2027, 8, 2);

    /// <summary>On few days, so that they meet: a day holds three of one owner's.</summary>
    private static readonly Gen<DateOnly> SessionDays = Gen.Frequency((1, AnyDay), (3, Gen.Int[0, 5].Select(days => Monday.AddDays(days))));

    public static readonly Gen<Session> PlacedSessions = Gen.Select(
        Gen.Select(SessionIds, SessionDays, Gen.Enum<DaySlot>(), Gen.Enum<SessionKind>()),
        Gen.Select(Gen.Frequency((20, Gen.Int[5, 240]), (1, Gen.Int[0, 600])).Select(n => new Core.Quantities.Minutes(n)), AnyRpe, MaybeTexts, Gen.Nullable(AnyTime)),
        Gen.Select(MaybeTexts, Gen.Frequency((4, Gen.Const((ValueList<GroupId>?)null)), (1, ListOf(GroupIds, 2).Select(groups => (ValueList<GroupId>?)groups)))),
        Gen.Select(Gen.Null(ListOf(Doses, 2)), Gen.Null(ListOf(Waves, 2)), Gen.Bool, Gen.Bool, Gen.Frequency((4, Gen.Const((WorkoutId?)null)), (1, WorkoutIds.Select(id => (WorkoutId?)id))), Gen.Nullable(RoomIds)),
        (when, how, whom, more) => new Session(when.Item1, when.Item2, when.Item3, when.Item4, how.Item1, how.Item2, how.Item3, how.Item4, whom.Item1, whom.Item2, more.Item1, more.Item2, more.Item3, more.Item4, more.Item5, more.Item6));

    public static readonly Gen<Note> Notes = Gen.Select(NoteIds, DaySpans, Texts, (id, days, text) => new Note(id, days, text));

    public static readonly Gen<Goal> Goals = Gen.Select(GoalIds, Gen.Int[0, 4], Texts, Gen.Nullable(Gen.Int.Select(n => n / 10m)), Gen.Nullable(AnyDay), Gen.Nullable(QualityIds),
        (id, rank, measure, from, by, quality) => new Goal(id, rank, measure, from, null, by, quality));

    public static readonly Gen<Track> Tracks = Gen.Select(TrackIds, Texts, Gen.Enum<TrackForm>(), Gen.Enum<TrackGrain>(), Gen.Null(ListOf(Gen.OneOf("yes", "Hall", "Field", ""), 3)), Gen.Null(Gen.OneOf("kg", "a unit far too long to draw")), Gen.Int[0, 5],
        (id, name, form, grain, choices, unit, place) => new Track(id, name, form, grain, choices, unit, place));

    public static readonly Gen<CellPlace> Places = Gen.Frequency((20, WeekIds.Select(CellPlace.Of)), (20, AnyDay.Select(CellPlace.Of)), (1, Gen.Const(default(CellPlace))));

    public static readonly Gen<GroupLine> Groups = Gen.Select(GroupIds, Texts, Gen.Int[-70, 70], (id, name, shift) => new GroupLine(id, name, shift));

    public static readonly Gen<Practices> AnyPractices = Gen.Select(Gen.Int[-1, 15], Gen.Nullable(AnyMinutes), Gen.Nullable(AnyRpe), (count, minutes, rpe) => new Practices(count, minutes, rpe));

    public static readonly Gen<Brief> Briefs = Gen.Select(AnyPercent, Gen.Enum<Boldness>(), Gen.Nullable(Gen.Enum<StartLevel>()), Gen.Int[1, 21], Gen.Nullable(Gen.Int[-1, 31]),
        Gen.Null(ListOf(Gen.Select(MatchIds, Gen.Enum<TaperStyle>(), (match, style) => new MatchTaper(match, style)), 2)),
        Gen.Null(ListOf(Gen.Select(Gen.Enum<PhaseKind>(), Gen.Nullable(Gen.Int[1, 8]), Gen.Nullable(Gen.Int[1, 41]), (phase, days, hours) => new PhaseTime(phase, days, hours)), 2)),
        (largest, boldness, start, between, tests, tapers, time) => new Brief(largest, boldness, start, between, tests, tapers, time));

    /// <summary>Now and then with a session outside its days, locked or cancelled, or with no session at all.</summary>
    public static readonly Gen<TypicalWeek> TypicalWeeks = Gen.Select(TypicalWeekIds, Texts, Gen.Int[6, 8], Gen.Nullable(Gen.Enum<PhaseKind>()),
        ListOf(Gen.Frequency((9, Gen.Select(PlacedSessions, Gen.Int[0, 5], (session, day) => session with { Day = Monday.AddDays(day), IsLocked = false, IsCancelled = false })), (1, PlacedSessions)), 3),
        (id, name, length, phase, sessions) => new TypicalWeek(id, name, new DaySpan(Monday, Monday.AddDays(length - 1)), [Monday.AddDays(5)], sessions, phase));

    /// <summary>Now and then with something twice, out of bounds or of itself.</summary>
    public static readonly Gen<Exercise> Exercises = Gen.Select(
        Gen.Select(ExerciseIds, Texts, Gen.Enum<MovementPattern>(), Gen.Enum<LoadedBy>()),
        Gen.Select(Gen.Enum<Muscle>(), ListOf(Gen.Enum<Equipment>(), 2), ListOf(Gen.Enum<Demand>(), 2), Gen.Bool, Gen.Frequency((9, Gen.Int[0, 20]), (1, Gen.Int[-1, 21]))),
        Gen.Select(Gen.Nullable(ExerciseIds), Gen.Nullable(ExerciseIds), Gen.Frequency((3, Gen.Const(((ExerciseId, int)?)null)), (1, Gen.Select(ExerciseIds, Gen.Int[9, 151]).Select(guess => ((ExerciseId, int)?)guess)))),
        (what, how, others) => new Exercise(what.Item1, what.Item2, what.Item3, what.Item4, [how.Item1], how.Item2, how.Item3, how.Item4, how.Item5, others.Item1, others.Item2, others.Item3?.Item1, others.Item3 is { } guess ? new Core.Quantities.Percent(guess.Item2) : null));

    public static readonly Gen<Sessions> AnySessions = Gen.Select(Gen.Int[-1, 15], AnyMinutes, AnyRpe, (count, minutes, rpe) => new Sessions(count, minutes, rpe));

    /// <summary>Frames as a file could bring them: weeks doubled or missing, days beyond the calendar.</summary>
    private static readonly Gen<Frame> Frames = Gen.Frequency(
        (3, Gen.Select(AnyDay, Gen.Enum<DayOfWeek>(), Gen.Int[1, 24], (first, weekStart, count) =>
            new Frame(first, weekStart, Enumerable.Range(1, count).Select(number => new WeekId($"w{number}")).ToValueList(), ValueList<WeekId>.Empty, ValueList<WeekId>.Empty))),
        (1, Gen.Select(AnyDay, Gen.Enum<DayOfWeek>(), ListOf(WeekIds, 70), ListOf(WeekIds, 2), ListOf(WeekIds, 2), (first, weekStart, weeks, before, after) =>
            new Frame(first, weekStart, weeks, before, after))));

    private static readonly Gen<(Key Key, object Value)> OneFact = Gen.OneOf(
        Matches.Select(m => (SeasonFacets.Match.Of(m.Id), (object)m)),
        Events.Select(e => (SeasonFacets.Event.Of(e.Id), (object)e)),
        TestDays.Select(d => (SeasonFacets.TestDay.Of(d.Id), (object)d)),
        PlacedSessions.Select(s => (SeasonFacets.Session.Of(s.Id), (object)s)),
        Notes.Select(n => (SeasonFacets.Note.Of(n.Id), (object)n)),
        Goals.Select(g => (SeasonFacets.Goal.Of(g.Id), (object)g)),
        Tracks.Select(t => (SeasonFacets.Track.Of(t.Id), (object)t)),
        Groups.Select(g => (SeasonFacets.Group.Of(g.Id), (object)g)),
        Briefs.Select(b => (SeasonFacets.Brief.Of(default), (object)b)),
        TeamCards.Select(t => (SeasonFacets.Team.Of(default), (object)t)),
        Gen.Select(WeekIds, AnyPractices, (w, p) => (SeasonFacets.WeekPractices.Of(w), (object)p)),
        Gen.Select(WeekIds, AnyLoad, (w, l) => (SeasonFacets.WeekLoad.Of(w), (object)l)),
        Gen.Select(WeekIds, Texts, (w, t) => (SeasonFacets.WeekNote.Of(w), (object)t)),
        Gen.Select(WeekIds, Texts, (w, t) => (SeasonFacets.PracticeWish.Of(w), (object)t)),
        Gen.Select(WeekIds, PhaseIds, (w, p) => (SeasonFacets.WeekPhase.Of(w), (object)p)),
        Gen.Select(MatchIds, Matches, (id, m) => (SeasonFacets.Match.Of(id), (object)m)),
        Gen.Select(WeekIds, Texts, (w, t) => (SeasonFacets.WeekLoad.Of(w), (object)t)),
        Gen.Select(Texts, Texts, (s, t) => (new Key("no such family", s), (object)t)),
        Gen.Select(Texts, AnyLoad, (s, l) => (new Key(SeasonFacets.WeekLoad.Name, s), (object)l)));

    /// <summary>Facts as a file could bring them.</summary>
    public static readonly Gen<FactSet> AnyFacts = Gen.Select(Frames, OneFact.List[0, 4], (frame, facts) =>
        facts.Aggregate(FactSet.Empty.With(SeasonFacets.Frame.Of(default), frame), (sum, fact) => sum.With(fact.Key, fact.Value)));

    private static DateOnly? LastDay(DateOnly? day, int? more) =>
        day is { } first && more is { } days && first.DayNumber + days is >= 0 and < 3_652_000 ? first.AddDays(days) : null;
}
