using System.Collections.Immutable;
using static Seasonwright.Core.Seasons.Equipment;
using static Seasonwright.Core.Setups.Demand;
using static Seasonwright.Core.Setups.LoadedBy;
using static Seasonwright.Core.Setups.MovementPattern;
using static Seasonwright.Core.Setups.Muscle;
using Equipment = Seasonwright.Core.Seasons.Equipment;

namespace Seasonwright.Core.Setups;

public static partial class ExerciseBook
{
    private static ImmutableArray<Exercise> Pushing =>
    [
        Of("bench-press", "Bench press", HorizontalPush, Bar, [Chest, Triceps, Shoulders], [Barbell, Rack, Bench], [Demand.Arms], easier: "dumbbell-bench-press", harder: "pause-bench-press"),
        Of("pause-bench-press", "Bench press with a pause", HorizontalPush, Bar, [Chest, Triceps, Shoulders], [Barbell, Rack, Bench], [Demand.Arms], easier: "bench-press", maxOf: "bench-press", share: 95),
        Of("incline-bench-press", "Incline bench press", HorizontalPush, Bar, [Chest, Shoulders, Triceps], [Barbell, Rack, Bench], [Demand.Arms], easier: "incline-dumbbell-press", maxOf: "bench-press", share: 80),
        Of("close-grip-bench-press", "Bench press, close grip", HorizontalPush, Bar, [Triceps, Chest, Shoulders], [Barbell, Rack, Bench], [Demand.Arms], easier: "dumbbell-floor-press", maxOf: "bench-press", share: 90),
        Of("floor-press", "Floor press", HorizontalPush, Bar, [Chest, Triceps, Shoulders], [Barbell, Rack], [Demand.Arms], easier: "dumbbell-floor-press", maxOf: "bench-press", share: 90),
        Of("dumbbell-bench-press", "Dumbbell bench press", HorizontalPush, TwoDumbbells, [Chest, Triceps, Shoulders], [Dumbbells, Bench], [Demand.Arms], easier: "dumbbell-floor-press", harder: "bench-press", maxOf: "bench-press", share: 40),
        Of("incline-dumbbell-press", "Incline dumbbell press", HorizontalPush, TwoDumbbells, [Chest, Shoulders, Triceps], [Dumbbells, Bench], [Demand.Arms], easier: "dumbbell-floor-press", harder: "incline-bench-press", maxOf: "bench-press", share: 35),
        Of("one-arm-bench-press", "Dumbbell bench press, one arm", HorizontalPush, OneDumbbell, [Chest, Triceps, Shoulders, Obliques], [Dumbbells, Bench], [Demand.Arms], easier: "dumbbell-floor-press", oneSided: true),
        Of("dumbbell-floor-press", "Dumbbell floor press", HorizontalPush, TwoDumbbells, [Chest, Triceps, Shoulders], [Dumbbells], [Demand.Arms], easier: "band-chest-press", harder: "dumbbell-bench-press"),
        Of("cable-chest-press", "Cable chest press", HorizontalPush, Stack, [Chest, Triceps, Shoulders, Obliques], [Cable], [Demand.Arms], easier: "band-chest-press", oneSided: true),
        Of("band-chest-press", "Chest press with a band", HorizontalPush, Nothing, [Chest, Triceps, Shoulders], [Band], [Demand.Arms], harder: "dumbbell-floor-press"),
        Of("press-up", "Press-up", HorizontalPush, Nothing, [Chest, Triceps, Shoulders], [], [Demand.Arms], easier: "knee-press-up", harder: "feet-raised-press-up"),
        Of("knee-press-up", "Press-up on the knees", HorizontalPush, Nothing, [Chest, Triceps], [], [Demand.Arms], easier: "wall-press-up", harder: "press-up"),
        Of("raised-press-up", "Press-up with the hands raised", HorizontalPush, Nothing, [Chest, Triceps, Abdominals], [Box], [Demand.Arms], easier: "wall-press-up", harder: "press-up"),
        Of("wall-press-up", "Press-up against a wall", HorizontalPush, Nothing, [Chest, Triceps], [], [Demand.Arms], harder: "knee-press-up"),
        Of("feet-raised-press-up", "Press-up with the feet raised", HorizontalPush, Nothing, [Chest, Shoulders, Triceps], [Box], [Demand.Arms], easier: "press-up"),
        Of("band-press-up", "Press-up against a band", HorizontalPush, Nothing, [Chest, Triceps, Abdominals], [Band], [Demand.Arms], easier: "press-up"),
        Of("strap-press-up", "Press-up in straps", HorizontalPush, Nothing, [Chest, Triceps, Abdominals], [Straps], [Demand.Arms], easier: "press-up"),
        Of("dip", "Dip", HorizontalPush, OnTheBody, [Chest, Triceps, Shoulders], [DipBars], [Demand.Arms], easier: "press-up"),

        Of("overhead-press", "Overhead press", VerticalPush, Bar, [Shoulders, Triceps, UpperBack], [Barbell, Rack], [Overhead, Legs, Demand.Arms, Spine], easier: "dumbbell-overhead-press", harder: "push-press"),
        Of("push-press", "Push press", VerticalPush, Bar, [Shoulders, Triceps, Quadriceps], [Barbell, Rack], [Overhead, Legs, Demand.Arms, Spine], easier: "overhead-press", maxOf: "overhead-press", share: 125),
        Of("seated-press", "Overhead press, seated", VerticalPush, Bar, [Shoulders, Triceps], [Barbell, Rack, Bench], [Overhead, Demand.Arms, Spine], easier: "seated-dumbbell-press", maxOf: "overhead-press", share: 95),
        Of("dumbbell-overhead-press", "Dumbbell overhead press", VerticalPush, TwoDumbbells, [Shoulders, Triceps, UpperBack], [Dumbbells], [Overhead, Legs, Demand.Arms, Spine], easier: "seated-dumbbell-press", harder: "overhead-press", maxOf: "overhead-press", share: 40),
        Of("seated-dumbbell-press", "Dumbbell overhead press, seated", VerticalPush, TwoDumbbells, [Shoulders, Triceps], [Dumbbells, Bench], [Overhead, Demand.Arms, Spine], easier: "band-overhead-press", harder: "dumbbell-overhead-press"),
        Of("one-arm-overhead-press", "Overhead press, one arm", VerticalPush, OneDumbbell, [Shoulders, Triceps, Obliques], [Dumbbells], [Overhead, Legs, Demand.Arms, Spine], easier: "half-kneeling-press", oneSided: true),
        Of("kettlebell-press", "Kettlebell press", VerticalPush, LoadedBy.Kettlebell, [Shoulders, Triceps, Obliques], [Equipment.Kettlebell], [Overhead, Legs, Demand.Arms, Spine], easier: "band-overhead-press", oneSided: true),
        Of("half-kneeling-press", "Half-kneeling overhead press", VerticalPush, OneDumbbell, [Shoulders, Triceps, Abdominals], [Dumbbells], [Overhead, Legs, Demand.Arms, Spine], easier: "band-overhead-press", oneSided: true),
        Of("landmine-press", "Landmine press", VerticalPush, Bar, [Shoulders, Chest, Triceps], [Barbell, Landmine], [Overhead, Legs, Demand.Arms, Spine], easier: "band-overhead-press", oneSided: true),
        Of("band-overhead-press", "Overhead press with a band", VerticalPush, Nothing, [Shoulders, Triceps], [Band], [Overhead, Demand.Arms], harder: "seated-dumbbell-press"),
        Of("high-hip-press-up", "Press-up with the hips high", VerticalPush, Nothing, [Shoulders, Triceps], [], [Overhead, Demand.Arms], harder: "feet-raised-high-hip-press-up"),
        Of("feet-raised-high-hip-press-up", "Press-up with the hips high, feet raised", VerticalPush, Nothing, [Shoulders, Triceps], [Box], [Overhead, Demand.Arms], easier: "high-hip-press-up"),
    ];
}
