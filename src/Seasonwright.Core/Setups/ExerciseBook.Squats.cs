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
    private static ImmutableArray<Exercise> Squatting =>
    [
        Of("back-squat", "Back squat", Squat, Bar, [Quadriceps, Glutes, Adductors], [Barbell, Rack], [DeepKnee, Legs, Demand.Arms, Spine], easier: "goblet-squat", harder: "pause-squat"),
        Of("pause-squat", "Back squat with a pause", Squat, Bar, [Quadriceps, Glutes, Adductors], [Barbell, Rack], [DeepKnee, Legs, Demand.Arms, Spine], easier: "back-squat", maxOf: "back-squat", share: 90),
        Of("front-squat", "Front squat", Squat, Bar, [Quadriceps, Glutes, UpperBack], [Barbell, Rack], [DeepKnee, Legs, Demand.Arms, Spine], easier: "goblet-squat", maxOf: "back-squat", share: 85),
        Of("overhead-squat", "Overhead squat", Squat, Bar, [Quadriceps, Glutes, UpperBack], [Barbell, Rack], [DeepKnee, Overhead, Legs, Demand.Arms, Spine], easier: "front-squat"),
        Of("box-squat", "Box squat", Squat, Bar, [Quadriceps, Glutes, Hamstrings], [Barbell, Rack, Box], [Legs, Demand.Arms, Spine], easier: "goblet-box-squat", harder: "back-squat", maxOf: "back-squat", share: 90),
        Of("half-squat", "Half squat", Squat, Bar, [Quadriceps, Glutes], [Barbell, Rack], [Legs, Demand.Arms, Spine], easier: "goblet-box-squat"),
        Of("held-squat", "Half squat held against a fixed bar", Squat, Nothing, [Quadriceps, Glutes], [Barbell, Rack], [Legs, Demand.Arms, Spine], easier: "wall-sit"),
        Of("landmine-squat", "Landmine squat", Squat, Bar, [Quadriceps, Glutes], [Barbell, Landmine], [DeepKnee, Legs, Demand.Arms, Spine], easier: "body-squat"),
        Of("goblet-squat", "Goblet squat", Squat, OneDumbbell, [Quadriceps, Glutes], [Dumbbells], [DeepKnee, Legs, Demand.Arms, Spine], easier: "body-squat", harder: "front-squat"),
        Of("goblet-box-squat", "Goblet squat to a box", Squat, OneDumbbell, [Quadriceps, Glutes], [Dumbbells, Box], [Legs, Demand.Arms, Spine], easier: "body-box-squat", harder: "goblet-squat"),
        Of("kettlebell-squat", "Front squat with kettlebells", Squat, LoadedBy.Kettlebell, [Quadriceps, Glutes, Abdominals], [Equipment.Kettlebell], [DeepKnee, Legs, Demand.Arms, Spine], easier: "body-squat", harder: "front-squat"),
        Of("dumbbell-squat", "Squat with dumbbells at the sides", Squat, TwoDumbbells, [Quadriceps, Glutes], [Dumbbells], [DeepKnee, Legs, Demand.Arms, Spine], easier: "body-squat", harder: "back-squat"),
        Of("band-squat", "Squat with a band", Squat, Nothing, [Quadriceps, Glutes], [Band], [DeepKnee, Legs, Demand.Arms, Spine], easier: "body-squat", harder: "goblet-squat"),
        Of("body-squat", "Squat without a weight", Squat, Nothing, [Quadriceps, Glutes], [], [DeepKnee, Legs], easier: "half-body-squat", harder: "goblet-squat"),
        Of("half-body-squat", "Half squat without a weight", Squat, Nothing, [Quadriceps, Glutes], [], [Legs], harder: "body-squat"),
        Of("body-box-squat", "Squat to a box, without a weight", Squat, Nothing, [Quadriceps, Glutes], [Box], [Legs], harder: "body-squat"),
        Of("wall-sit", "Wall sit", Squat, Nothing, [Quadriceps, Glutes], [], [Legs], easier: "half-body-squat", harder: "one-leg-wall-sit"),
        Of("one-leg-wall-sit", "Wall sit on one leg", Squat, Nothing, [Quadriceps, Glutes], [], [Legs], easier: "wall-sit", oneSided: true),
        Of("band-held-squat", "Half squat held, band behind the knees", Squat, Nothing, [Quadriceps], [Band, Rack], [Legs], easier: "wall-sit"),
        Of("leg-press", "Leg press", Squat, Stack, [Quadriceps, Glutes], [LegPress], [DeepKnee, Legs], easier: "short-leg-press"),
        Of("short-leg-press", "Leg press, no deeper than 90 degrees", Squat, Stack, [Quadriceps, Glutes], [LegPress], [Legs], harder: "leg-press"),
        Of("leg-extension", "Leg extension", Squat, Stack, [Quadriceps], [LegExtension], [Legs]),
        Of("one-leg-extension", "Leg extension, one leg", Squat, Stack, [Quadriceps], [LegExtension], [Legs], easier: "leg-extension", oneSided: true),
        Of("band-knee-extension", "Knee extension against a band, standing", Squat, Nothing, [Quadriceps], [Band], [Legs], oneSided: true),
        Of("kneeling-lean-back", "Kneeling lean back", Squat, Nothing, [Quadriceps], [], [DeepKnee, Legs], easier: "wall-sit"),
    ];
}
