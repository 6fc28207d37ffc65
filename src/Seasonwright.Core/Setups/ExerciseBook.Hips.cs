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
    private static ImmutableArray<Exercise> HipWork =>
    [
        Of("copenhagen-adduction", "Copenhagen adduction", HipSides, Nothing, [Adductors, Obliques], [Partner], [Legs, Demand.Arms], easier: "short-copenhagen-adduction", oneSided: true),
        Of("bench-copenhagen-adduction", "Copenhagen adduction on a bench", HipSides, Nothing, [Adductors, Obliques], [Bench], [Legs, Demand.Arms], easier: "short-copenhagen-adduction", oneSided: true),
        Of("short-copenhagen-adduction", "Copenhagen adduction, knee supported", HipSides, Nothing, [Adductors, Obliques], [Bench], [Legs, Demand.Arms], easier: "lying-adduction", harder: "bench-copenhagen-adduction", oneSided: true),
        Of("lying-adduction", "Hip adduction, lying on the side", HipSides, Nothing, [Adductors], [], [Legs], easier: "cushion-squeeze", harder: "short-copenhagen-adduction", oneSided: true),
        Of("cushion-squeeze", "Adductor squeeze with a cushion", HipSides, Nothing, [Adductors], [], [Legs], harder: "lying-adduction"),
        Of("ball-squeeze", "Adductor squeeze with a ball", HipSides, Nothing, [Adductors], [Equipment.MedicineBall], [Legs], harder: "lying-adduction"),
        Of("band-adduction", "Hip adduction with a band", HipSides, Nothing, [Adductors], [Band], [Legs], easier: "lying-adduction", oneSided: true),
        Of("cable-adduction", "Cable hip adduction", HipSides, Stack, [Adductors], [Cable], [Legs], easier: "lying-adduction", oneSided: true),
        Of("sliding-adduction", "Sliding adduction", HipSides, Nothing, [Adductors], [Sliders], [Legs], easier: "lying-adduction", oneSided: true),
        Of("lying-abduction", "Hip abduction, lying on the side", HipSides, Nothing, [Abductors, Glutes], [], [Legs], easier: "clamshell", harder: "band-abduction", oneSided: true),
        Of("clamshell", "Clamshell", HipSides, Nothing, [Abductors, Glutes], [], [Legs], harder: "lying-abduction", oneSided: true),
        Of("band-clamshell", "Clamshell with a band", HipSides, Nothing, [Abductors, Glutes], [Band], [Legs], easier: "clamshell", oneSided: true),
        Of("band-abduction", "Hip abduction with a band, standing", HipSides, Nothing, [Abductors, Glutes], [Band], [Legs], easier: "lying-abduction", oneSided: true),
        Of("cable-abduction", "Cable hip abduction", HipSides, Stack, [Abductors, Glutes], [Cable], [Legs], easier: "lying-abduction", oneSided: true),
        Of("band-side-walk", "Sideways walk with a band", HipSides, Nothing, [Abductors, Glutes], [Band], [Legs], easier: "lying-abduction", oneSided: true),
        Of("raised-leg-side-plank", "Side plank with the top leg raised", HipSides, Nothing, [Abductors, Obliques], [], [Legs, Demand.Arms], easier: "lying-abduction", oneSided: true),
        Of("all-fours-abduction", "Hip abduction on all fours", HipSides, Nothing, [Abductors, Glutes], [], [Legs, Demand.Arms], easier: "clamshell", oneSided: true),
        Of("hip-hitch", "Hip hitch on a step", HipSides, Nothing, [Abductors], [Box], [Legs], oneSided: true),
        Of("band-hip-flexion", "Hip flexion with a band", HipSides, Nothing, [HipFlexors], [Band], [Legs], easier: "seated-leg-lift", oneSided: true),
        Of("seated-leg-lift", "Seated leg lift", HipSides, Nothing, [HipFlexors], [], [Legs], harder: "band-hip-flexion", oneSided: true),
        Of("band-hip-rotation", "Hip rotation with a band, seated", HipSides, Nothing, [Abductors, Adductors], [Band], [Legs], oneSided: true),
    ];
}
