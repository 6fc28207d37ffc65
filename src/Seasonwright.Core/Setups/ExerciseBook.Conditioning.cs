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
    private static ImmutableArray<Exercise> ConditioningWork =>
    [
        Of("easy-bike", "Bike, easy", Conditioning, Nothing, [Quadriceps, Glutes], [Bike], [DeepKnee, Legs], harder: "bike-intervals"),
        Of("bike-intervals", "Bike intervals", Conditioning, Nothing, [Quadriceps, Glutes], [Bike], [DeepKnee, Legs], easier: "easy-bike", harder: "bike-sprints"),
        Of("bike-sprints", "Bike sprints", Conditioning, Nothing, [Quadriceps, Glutes], [Bike], [DeepKnee, Legs], easier: "bike-intervals"),
        Of("one-leg-bike", "Bike, one leg", Conditioning, Nothing, [Quadriceps, Glutes], [Bike], [DeepKnee, Legs], easier: "easy-bike", oneSided: true),
        Of("easy-arm-bike", "Arm bike, easy", Conditioning, Nothing, [Shoulders, Biceps, Triceps], [ArmBike], [Demand.Arms], harder: "arm-bike-intervals"),
        Of("arm-bike-intervals", "Arm bike intervals", Conditioning, Nothing, [Shoulders, Biceps, Triceps], [ArmBike], [Demand.Arms], easier: "easy-arm-bike"),
        Of("easy-row", "Rower, easy", Conditioning, Nothing, [UpperBack, Quadriceps, Glutes], [Rower], [DeepKnee, Legs, Demand.Arms, Spine], easier: "arm-row", harder: "row-intervals"),
        Of("row-intervals", "Rower intervals", Conditioning, Nothing, [UpperBack, Quadriceps, Glutes], [Rower], [DeepKnee, Legs, Demand.Arms, Spine], easier: "easy-row"),
        Of("arm-row", "Rower, arms only", Conditioning, Nothing, [UpperBack, Biceps, Lats], [Rower], [Demand.Arms], easier: "easy-arm-bike", harder: "easy-row"),
        Of("water-run", "Running in deep water", Conditioning, Nothing, [Quadriceps, Hamstrings, Glutes], [Pool], [Legs]),
        Of("easy-swim", "Swim, easy", Conditioning, Nothing, [Lats, Shoulders, UpperBack], [Pool], [Overhead, Legs, Demand.Arms], easier: "water-run"),
        Of("sled-push", "Sled push", Conditioning, LoadedBy.Sled, [Quadriceps, Glutes, Calves], [Equipment.Sled, Track], [Legs, Demand.Arms, Spine], easier: "sled-walk"),
        Of("sled-walk", "Forward sled walk with a belt", Conditioning, LoadedBy.Sled, [Glutes, Quadriceps, Calves], [Equipment.Sled, Track], [Legs], harder: "sled-push"),
        Of("backward-sled-walk", "Backward sled walk with a belt", Conditioning, LoadedBy.Sled, [Quadriceps, Calves], [Equipment.Sled, Track], [Legs]),
        Of("seated-punches", "Straight punches in the air, seated", Conditioning, Nothing, [Shoulders, Triceps, Obliques], [], [Demand.Arms], harder: "standing-punches"),
        Of("standing-punches", "Straight punches in the air, standing", Conditioning, Nothing, [Shoulders, Triceps, Obliques], [], [Legs, Demand.Arms], easier: "seated-punches"),
        Of("marching", "Marching on the spot", Conditioning, Nothing, [HipFlexors, Quadriceps], [], [Legs], harder: "mountain-climber"),
        Of("step-climb", "Steps up and down for time", Conditioning, Nothing, [Quadriceps, Glutes, Calves], [Box], [Legs], easier: "marching"),
        Of("mountain-climber", "Running in the press-up position", Conditioning, Nothing, [Abdominals, HipFlexors, Shoulders], [], [Legs, Demand.Arms], easier: "marching", harder: "squat-thrust"),
        Of("squat-thrust", "Squat thrust", Conditioning, Nothing, [Quadriceps, Abdominals, Shoulders], [], [DeepKnee, Legs, Demand.Arms], easier: "mountain-climber", harder: "jumping-squat-thrust"),
        Of("jumping-squat-thrust", "Squat thrust with a jump", Conditioning, Nothing, [Quadriceps, Abdominals, Shoulders], [], [DeepKnee, Demand.Jump, Legs, Demand.Arms], easier: "squat-thrust", contacts: 1),
        Of("swings-for-time", "Kettlebell swings for time", Conditioning, LoadedBy.Kettlebell, [Glutes, Hamstrings, Shoulders], [Equipment.Kettlebell], [Legs, Demand.Arms, Spine], easier: "step-climb"),
        Of("pushing-contest", "Pushing against a partner", Conditioning, Nothing, [Quadriceps, Glutes, Abdominals], [Partner], [Contact, Legs, Demand.Arms, Spine], easier: "mountain-climber"),
        Of("wrestling", "Wrestling for position", Conditioning, Nothing, [Abdominals, UpperBack, Quadriceps], [Partner], [ChangeOfDirection, Contact, Legs, Demand.Arms, Spine], easier: "pushing-contest"),
    ];
}
