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
    private static ImmutableArray<Exercise> LiftingFast =>
    [
        Of("power-clean", "Power clean", FastLift, Bar, [Glutes, Quadriceps, UpperBack], [Barbell, Platform], [DeepKnee, Demand.Jump, Legs, Demand.Arms, Spine], easier: "hang-power-clean", harder: "clean"),
        Of("hang-power-clean", "Hang power clean", FastLift, Bar, [Glutes, Quadriceps, UpperBack], [Barbell, Platform], [Demand.Jump, Legs, Demand.Arms, Spine], easier: "hang-high-pull", harder: "power-clean", maxOf: "power-clean", share: 95),
        Of("clean", "Clean", FastLift, Bar, [Glutes, Quadriceps, UpperBack], [Barbell, Platform], [DeepKnee, Demand.Jump, Legs, Demand.Arms, Spine], easier: "power-clean", maxOf: "power-clean", share: 110),
        Of("clean-pull", "Clean pull", FastLift, Bar, [Glutes, Quadriceps, UpperBack], [Barbell, Platform], [DeepKnee, Legs, Demand.Arms, Spine], easier: "hang-clean-pull", maxOf: "power-clean", share: 120),
        Of("hang-clean-pull", "Hang clean pull", FastLift, Bar, [Glutes, Quadriceps, UpperBack], [Barbell, Platform], [Legs, Demand.Arms, Spine], easier: "kettlebell-clean", harder: "hang-power-clean"),
        Of("mid-thigh-pull", "Mid-thigh pull", FastLift, Bar, [Glutes, Quadriceps, UpperBack], [Barbell, Rack], [Legs, Demand.Arms, Spine], easier: "kettlebell-clean"),
        Of("hang-high-pull", "Hang high pull", FastLift, Bar, [Glutes, UpperBack, Shoulders], [Barbell, Platform], [Legs, Demand.Arms, Spine], easier: "hang-clean-pull"),
        Of("jump-shrug", "Jump shrug", FastLift, Bar, [Glutes, Quadriceps, Calves], [Barbell, Platform], [Demand.Jump, Legs, Demand.Arms, Spine], easier: "hang-clean-pull", contacts: 1),
        Of("dumbbell-clean", "Hang clean with dumbbells", FastLift, TwoDumbbells, [Glutes, Quadriceps, UpperBack], [Dumbbells], [Demand.Jump, Legs, Demand.Arms, Spine], easier: "kettlebell-clean", harder: "hang-power-clean"),
        Of("power-snatch", "Power snatch", FastLift, Bar, [Glutes, Quadriceps, UpperBack], [Barbell, Platform], [DeepKnee, Overhead, Demand.Jump, Legs, Demand.Arms, Spine], easier: "hang-power-snatch", harder: "snatch", maxOf: "power-clean", share: 75),
        Of("hang-power-snatch", "Hang power snatch", FastLift, Bar, [Glutes, Quadriceps, UpperBack], [Barbell, Platform], [Overhead, Demand.Jump, Legs, Demand.Arms, Spine], easier: "muscle-snatch", harder: "power-snatch", maxOf: "power-clean", share: 70),
        Of("snatch", "Snatch", FastLift, Bar, [Glutes, Quadriceps, UpperBack], [Barbell, Platform], [DeepKnee, Overhead, Demand.Jump, Legs, Demand.Arms, Spine], easier: "power-snatch", maxOf: "power-clean", share: 85),
        Of("muscle-snatch", "Muscle snatch", FastLift, Bar, [Shoulders, UpperBack, Glutes], [Barbell], [Overhead, Legs, Demand.Arms, Spine], easier: "kettlebell-clean"),
        Of("dumbbell-snatch", "Dumbbell snatch, one arm", FastLift, OneDumbbell, [Glutes, Quadriceps, Shoulders], [Dumbbells], [Overhead, Legs, Demand.Arms, Spine], easier: "kettlebell-clean", oneSided: true),
        Of("push-jerk", "Push jerk", FastLift, Bar, [Shoulders, Quadriceps, Triceps], [Barbell, Rack, Platform], [Overhead, Demand.Jump, Legs, Demand.Arms, Spine], easier: "dumbbell-push-jerk", harder: "split-jerk"),
        Of("split-jerk", "Split jerk", FastLift, Bar, [Shoulders, Quadriceps, Triceps], [Barbell, Rack, Platform], [Overhead, Demand.Jump, Legs, Demand.Arms, Spine], easier: "push-jerk"),
        Of("dumbbell-push-jerk", "Push jerk with dumbbells", FastLift, TwoDumbbells, [Shoulders, Quadriceps, Triceps], [Dumbbells], [Overhead, Demand.Jump, Legs, Demand.Arms, Spine], harder: "push-jerk"),
        Of("kettlebell-clean", "Kettlebell clean", FastLift, LoadedBy.Kettlebell, [Glutes, Hamstrings, UpperBack], [Equipment.Kettlebell], [Legs, Demand.Arms, Spine], oneSided: true),
        Of("kettlebell-snatch", "Kettlebell snatch", FastLift, LoadedBy.Kettlebell, [Glutes, Hamstrings, Shoulders], [Equipment.Kettlebell], [Overhead, Legs, Demand.Arms, Spine], easier: "kettlebell-clean", oneSided: true),
    ];
}
