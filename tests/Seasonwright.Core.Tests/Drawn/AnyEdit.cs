using CsCheck;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using static Seasonwright.Core.Tests.Drawn.Any;
using static Seasonwright.Core.Tests.Drawn.AnyThing;

namespace Seasonwright.Core.Tests.Drawn;

/// <summary>Edits of every kind, by the name of their kind.</summary>
internal static class AnyEdit
{
    /// <summary>A figure of a rule at an end of what it holds, in the middle, or at its default.</summary>
    private static readonly Gen<SetRuleParameter> AnyFigure =
        from rule in Gen.OneOf(Rulebook.All.ToArray())
        from figure in Gen.OneOf(rule.Settings.ToArray())
        from value in Gen.OneOf(Values(figure))
        select new SetRuleParameter(new RuleParameter(rule.Id, figure.Name), value);

    /// <summary>Values that a figure can hold, the outermost of them included.</summary>
    public static string[] Values(Figure figure) => figure.Kind switch
    {
        FigureKind.Number => [figure.Default, Text(figure.Least), Text(figure.Most), Text((figure.Least + figure.Most) / 2)],
        FigureKind.Numbers => [figure.Default, .. new[] { figure.Least, figure.Most }.Select(end => string.Join(' ', Enumerable.Repeat(Text(end), figure.Default.Split(' ').Length)))],
        FigureKind.YesNo => ["yes", "no"],
        FigureKind.Choice => [.. figure.Choices],
        FigureKind.Day => ["", "2026-07-01"],
        _ => [figure.Default, "other"],
    };

    private static string Text(decimal number) => number.ToString("0.######", System.Globalization.CultureInfo.InvariantCulture);

    public static readonly IReadOnlyDictionary<string, Gen<SeasonEdit>> OfSeason = Named<SeasonEdit>(
        Kind(Gen.Select(FindingKeys, Texts, Gen.Int[-1, 40], Gen.Null(Gen.Const("Mara Lindt")), Gen.Nullable(Gen.Enum<StaffRole>()), (finding, reason, size, releaser, role) => new AcceptFinding(finding, new Acceptance(reason, size, "", releaser, role)))),
        Kind(FindingKeys.Select(finding => new ReopenFinding(finding))),
        Kind(Gen.Select(AnyFacts, Texts, (facts, from) => new AdoptSeason(facts, from))),
        Kind(Gen.Select(WeekSpans, NewBlockIds, (weeks, rest) => new EraseBlock(weeks.First, weeks.Last, rest))),
        Kind(Gen.Select(WeekSpans, NewPhaseIds, (weeks, rest) => new ErasePhase(weeks.First, weeks.Last, rest))),
        Kind(Gen.Select(ListOf(Events, 3), ListOf(TestDays, 3), Texts, (events, tests, from) => new ImportEvents(events, tests, from))),
        Kind(Gen.Select(ListOf(Matches, 3), Texts, (matches, from) => new ImportFixtures(matches, from))),
        Kind(Gen.Select(WeekSpans, Gen.Bool, (weeks, locked) => new LockWeeks(weeks.First, weeks.Last, locked))),
        Kind(Gen.Select(WeekSpans, Gen.Bool, (weeks, ready) => new MarkReady(weeks.First, weeks.Last, ready))),
        Kind(Gen.Select(MatchIds, AnyDay, Gen.Nullable(AnyDay), Gen.Nullable(AnyTime), (match, day, last, time) => new MoveMatch(match, day, last, time))),
        Kind(TeamCards.Select(team => new NameTeam(team))),
        Kind(Gen.Select(WeekSpans, BlockIds, Gen.Enum<BlockKind>(), NewBlockIds, MaybeTexts, (weeks, block, kind, rest, name) => new PaintBlock(weeks.First, weeks.Last, block, kind, rest, name))),
        Kind(Gen.Select(WeekSpans, PhaseIds, Gen.Enum<PhaseKind>(), NewPhaseIds, MaybeTexts, (weeks, phase, kind, rest, name) => new PaintPhase(weeks.First, weeks.Last, phase, kind, rest, name))),
        Kind(MaybeTexts.Select(name => new Publish(name))),
        Kind(Gen.Select(AnyDay, Gen.Enum<DayOfWeek>(), Gen.Enum<RedatePlan>(), NewWeeks, (day, start, plan, weeks) => new Redate(day, start, plan, weeks))),
        Kind(EventIds.Select(id => new RemoveEvent(id))),
        Kind(GoalIds.Select(id => new RemoveGoal(id))),
        Kind(GroupIds.Select(id => new RemoveGroup(id))),
        Kind(HomeIds.Select(id => new RemoveHomeProgramme(id))),
        Kind(MatchIds.Select(id => new RemoveMatch(id))),
        Kind(NoteIds.Select(id => new RemoveNote(id))),
        Kind(SessionIds.Select(id => new RemoveSession(id))),
        Kind(TestDayIds.Select(id => new RemoveTestDay(id))),
        Kind(TrackIds.Select(id => new RemoveTrack(id))),
        Kind(WorkoutIds.Select(id => new RemoveWorkout(id))),
        Kind(Gen.Select(BlockIds, MaybeTexts, (block, name) => new RenameBlock(block, name))),
        Kind(Gen.Select(PhaseIds, MaybeTexts, (phase, name) => new RenamePhase(phase, name))),
        Kind(Gen.Select(Gen.Frequency((6, Gen.Int[1, 26]), (1, Gen.Int[-1, 62])), NewWeeks, (count, weeks) => new Resize(count, weeks))),
        Kind(ListOf(Gen.Select(TrackIds, Places, MaybeTexts, (track, place, text) => new TrackCell(track, place, text)), 4).Select(cells => new SetCells(cells))),
        Kind(Gen.Select(WeekSpans, QualityIds, Gen.Enum<Emphasis>(), (weeks, quality, emphasis) => new SetEmphasis(weeks.First, weeks.Last, quality, emphasis))),
        Kind(Events.Select(item => new SetEvent(item))),
        Kind(Gen.Null(Briefs).Select(brief => new SetBrief(brief))),
        Kind(Goals.Select(goal => new SetGoal(goal))),
        Kind(Groups.Select(group => new SetGroup(group))),
        Kind(Gen.Select(GroupIds, WeekSpans, QualityIds, Gen.Nullable(Gen.Enum<Emphasis>()), (group, weeks, quality, emphasis) => new SetGroupEmphasis(group, weeks.First, weeks.Last, quality, emphasis))),
        Kind(Gen.Select(GroupIds, WeekSpans, Gen.Nullable(AnyPercent), (group, weeks, factor) => new SetGroupWeek(group, weeks.First, weeks.Last, factor))),
        Kind(Matches.Select(match => new SetMatch(match))),
        Kind(Notes.Select(note => new SetNote(note))),
        Kind(Gen.Select(WeekSpans, Gen.Null(AnyPractices), (weeks, practices) => new SetPractices(weeks.First, weeks.Last, practices))),
        Kind(Gen.Select(People, Gen.Nullable(Gen.Enum<StaffRole>()), (person, role) => new SetStaff(person, role))),
        Kind(PlacedSessions.Select(session => new SetSession(session))),
        Kind(TestDays.Select(test => new SetTestDay(test))),
        Kind(Tracks.Select(track => new SetTrack(track))),
        Kind(Gen.Select(WeekSpans, Gen.Nullable(Gen.Enum<WeekKind>()), (weeks, kind) => new SetWeekKind(weeks.First, weeks.Last, kind))),
        Kind(Gen.Select(WeekSpans, Gen.Nullable(AnyLoad), (weeks, load) => new SetWeekLoad(weeks.First, weeks.Last, load))),
        Kind(Gen.Select(WeekIds, MaybeTexts, (week, text) => new SetWeekNote(week, text))),
        Kind(Gen.Select(WeekIds, MaybeTexts, (week, text) => new SetPracticeWish(week, text))),
        Kind(HomeProgrammes.Select(programme => new SetHomeProgramme(programme))),
        Kind(Workouts.Select(workout => new SetWorkout(workout))),
        Kind(Gen.Select(MatchIds, Gen.Enum<Outcome>(), (match, outcome) => new SettleMatch(match, outcome))),
        Kind(Gen.Select(AnyDay, Gen.Enum<DayOfWeek>(), ListOf(WeekIds, 3), TeamCards, (day, start, weeks, team) => new StartSeason(day, start, weeks, team))));

    public static readonly IReadOnlyDictionary<string, Gen<SetupEdit>> OfSetup = Named<SetupEdit>(
        Kind(QualityIds.Select(id => new RemoveQuality(id))),
        Kind(TypicalWeekIds.Select(id => new RemoveTypicalWeek(id))),
        Kind(ExerciseIds.Select(id => new RemoveExercise(id))),
        Kind(Exercises.Select(exercise => new SetExercise(exercise))),
        Kind(Gyms.Select(gym => new SetGym(gym))),
        Kind(Gen.Select(Gen.OneOf("back-squat", "own").Select(text => new ExerciseId(text)), Gen.Null(Gen.Select(Gen.Null(Gen.OneOf("epley", "brzycki", "guess")), Gen.Nullable(Gen.Int[0, 160].Select(n => n / 100m)), (equation, threshold) => new Lift(equation, threshold))), (exercise, lift) => new SetLift(exercise, lift))),
        Kind(Gen.Select(Gen.Enum<DateOrder>(), Gen.Bool, Gen.Enum<DayOfWeek>(), Gen.Enum<Paper>(), Gen.Enum<Core.Quantities.MassUnit>(), AnyZone, (order, comma, start, paper, mass, zone) => new SetLocale(new LocaleSettings(order, comma, start, paper, mass, zone)))),
        Kind(Gen.Select(AnyMinutes, AnyRpe, AnyRpe, (minutes, rpe, friendly) => new SetMatchLoad(new MatchLoad(minutes, rpe, friendly)))),
        Kind(Gen.Select(QualityIds, Texts, Gen.Enum<QualityKind>(), Gen.Int[0, 9], (id, name, kind, place) => new SetQuality(new Quality(id, name, kind, place)))),
        Kind(Gen.Nullable(AnyLoad).Select(load => new SetReferenceWeek(load))),
        Kind(Gen.OneOf(AnyFigure, Gen.Select(Gen.OneOf("ramp", "match-week"), Gen.OneOf("most", "least"), MaybeTexts, (rule, name, value) => new SetRuleParameter(new RuleParameter(rule, name), value)))),
        Kind(Texts.Select(name => new SetTeamName(name))),
        Kind(TypicalWeeks.Select(week => new SetTypicalWeek(week))),
        Kind(Gen.Select(AnySessions, AnySessions, AnySessions, (practices, gym, conditioning) => new SetUsualWeek(new UsualWeek(practices, gym, conditioning)))));

    public static readonly IReadOnlyDictionary<string, Gen<ClubEdit>> OfClub = Named<ClubEdit>(
        Kind(RoomIds.Select(id => new RemoveFacility(id))),
        Kind(Facilities.Select(facility => new SetFacility(facility))));

    public static readonly Gen<ClubEdit> ClubEdit = Gen.OneOf(OfClub.Values.ToArray());

    public static readonly Gen<SeasonEdit> SeasonEdit = Gen.OneOf(OfSeason.Values.ToArray());

    public static readonly Gen<SetupEdit> SetupEdit = Gen.OneOf(OfSetup.Values.ToArray());

    private static (string Name, Gen<Edit> Gen) Kind<TEdit>(Gen<TEdit> gen)
        where TEdit : Edit => (typeof(TEdit).Name, gen.Select(edit => (Edit)edit));

    private static Dictionary<string, Gen<TEdit>> Named<TEdit>(params (string Name, Gen<Edit> Gen)[] kinds)
        where TEdit : Edit => kinds.ToDictionary(kind => kind.Name, kind => kind.Gen.Select(edit => (TEdit)edit), StringComparer.Ordinal);
}
