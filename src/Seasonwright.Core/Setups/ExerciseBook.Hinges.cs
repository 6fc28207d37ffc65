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
    private static ImmutableArray<Exercise> Hinging =>
    [
        Of("deadlift", "Deadlift", Hinge, Bar, [Glutes, Hamstrings, LowerBack], [Barbell, Platform], [Legs, Demand.Arms, Spine], easier: "trap-bar-deadlift"),
        Of("trap-bar-deadlift", "Trap-bar deadlift", Hinge, Bar, [Glutes, Quadriceps, Hamstrings], [TrapBar], [Legs, Demand.Arms, Spine], easier: "kettlebell-deadlift", harder: "deadlift", maxOf: "deadlift", share: 105),
        Of("wide-deadlift", "Deadlift, wide stance", Hinge, Bar, [Glutes, Adductors, Quadriceps], [Barbell, Platform], [Legs, Demand.Arms, Spine], easier: "trap-bar-deadlift", maxOf: "deadlift", share: 100),
        Of("rack-pull", "Rack pull", Hinge, Bar, [Glutes, LowerBack, UpperBack], [Barbell, Rack], [Legs, Demand.Arms, Spine], easier: "kettlebell-deadlift"),
        Of("romanian-deadlift", "Romanian deadlift", Hinge, Bar, [Hamstrings, Glutes, LowerBack], [Barbell], [Legs, Demand.Arms, Spine], easier: "dumbbell-romanian-deadlift", maxOf: "deadlift", share: 75),
        Of("dumbbell-romanian-deadlift", "Romanian deadlift with dumbbells", Hinge, TwoDumbbells, [Hamstrings, Glutes, LowerBack], [Dumbbells], [Legs, Demand.Arms, Spine], easier: "band-deadlift", harder: "romanian-deadlift"),
        Of("one-leg-deadlift", "Single-leg deadlift", Hinge, OneDumbbell, [Hamstrings, Glutes], [Dumbbells], [Legs, Demand.Arms, Spine], easier: "one-leg-hinge", harder: "bar-one-leg-deadlift", oneSided: true),
        Of("bar-one-leg-deadlift", "Single-leg deadlift with a bar", Hinge, Bar, [Hamstrings, Glutes], [Barbell], [Legs, Demand.Arms, Spine], easier: "one-leg-deadlift", oneSided: true),
        Of("one-leg-hinge", "Single-leg hip hinge without a weight", Hinge, Nothing, [Hamstrings, Glutes], [], [Legs], easier: "hip-hinge", harder: "one-leg-deadlift", oneSided: true),
        Of("hip-hinge", "Hip hinge without a weight", Hinge, Nothing, [Hamstrings, Glutes], [], [Legs], harder: "band-deadlift"),
        Of("band-deadlift", "Deadlift with a band", Hinge, Nothing, [Hamstrings, Glutes], [Band], [Legs, Demand.Arms, Spine], easier: "hip-hinge", harder: "kettlebell-deadlift"),
        Of("kettlebell-deadlift", "Kettlebell deadlift", Hinge, LoadedBy.Kettlebell, [Glutes, Hamstrings], [Equipment.Kettlebell], [Legs, Demand.Arms, Spine], easier: "hip-hinge", harder: "trap-bar-deadlift"),
        Of("kettlebell-swing", "Kettlebell swing", Hinge, LoadedBy.Kettlebell, [Glutes, Hamstrings, LowerBack], [Equipment.Kettlebell], [Legs, Demand.Arms, Spine], easier: "kettlebell-deadlift"),
        Of("cable-pull-through", "Cable pull-through", Hinge, Stack, [Glutes, Hamstrings], [Cable], [Legs, Demand.Arms, Spine], easier: "hip-hinge"),
        Of("good-morning", "Good morning", Hinge, Bar, [Hamstrings, LowerBack, Glutes], [Barbell, Rack], [Legs, Demand.Arms, Spine], easier: "hip-hinge"),
        Of("hip-thrust", "Hip thrust", Hinge, Bar, [Glutes, Hamstrings], [Barbell, Bench], [Legs, Demand.Arms], easier: "body-hip-thrust"),
        Of("body-hip-thrust", "Hip thrust without a weight", Hinge, Nothing, [Glutes, Hamstrings], [Bench], [Legs], easier: "glute-bridge", harder: "hip-thrust"),
        Of("one-leg-hip-thrust", "Single-leg hip thrust", Hinge, Nothing, [Glutes, Hamstrings], [Bench], [Legs], easier: "one-leg-bridge", oneSided: true),
        Of("bar-glute-bridge", "Glute bridge with a bar", Hinge, Bar, [Glutes, Hamstrings], [Barbell], [Legs, Demand.Arms], easier: "glute-bridge", harder: "hip-thrust"),
        Of("glute-bridge", "Glute bridge", Hinge, Nothing, [Glutes, Hamstrings], [], [Legs], harder: "one-leg-bridge"),
        Of("band-glute-bridge", "Glute bridge, band round the knees", Hinge, Nothing, [Glutes, Abductors], [Band], [Legs], easier: "glute-bridge"),
        Of("one-leg-bridge", "Single-leg bridge", Hinge, Nothing, [Glutes, Hamstrings], [], [Legs], easier: "glute-bridge", harder: "one-leg-hip-thrust", oneSided: true),
        Of("back-extension", "Back extension", Hinge, Nothing, [LowerBack, Glutes, Hamstrings], [BackExtension], [Legs], harder: "weighted-back-extension"),
        Of("weighted-back-extension", "Back extension with a weight", Hinge, OneDumbbell, [LowerBack, Glutes, Hamstrings], [BackExtension, Dumbbells], [Legs, Demand.Arms], easier: "back-extension"),
        Of("one-leg-back-extension", "Back extension on one leg", Hinge, Nothing, [Hamstrings, Glutes, LowerBack], [BackExtension], [Legs], easier: "back-extension", oneSided: true),
        Of("reverse-back-extension", "Reverse back extension", Hinge, Nothing, [Glutes, LowerBack, Hamstrings], [Bench], [Legs, Demand.Arms], easier: "glute-bridge"),
    ];
}
