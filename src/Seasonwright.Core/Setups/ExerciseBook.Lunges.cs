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
    private static ImmutableArray<Exercise> Lunging =>
    [
        Of("split-squat", "Split squat", Lunge, TwoDumbbells, [Quadriceps, Glutes, Adductors], [Dumbbells], [DeepKnee, Legs, Demand.Arms, Spine], easier: "body-split-squat", harder: "rear-foot-split-squat", oneSided: true),
        Of("body-split-squat", "Split squat without a weight", Lunge, Nothing, [Quadriceps, Glutes, Adductors], [], [DeepKnee, Legs], easier: "half-split-squat", harder: "split-squat", oneSided: true),
        Of("half-split-squat", "Half split squat without a weight", Lunge, Nothing, [Quadriceps, Glutes], [], [Legs], easier: "split-squat-hold", harder: "body-split-squat", oneSided: true),
        Of("split-squat-hold", "Split squat held half way", Lunge, Nothing, [Quadriceps, Glutes], [], [Legs], harder: "half-split-squat", oneSided: true),
        Of("bar-split-squat", "Split squat with a bar", Lunge, Bar, [Quadriceps, Glutes, Adductors], [Barbell, Rack], [DeepKnee, Legs, Demand.Arms, Spine], easier: "split-squat", oneSided: true),
        Of("rear-foot-split-squat", "Split squat, rear foot raised", Lunge, TwoDumbbells, [Quadriceps, Glutes, Adductors], [Dumbbells, Bench], [DeepKnee, Legs, Demand.Arms, Spine], easier: "split-squat", oneSided: true),
        Of("body-rear-foot-split-squat", "Split squat, rear foot raised, without a weight", Lunge, Nothing, [Quadriceps, Glutes, Adductors], [Bench], [DeepKnee, Legs], easier: "body-split-squat", harder: "rear-foot-split-squat", oneSided: true),
        Of("front-foot-split-squat", "Split squat, front foot raised", Lunge, TwoDumbbells, [Quadriceps, Glutes, Adductors], [Dumbbells, Box], [DeepKnee, Legs, Demand.Arms, Spine], easier: "body-split-squat", oneSided: true),
        Of("band-split-squat", "Split squat with a band", Lunge, Nothing, [Quadriceps, Glutes], [Band], [DeepKnee, Legs, Demand.Arms, Spine], easier: "body-split-squat", harder: "split-squat", oneSided: true),
        Of("forward-lunge", "Forward lunge", Lunge, TwoDumbbells, [Quadriceps, Glutes, Adductors], [Dumbbells], [DeepKnee, Legs, Demand.Arms, Spine], easier: "reverse-lunge", oneSided: true),
        Of("reverse-lunge", "Reverse lunge", Lunge, TwoDumbbells, [Quadriceps, Glutes], [Dumbbells], [DeepKnee, Legs, Demand.Arms, Spine], easier: "body-reverse-lunge", harder: "forward-lunge", oneSided: true),
        Of("bar-reverse-lunge", "Reverse lunge with a bar", Lunge, Bar, [Quadriceps, Glutes], [Barbell, Rack], [DeepKnee, Legs, Demand.Arms, Spine], easier: "reverse-lunge", oneSided: true),
        Of("body-reverse-lunge", "Reverse lunge without a weight", Lunge, Nothing, [Quadriceps, Glutes], [], [DeepKnee, Legs], easier: "half-split-squat", harder: "reverse-lunge", oneSided: true),
        Of("sliding-reverse-lunge", "Sliding reverse lunge", Lunge, Nothing, [Quadriceps, Glutes], [Sliders], [DeepKnee, Legs], easier: "body-reverse-lunge", oneSided: true),
        Of("walking-lunge", "Walking lunge", Lunge, TwoDumbbells, [Quadriceps, Glutes, Adductors], [Dumbbells], [DeepKnee, Legs, Demand.Arms, Spine], easier: "body-walking-lunge", oneSided: true),
        Of("body-walking-lunge", "Walking lunge without a weight", Lunge, Nothing, [Quadriceps, Glutes, Adductors], [], [DeepKnee, Legs], easier: "body-reverse-lunge", harder: "walking-lunge", oneSided: true),
        Of("lateral-lunge", "Lateral lunge", Lunge, OneDumbbell, [Adductors, Quadriceps, Glutes], [Dumbbells], [DeepKnee, Legs, Demand.Arms, Spine], easier: "body-lateral-lunge", oneSided: true),
        Of("body-lateral-lunge", "Lateral lunge without a weight", Lunge, Nothing, [Adductors, Quadriceps, Glutes], [], [DeepKnee, Legs], easier: "half-split-squat", harder: "lateral-lunge", oneSided: true),
        Of("lateral-squat", "Lateral squat with a kettlebell", Lunge, LoadedBy.Kettlebell, [Adductors, Quadriceps, Glutes], [Equipment.Kettlebell], [DeepKnee, Legs, Demand.Arms, Spine], easier: "body-lateral-lunge", oneSided: true),
        Of("crossover-lunge", "Crossover lunge", Lunge, OneDumbbell, [Glutes, Abductors, Quadriceps], [Dumbbells], [DeepKnee, Legs, Demand.Arms, Spine], easier: "body-reverse-lunge", oneSided: true),
        Of("step-up", "Step-up", Lunge, TwoDumbbells, [Quadriceps, Glutes], [Dumbbells, Box], [Legs, Demand.Arms, Spine], easier: "body-step-up", harder: "high-step-up", oneSided: true),
        Of("bar-step-up", "Step-up with a bar", Lunge, Bar, [Quadriceps, Glutes], [Barbell, Rack, Box], [Legs, Demand.Arms, Spine], easier: "step-up", oneSided: true),
        Of("high-step-up", "High step-up", Lunge, TwoDumbbells, [Glutes, Quadriceps, Hamstrings], [Dumbbells, Box], [DeepKnee, Legs, Demand.Arms, Spine], easier: "step-up", oneSided: true),
        Of("body-step-up", "Step-up without a weight", Lunge, Nothing, [Quadriceps, Glutes], [Box], [Legs], easier: "split-squat-hold", harder: "step-up", oneSided: true),
        Of("lateral-step-up", "Lateral step-up", Lunge, Nothing, [Quadriceps, Glutes, Abductors], [Box], [Legs], easier: "body-step-up", oneSided: true),
        Of("step-down", "Step-down", Lunge, Nothing, [Quadriceps, Glutes], [Box], [Legs], easier: "body-step-up", harder: "one-leg-box-squat", oneSided: true),
        Of("one-leg-box-squat", "Single-leg squat to a box", Lunge, Nothing, [Quadriceps, Glutes], [Box], [Legs], easier: "step-down", harder: "one-leg-squat", oneSided: true),
        Of("one-leg-squat", "Single-leg squat", Lunge, Nothing, [Quadriceps, Glutes], [], [DeepKnee, Legs], easier: "rear-knee-squat", oneSided: true),
        Of("rear-knee-squat", "Single-leg squat, rear knee to the floor", Lunge, Nothing, [Quadriceps, Glutes], [], [DeepKnee, Legs], easier: "body-split-squat", harder: "one-leg-squat", oneSided: true),
        Of("one-leg-press", "Leg press, one leg", Lunge, Stack, [Quadriceps, Glutes], [LegPress], [DeepKnee, Legs], easier: "short-one-leg-press", oneSided: true),
        Of("short-one-leg-press", "Leg press, one leg, no deeper than 90 degrees", Lunge, Stack, [Quadriceps, Glutes], [LegPress], [Legs], harder: "one-leg-press", oneSided: true),
    ];
}
