using System.Collections.Immutable;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Desk.Demo;

/// <summary>The demo's gym and what is done in it: six racks and two workouts that are carried over the weeks. Common practice, no source.</summary>
internal static class DemoWorkouts
{
    private static readonly WorkoutId Lower = new("lower-strength"), Upper = new("upper-strength");

    /// <summary>Four racks with women's bars, two platforms with men's.</summary>
    public static SetGym Gym { get; } = new(new Gym(
        [.. Enumerable.Range(1, 6).Select(number => new GymRack(FormattableString.Invariant($"{number}"), new Weight(number <= 4 ? 15 : 20), [new(20, 2), new(15), new(10, 2), new(5), new(2.5m), new(1.25m)], HasPlatform: number > 4))],
        new(2, 30, 2, MassUnit.Kilogram), new(8, 24, 4, MassUnit.Kilogram), new Weight(5),
        [Equipment.Bench, Equipment.Box, Equipment.Band, Equipment.TrapBar, Equipment.PullUpBar, Equipment.MedicineBall, Equipment.Cable, Equipment.LegPress, Equipment.LegCurl, Equipment.BackExtension, Equipment.SwissBall, Equipment.Straps, Equipment.Bike, Equipment.Rower, Equipment.Hurdles, Equipment.Partner, Equipment.Track, Equipment.Landmine],
        TrapBar: new Weight(25), Counts: [new(Equipment.Bench, 6), new(Equipment.TrapBar, 6)]));

    public static IEnumerable<SeasonEdit> Of() =>
    [
        new SetWorkout(new Workout(Lower, "Lower body, strength",
        [
            new(PartKind.WarmUp, [Item("w1", "goblet-squat", 2, 8, Effort.Free), Item("w2", "hip-hinge", 2, 8, Effort.Free)], 30),
            new(PartKind.Straight, [Item("a1", "back-squat", 4, 5, Effort.OfMax(80), tempo: new Tempo(2, 0, null, 0))], 180),
            new(PartKind.Superset, [Item("b1", "trap-bar-deadlift", 3, 4, Effort.OfMax(80)), Item("b2", "nordic-lower", 2, 4, Effort.Free)], 150),
            new(PartKind.Superset, [Item("c1", "rear-foot-split-squat", 2, 6, Effort.Reserve(3)), Item("c2", "side-plank", 2, 30, Effort.Free, WorkUnit.Seconds)], 60),
        ], new(ProgressionKind.Linear, 2.5m, 1), new("maximum-strength"))),
        new SetWorkout(new Workout(Upper, "Upper body, strength",
        [
            new(PartKind.Superset, [Item("a1", "bench-press", 4, 5, Effort.OfMax(77.5m)), Item("a2", "pull-up", 4, 5, Effort.Reserve(2))], 150),
            new(PartKind.Superset, [Item("b1", "overhead-press", 3, 6, Effort.Reserve(3)), Item("b2", "dumbbell-row", 3, 8, Effort.Reserve(2))], 120),
            new(PartKind.Circuit, [Item("c1", "external-rotation", 2, 12, Effort.Free), Item("c2", "face-pull", 2, 12, Effort.Reserve(3)), Item("c3", "plank", 2, 40, Effort.Free, WorkUnit.Seconds)], 45),
        ], new(ProgressionKind.Step, 2.5m), new("maximum-strength"))),
    ];

    /// <summary>The mid-season break at home: three days a week between its first Wednesday and its last Sunday.</summary>
    public static SetHomeProgramme Home(DemoCalendar calendar) => new(new HomeProgramme(new(calendar.Id("home", "break")), "Mid-season break", calendar.Day(25, DayOfWeek.Monday), 2,
        new([Equipment.Band, Equipment.Box, Equipment.Track], new(2, 16, 2, MassUnit.Kilogram)),
        [
            new(DayOfWeek.Wednesday, Lower),
            new(DayOfWeek.Friday, null, new HomeRun(6, 300, WorkUnit.Metres, new Percent(95), 90, 15), "On grass or a path, warm up for ten minutes"),
            new(DayOfWeek.Sunday, Upper, new HomeRun(1, 1_500, WorkUnit.Seconds, new Percent(70))),
        ]));

    /// <summary>What is done in a kind of session; null where nothing is written.</summary>
    public static WorkoutId? For(SessionKind kind) => kind switch { SessionKind.LowerStrength => Lower, SessionKind.UpperStrength => Upper, _ => null };

    private static WorkoutItem Item(string id, string exercise, int sets, int amount, Effort effort, WorkUnit unit = WorkUnit.Repetitions, Tempo? tempo = null) => new(new(id), new(exercise), new(sets, amount, unit, effort, tempo));
}
