using System.Collections.Immutable;
using static Seasonwright.Core.Seasons.Equipment;
using static Seasonwright.Core.Setups.Demand;
using static Seasonwright.Core.Setups.LoadedBy;
using static Seasonwright.Core.Setups.MovementPattern;
using static Seasonwright.Core.Setups.Muscle;

namespace Seasonwright.Core.Setups;

public static partial class ExerciseBook
{
    private static ImmutableArray<Exercise> LowerLegWork =>
    [
        Of("machine-calf-raise", "Standing calf raise on a machine", LowerLeg, Stack, [Calves], [CalfMachine], [Legs, Spine], easier: "calf-raise"),
        Of("seated-calf-raise", "Seated calf raise", LowerLeg, Stack, [Calves], [CalfMachine], [Legs], easier: "bent-knee-calf-raise"),
        Of("leg-press-calf-raise", "Calf press on the leg press", LowerLeg, Stack, [Calves], [LegPress], [Legs], easier: "calf-raise"),
        Of("calf-raise", "Calf raise on both legs", LowerLeg, Nothing, [Calves], [], [Legs], harder: "one-leg-calf-raise"),
        Of("one-leg-calf-raise", "Calf raise on one leg", LowerLeg, Nothing, [Calves], [], [Legs], easier: "calf-raise", harder: "dumbbell-calf-raise", oneSided: true),
        Of("dumbbell-calf-raise", "Calf raise on one leg with a dumbbell", LowerLeg, OneDumbbell, [Calves], [Dumbbells, Box], [Legs, Demand.Arms, Spine], easier: "one-leg-calf-raise", oneSided: true),
        Of("bent-knee-calf-raise", "Calf raise with the knees bent", LowerLeg, Nothing, [Calves], [], [Legs], harder: "seated-calf-raise"),
        Of("calf-hold", "Calf raise on one leg, held", LowerLeg, Nothing, [Calves], [], [Legs], easier: "calf-raise", oneSided: true),
        Of("calf-lower", "Calf lower, up on both and down on one", LowerLeg, Nothing, [Calves], [Box], [Legs], easier: "calf-raise", oneSided: true),
        Of("shin-raise", "Shin raise, back against a wall", LowerLeg, Nothing, [Shins], [], [Legs], harder: "band-shin-raise"),
        Of("band-shin-raise", "Shin raise with a band", LowerLeg, Nothing, [Shins], [Band], [Legs], easier: "shin-raise", oneSided: true),
        Of("band-ankle-out", "Ankle turned out against a band", LowerLeg, Nothing, [Shins, Feet], [Band], [Legs], oneSided: true),
        Of("band-ankle-in", "Ankle turned in against a band", LowerLeg, Nothing, [Shins, Feet], [Band], [Legs], oneSided: true),
        Of("short-foot", "Short foot", LowerLeg, Nothing, [Feet], [], [Legs], oneSided: true),
        Of("towel-toe-curl", "Toe curl on a towel", LowerLeg, Nothing, [Feet], [], [Legs], oneSided: true),
        Of("one-leg-stand", "Standing on one leg", LowerLeg, Nothing, [Feet, Calves], [], [Legs], harder: "one-leg-reach", oneSided: true),
        Of("one-leg-reach", "Reaching on one leg", LowerLeg, Nothing, [Feet, Calves, Glutes], [], [Legs], easier: "one-leg-stand", oneSided: true),
    ];
}
