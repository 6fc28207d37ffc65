using System.Collections.Immutable;
using static Seasonwright.Core.Seasons.Equipment;
using static Seasonwright.Core.Setups.Demand;
using static Seasonwright.Core.Setups.LoadedBy;
using static Seasonwright.Core.Setups.MovementPattern;
using static Seasonwright.Core.Setups.Muscle;

namespace Seasonwright.Core.Setups;

public static partial class ExerciseBook
{
    private static ImmutableArray<Exercise> MobilityWork =>
    [
        Of("hip-flexor-stretch", "Half-kneeling hip-flexor stretch", Mobility, Nothing, [HipFlexors], [], [Legs], oneSided: true),
        Of("lying-hamstring-stretch", "Hamstring stretch, lying", Mobility, Nothing, [Hamstrings], [], [Legs], oneSided: true),
        Of("calf-stretch", "Calf stretch against a wall", Mobility, Nothing, [Calves], [], [Legs], oneSided: true),
        Of("adductor-rock", "Adductor rock on all fours", Mobility, Nothing, [Adductors], [], [Legs, Demand.Arms], oneSided: true),
        Of("seated-hip-rotation", "Hip rotation, seated on the floor", Mobility, Nothing, [Glutes, Abductors], [], [Legs], oneSided: true),
        Of("deep-squat-hold", "Deep squat, held", Mobility, Nothing, [Adductors, Glutes, Calves], [], [DeepKnee, Legs]),
        Of("knee-to-wall", "Ankle rock, knee to the wall", Mobility, Nothing, [Calves], [], [Legs], oneSided: true),
        Of("leg-swings", "Leg swings", Mobility, Nothing, [Hamstrings, HipFlexors, Adductors], [], [Legs], oneSided: true),
        Of("lunge-with-rotation", "Lunge with trunk rotation", Mobility, Nothing, [HipFlexors, Obliques], [], [DeepKnee, Legs, Demand.Arms], oneSided: true),
        Of("inchworm", "Walk-out of the hands", Mobility, Nothing, [Hamstrings, Abdominals], [], [Legs, Demand.Arms]),
        Of("lying-trunk-rotation", "Trunk rotation, lying on the side", Mobility, Nothing, [Obliques, UpperBack], [], [], oneSided: true),
        Of("cat-and-camel", "Rounding and hollowing the back on all fours", Mobility, Nothing, [LowerBack, UpperBack], [], [Demand.Arms]),
        Of("upper-back-extension", "Upper-back extension over a bench", Mobility, Nothing, [UpperBack, Lats], [Bench], [Overhead, Demand.Arms]),
        Of("lat-stretch", "Lat stretch, kneeling", Mobility, Nothing, [Lats], [], [Overhead, Demand.Arms]),
        Of("doorway-chest-stretch", "Chest stretch in a doorway", Mobility, Nothing, [Chest], [], [Demand.Arms], oneSided: true),
        Of("cross-body-stretch", "Shoulder stretch across the body", Mobility, Nothing, [Shoulders, RotatorCuff], [], [Demand.Arms], oneSided: true),
        Of("lying-shoulder-rotation", "Shoulder rotation stretch, lying on the side", Mobility, Nothing, [RotatorCuff], [], [Demand.Arms], oneSided: true),
        Of("wrist-stretch", "Wrist stretch", Mobility, Nothing, [Forearms], [], [Demand.Arms], oneSided: true),
        Of("neck-turns", "Neck turns", Mobility, Nothing, [Muscle.Neck], [], []),
        Of("slow-breathing", "Slow breathing, lying", Mobility, Nothing, [Abdominals], [], []),
    ];
}
