using System.Collections.Immutable;
using static Seasonwright.Core.Seasons.Equipment;
using static Seasonwright.Core.Setups.Demand;
using static Seasonwright.Core.Setups.LoadedBy;
using static Seasonwright.Core.Setups.MovementPattern;
using static Seasonwright.Core.Setups.Muscle;

namespace Seasonwright.Core.Setups;

public static partial class ExerciseBook
{
    private static ImmutableArray<Exercise> ArmWork =>
    [
        Of("dumbbell-curl", "Dumbbell curl", MovementPattern.Arms, TwoDumbbells, [Biceps, Forearms], [Dumbbells], [Demand.Arms], easier: "band-curl"),
        Of("hammer-curl", "Hammer curl", MovementPattern.Arms, TwoDumbbells, [Biceps, Forearms], [Dumbbells], [Demand.Arms], easier: "band-curl"),
        Of("incline-curl", "Incline dumbbell curl", MovementPattern.Arms, TwoDumbbells, [Biceps, Forearms], [Dumbbells, Bench], [Demand.Arms], easier: "dumbbell-curl"),
        Of("barbell-curl", "Barbell curl", MovementPattern.Arms, Bar, [Biceps, Forearms], [Barbell], [Legs, Demand.Arms, Spine], easier: "dumbbell-curl"),
        Of("band-curl", "Curl with a band", MovementPattern.Arms, Nothing, [Biceps, Forearms], [Band], [Demand.Arms], harder: "dumbbell-curl"),
        Of("triceps-push-down", "Triceps push-down", MovementPattern.Arms, Stack, [Triceps], [Cable], [Demand.Arms], easier: "band-triceps"),
        Of("overhead-triceps-extension", "Overhead triceps extension", MovementPattern.Arms, OneDumbbell, [Triceps], [Dumbbells], [Overhead, Demand.Arms], easier: "band-triceps"),
        Of("lying-triceps-extension", "Lying triceps extension", MovementPattern.Arms, Bar, [Triceps], [Barbell, Bench], [Demand.Arms], easier: "band-triceps"),
        Of("band-triceps", "Triceps push-down with a band", MovementPattern.Arms, Nothing, [Triceps], [Band], [Demand.Arms], harder: "triceps-push-down"),
        Of("close-press-up", "Press-up, hands close together", MovementPattern.Arms, Nothing, [Triceps, Chest], [], [Demand.Arms], easier: "close-knee-press-up"),
        Of("close-knee-press-up", "Press-up on the knees, hands close together", MovementPattern.Arms, Nothing, [Triceps, Chest], [], [Demand.Arms], harder: "close-press-up"),
        Of("bench-dip", "Dip between benches", MovementPattern.Arms, Nothing, [Triceps, Chest], [Bench], [Demand.Arms], easier: "close-knee-press-up"),
        Of("wrist-curl", "Wrist curl", MovementPattern.Arms, OneDumbbell, [Forearms], [Dumbbells], [Demand.Arms], oneSided: true),
        Of("reverse-wrist-curl", "Reverse wrist curl", MovementPattern.Arms, OneDumbbell, [Forearms], [Dumbbells], [Demand.Arms], oneSided: true),
        Of("forearm-turn", "Forearm turn", MovementPattern.Arms, OneDumbbell, [Forearms], [Dumbbells], [Demand.Arms], oneSided: true),
        Of("finger-opening", "Opening the fingers against a band", MovementPattern.Arms, Nothing, [Forearms], [Band], [Demand.Arms]),
        Of("hang", "Hang from a bar", MovementPattern.Arms, Nothing, [Forearms, Lats], [PullUpBar], [Overhead, Demand.Arms], harder: "towel-hang"),
        Of("towel-hang", "Hang from a towel", MovementPattern.Arms, Nothing, [Forearms, Lats], [PullUpBar], [Overhead, Demand.Arms], easier: "hang"),
    ];
}
