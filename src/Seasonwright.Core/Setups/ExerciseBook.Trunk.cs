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
    private static ImmutableArray<Exercise> TrunkWork =>
    [
        Of("plank", "Plank on the forearms", Trunk, Nothing, [Abdominals, Obliques], [], [Demand.Arms], easier: "knee-plank", harder: "reaching-plank"),
        Of("knee-plank", "Plank on the knees", Trunk, Nothing, [Abdominals, Obliques], [], [Demand.Arms], harder: "plank"),
        Of("reaching-plank", "Plank with an arm reached forwards", Trunk, Nothing, [Abdominals, Obliques], [], [Demand.Arms], easier: "plank", oneSided: true),
        Of("side-plank", "Side plank", Trunk, Nothing, [Obliques, Abdominals, Abductors], [], [Demand.Arms], easier: "knee-side-plank", oneSided: true),
        Of("knee-side-plank", "Side plank on the knees", Trunk, Nothing, [Obliques, Abdominals], [], [Demand.Arms], harder: "side-plank", oneSided: true),
        Of("body-saw", "Body saw in straps", Trunk, Nothing, [Abdominals, Obliques], [Straps], [Demand.Arms], easier: "plank"),
        Of("ball-stir", "Stirring on a Swiss ball", Trunk, Nothing, [Abdominals, Obliques], [SwissBall], [Demand.Arms], easier: "plank"),
        Of("roll-out", "Roll-out from the knees", Trunk, Nothing, [Abdominals, Lats], [Wheel], [Overhead, Demand.Arms], easier: "ball-roll-out"),
        Of("ball-roll-out", "Roll-out on a Swiss ball", Trunk, Nothing, [Abdominals, Lats], [SwissBall], [Overhead, Demand.Arms], easier: "plank", harder: "roll-out"),
        Of("dead-bug", "Dead bug", Trunk, Nothing, [Abdominals, HipFlexors], [], [Legs], easier: "heel-taps"),
        Of("heel-taps", "Heel taps, lying on the back", Trunk, Nothing, [Abdominals, HipFlexors], [], [Legs], harder: "dead-bug"),
        Of("bird-dog", "Bird dog", Trunk, Nothing, [LowerBack, Glutes, Abdominals], [], [Legs, Demand.Arms]),
        Of("back-raise", "Back raise, lying on the front", Trunk, Nothing, [LowerBack], [], [], harder: "back-extension-hold"),
        Of("back-extension-hold", "Back extension, held", Trunk, Nothing, [LowerBack, Glutes], [BackExtension], [Legs], easier: "back-raise"),
        Of("curl-up", "Curl-up with one knee bent", Trunk, Nothing, [Abdominals], [], [], harder: "crunch"),
        Of("crunch", "Crunch", Trunk, Nothing, [Abdominals], [], [], easier: "curl-up", harder: "ball-crunch"),
        Of("ball-crunch", "Crunch on a Swiss ball", Trunk, Nothing, [Abdominals], [SwissBall], [Legs], easier: "crunch"),
        Of("sit-up", "Sit-up", Trunk, Nothing, [Abdominals, HipFlexors], [], [Legs], easier: "crunch"),
        Of("reverse-crunch", "Reverse crunch", Trunk, Nothing, [Abdominals, HipFlexors], [], [Legs], harder: "lying-leg-raise"),
        Of("lying-leg-raise", "Leg raise, lying on the back", Trunk, Nothing, [Abdominals, HipFlexors], [], [Legs], easier: "reverse-crunch", harder: "hanging-knee-raise"),
        Of("hanging-knee-raise", "Hanging knee raise", Trunk, Nothing, [Abdominals, HipFlexors], [PullUpBar], [Overhead, Legs, Demand.Arms], easier: "lying-leg-raise", harder: "hanging-leg-raise"),
        Of("hanging-leg-raise", "Hanging leg raise", Trunk, Nothing, [Abdominals, HipFlexors], [PullUpBar], [Overhead, Legs, Demand.Arms], easier: "hanging-knee-raise"),
        Of("hollow-hold", "Hollow hold", Trunk, Nothing, [Abdominals, HipFlexors], [], [Legs], easier: "heel-taps"),
        Of("bear-hold", "Bear hold", Trunk, Nothing, [Abdominals, Quadriceps, Shoulders], [], [Legs, Demand.Arms], harder: "bear-crawl"),
        Of("bear-crawl", "Bear crawl", Trunk, Nothing, [Abdominals, Shoulders, Quadriceps], [], [Legs, Demand.Arms], easier: "bear-hold"),
        Of("side-bend", "Side bend with a dumbbell", Trunk, OneDumbbell, [Obliques], [Dumbbells], [Legs, Demand.Arms, Spine], easier: "knee-side-plank", oneSided: true),
        Of("get-up", "Get-up with a kettlebell", Trunk, LoadedBy.Kettlebell, [Abdominals, Shoulders, Obliques], [Equipment.Kettlebell], [DeepKnee, Overhead, Legs, Demand.Arms, Spine], easier: "side-plank", oneSided: true),

        Of("anti-rotation-press", "Anti-rotation press", Rotation, Stack, [Obliques, Abdominals], [Cable], [Demand.Arms], easier: "band-anti-rotation-press", oneSided: true),
        Of("band-anti-rotation-press", "Anti-rotation press with a band", Rotation, Nothing, [Obliques, Abdominals], [Band], [Demand.Arms], easier: "seated-twist", oneSided: true),
        Of("cable-chop", "Cable chop, high to low", Rotation, Stack, [Obliques, Abdominals, Shoulders], [Cable], [Overhead, Legs, Demand.Arms], easier: "band-rotation", oneSided: true),
        Of("cable-lift", "Cable lift, low to high", Rotation, Stack, [Obliques, Abdominals, Shoulders], [Cable], [Overhead, Legs, Demand.Arms], easier: "band-rotation", oneSided: true),
        Of("cable-rotation", "Cable rotation, standing", Rotation, Stack, [Obliques, Abdominals], [Cable], [Legs, Demand.Arms], easier: "band-rotation", oneSided: true),
        Of("band-rotation", "Trunk rotation with a band", Rotation, Nothing, [Obliques, Abdominals], [Band], [Demand.Arms], easier: "seated-twist", harder: "cable-rotation", oneSided: true),
        Of("landmine-rotation", "Landmine rotation", Rotation, Bar, [Obliques, Shoulders, Abdominals], [Barbell, Landmine], [Legs, Demand.Arms], easier: "band-rotation"),
        Of("seated-twist", "Seated trunk twist", Rotation, Nothing, [Obliques, Abdominals], [], [], harder: "ball-seated-twist"),
        Of("ball-seated-twist", "Seated trunk twist with a medicine ball", Rotation, LoadedBy.MedicineBall, [Obliques, Abdominals], [Equipment.MedicineBall], [Demand.Arms], easier: "seated-twist"),
        Of("lying-knee-twist", "Knees from side to side, lying on the back", Rotation, Nothing, [Obliques, Abdominals], [], [Legs]),
        Of("side-plank-rotation", "Side plank with rotation", Rotation, Nothing, [Obliques, Abdominals, Shoulders], [], [Demand.Arms], easier: "seated-twist", oneSided: true),
        Of("ball-rotation", "Trunk rotation on a Swiss ball", Rotation, Nothing, [Obliques, Abdominals, Glutes], [SwissBall], [Legs, Demand.Arms], easier: "seated-twist"),
    ];
}
