using CsCheck;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Tests.Drawn;

/// <summary>
/// Values drawn at random, from small pools so that they meet one another. A few of each kind are wrong on purpose: the laws
/// hold for refusals too. A failing law prints the seed it can be repeated with.
/// </summary>
internal static class Any
{
    /// <summary>Weeks a season of at most 24 has, and a few it lacks.</summary>
    public static readonly Gen<WeekId> WeekIds = Gen.Int[1, 26].Select(number => new WeekId($"w{number}"));

    /// <summary>Mostly short runs, now and then reversed or foreign.</summary>
    public static readonly Gen<(WeekId First, WeekId Last)> WeekSpans = Gen.Select(
        Gen.Int[1, 18], Gen.Frequency((8, Gen.Int[0, 4]), (1, Gen.Int[5, 20]), (1, Gen.Int[-4, -1])),
        (first, length) => (new WeekId($"w{first}"), new WeekId($"w{first + length}")));

    /// <summary>Ids for weeks to come: usually enough of them and new.</summary>
    public static readonly Gen<ValueList<WeekId>> NewWeeks = Gen.Select(Gen.Int[0, 1000], Gen.Frequency((3, Gen.Const(80)), (1, Gen.Int[0, 6])), (from, count) =>
        Enumerable.Range(from, count).Select(number => new WeekId($"n{number}")).ToValueList());

    public static readonly Gen<PhaseId> PhaseIds = Id("p", 5, text => new PhaseId(text));
    public static readonly Gen<PhaseId> NewPhaseIds = Id("q", 500, text => new PhaseId(text));
    public static readonly Gen<BlockId> BlockIds = Id("b", 5, text => new BlockId(text));
    public static readonly Gen<BlockId> NewBlockIds = Id("c", 500, text => new BlockId(text));
    public static readonly Gen<MatchId> MatchIds = Id("m", 8, text => new MatchId(text));
    public static readonly Gen<EventId> EventIds = Id("e", 4, text => new EventId(text));
    public static readonly Gen<TestDayId> TestDayIds = Id("d", 4, text => new TestDayId(text));
    public static readonly Gen<SessionId> SessionIds = Id("n", 6, text => new SessionId(text));
    public static readonly Gen<TypicalWeekId> TypicalWeekIds = Id("y", 3, text => new TypicalWeekId(text));
    public static readonly Gen<WorkoutId> WorkoutIds = Id("k", 3, text => new WorkoutId(text));
    public static readonly Gen<WorkoutItemId> WorkoutItemIds = Id("i", 6, text => new WorkoutItemId(text));
    /// <summary>The book's and the team's own.</summary>
    public static readonly Gen<ExerciseId> ExerciseIds = Gen.OneOf("back-squat", "goblet-squat", "deadlift", "own", "own-2").Select(text => new ExerciseId(text));
    public static readonly Gen<HomeProgrammeId> HomeIds = Id("h", 3, text => new HomeProgrammeId(text));
    public static readonly Gen<NoteId> NoteIds = Id("o", 4, text => new NoteId(text));
    public static readonly Gen<TrackId> TrackIds = Id("t", 4, text => new TrackId(text));
    public static readonly Gen<GoalId> GoalIds = Id("g", 4, text => new GoalId(text));
    public static readonly Gen<GroupId> GroupIds = Id("r", 3, text => new GroupId(text));
    public static readonly Gen<PersonId> People = Id("s", 4, text => new PersonId(text));
    public static readonly Gen<FindingKey> FindingKeys = Gen.Int[1, 4].Select(number => new FindingKey("weekly-ramp", "rise", $"week/w{number}"));
    public static readonly Gen<QualityId> QualityIds = Gen.OneOf("power", "speed", "aerobic", "own").Select(text => new QualityId(text));

    public static readonly Gen<string> Texts = Gen.Frequency(
        (20, Gen.OneOf("Harbour Vale", "Öster & \"Co\"", "Turnes", "two lines\nof text", "{0} braces", "日本", "x")),
        (1, Gen.OneOf("", "  ", "a\u0007b", "a\ud800b", new string('x', 121), new string('x', 2001))));

    public static readonly Gen<string?> MaybeTexts = Gen.Null(Texts);

    /// <summary>Mostly in or near the season, now and then out of every bound.</summary>
    public static readonly Gen<DateOnly> AnyDay = Gen.Frequency(
        (40, Gen.Int[-60, 260].Select(days => new DateOnly(2027, 7, 5).AddDays(days))),
        (1, Gen.OneOf(DateOnly.MinValue, DateOnly.MaxValue, new DateOnly(1949, 12, 31), new DateOnly(1950, 1, 1), new DateOnly(2149, 12, 31), new DateOnly(2150, 1, 1))));

    public static readonly Gen<DaySpan> DaySpans = Gen.Select(AnyDay, Gen.Int[0, 20], (first, more) =>
        new DaySpan(first, first.DayNumber + more > DateOnly.MaxValue.DayNumber ? first : first.AddDays(more)));

    public static readonly Gen<Minutes> AnyMinutes = Gen.Int[0, 1440].Select(value => new Minutes(value));
    public static readonly Gen<Rpe> AnyRpe = Gen.Int[0, 20].Select(halves => new Rpe(halves / 2m));
    public static readonly Gen<Load> AnyLoad = Gen.Int[0, Core.Quantities.Load.Most].Select(au => new Load(au));
    public static readonly Gen<Percent> AnyPercent = Gen.Int[0, Core.Quantities.Percent.Most].Select(value => new Percent(value));
    public static readonly Gen<TimeOnly> AnyTime = Gen.Int[0, 1439].Select(minute => new TimeOnly(minute / 60, minute % 60));
    public static readonly Gen<string> AnyZone = Gen.OneOf("Europe/Berlin", "America/New_York", "Etc/UTC", "Nowhere/Land");

    public static Gen<ValueList<T>> ListOf<T>(Gen<T> gen, int most) => gen.List[0, most].Select(items => items.ToValueList());

    private static Gen<T> Id<T>(string prefix, int count, Func<string, T> make) where T : struct, ISubject<T> =>
        Gen.Int[1, count].Select(number => make($"{prefix}{number}"));
}
