using System.Collections.Immutable;
using static Seasonwright.Core.Setups.Demand;
using static Seasonwright.Core.Setups.Equipment;
using static Seasonwright.Core.Setups.LoadedBy;
using static Seasonwright.Core.Setups.MovementPattern;
using static Seasonwright.Core.Setups.Muscle;

namespace Seasonwright.Core.Setups;

public static partial class ExerciseBook
{
    private static ImmutableArray<Exercise> Squatting =>
    [
        Of("back-squat", "Back squat", Squat, Bar, [Quadriceps, Glutes, Adductors], [Barbell, Rack], [DeepKnee, Legs, Spine], easier: "goblet-squat"),
        Of("front-squat", "Front squat", Squat, Bar, [Quadriceps, Glutes, UpperBack], [Barbell, Rack], [DeepKnee, Legs, Spine], easier: "goblet-squat", maxOf: "back-squat", share: 85),
        Of("box-squat", "Box squat", Squat, Bar, [Quadriceps, Glutes, Hamstrings], [Barbell, Rack, Box], [Legs, Spine], easier: "goblet-squat", harder: "back-squat", maxOf: "back-squat", share: 90),
        Of("goblet-squat", "Goblet squat", Squat, OneDumbbell, [Quadriceps, Glutes], [Dumbbells], [DeepKnee, Legs, Demand.Arms], easier: "body-squat", harder: "front-squat"),
    ];
}
