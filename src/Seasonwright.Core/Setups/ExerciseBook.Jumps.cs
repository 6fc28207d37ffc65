using System.Collections.Immutable;
using static Seasonwright.Core.Seasons.Equipment;
using static Seasonwright.Core.Setups.Demand;
using static Seasonwright.Core.Setups.LoadedBy;
using static Seasonwright.Core.Setups.MovementPattern;
using static Seasonwright.Core.Setups.Muscle;

namespace Seasonwright.Core.Setups;

public static partial class ExerciseBook
{
    private static ImmutableArray<Exercise> Jumping =>
    [
        Of("pogo-jump", "Pogo jump", MovementPattern.Jump, Nothing, [Calves, Feet], [], [Demand.Jump, Legs], harder: "tuck-jump", contacts: 1),
        Of("held-landing", "Jump with a held landing", MovementPattern.Jump, Nothing, [Quadriceps, Glutes, Calves], [], [Demand.Jump, Legs], harder: "countermovement-jump", contacts: 1),
        Of("countermovement-jump", "Countermovement jump", MovementPattern.Jump, Nothing, [Quadriceps, Glutes, Calves], [], [Demand.Jump, Legs], easier: "held-landing", harder: "tuck-jump", contacts: 1),
        Of("squat-jump", "Squat jump from a standstill", MovementPattern.Jump, Nothing, [Quadriceps, Glutes, Calves], [], [Demand.Jump, Legs], easier: "held-landing", contacts: 1),
        Of("tuck-jump", "Tuck jump", MovementPattern.Jump, Nothing, [Quadriceps, Calves, HipFlexors], [], [Demand.Jump, Legs], easier: "countermovement-jump", contacts: 1),
        Of("split-jump", "Split jump", MovementPattern.Jump, Nothing, [Quadriceps, Glutes, Calves], [], [DeepKnee, Demand.Jump, Legs], easier: "countermovement-jump", contacts: 1),
        Of("line-jumps", "Jumps over a line, both feet", MovementPattern.Jump, Nothing, [Calves, Quadriceps], [], [Demand.Jump, ChangeOfDirection, Legs], easier: "pogo-jump", contacts: 1),
        Of("turning-jump", "Jump with a half turn", MovementPattern.Jump, Nothing, [Quadriceps, Glutes, Calves], [], [Demand.Jump, ChangeOfDirection, Legs], easier: "countermovement-jump", contacts: 1),
        Of("long-jump", "Standing long jump", MovementPattern.Jump, Nothing, [Glutes, Quadriceps, Hamstrings], [], [Demand.Jump, Legs], easier: "held-landing", harder: "long-jumps", contacts: 1),
        Of("long-jumps", "Standing long jumps in a row", MovementPattern.Jump, Nothing, [Glutes, Quadriceps, Hamstrings], [Track], [Demand.Jump, Legs], easier: "long-jump", contacts: 1),
        Of("triple-jump", "Standing triple jump", MovementPattern.Jump, Nothing, [Glutes, Quadriceps, Calves], [Track], [Demand.Jump, Legs], easier: "long-jump", contacts: 3),
        Of("box-jump", "Box jump", MovementPattern.Jump, Nothing, [Quadriceps, Glutes, Calves], [Box], [Demand.Jump, Legs], easier: "held-landing", harder: "countermovement-jump", contacts: 1),
        Of("seated-box-jump", "Box jump from sitting", MovementPattern.Jump, Nothing, [Quadriceps, Glutes, Calves], [Box, Bench], [Demand.Jump, Legs], easier: "held-landing", contacts: 1),
        Of("one-leg-box-jump", "Box jump off one leg", MovementPattern.Jump, Nothing, [Quadriceps, Glutes, Calves], [Box], [Demand.Jump, Legs], easier: "box-jump", oneSided: true, contacts: 1),
        Of("drop-landing", "Drop landing", MovementPattern.Jump, Nothing, [Quadriceps, Glutes, Calves], [Box], [Demand.Jump, Legs], harder: "drop-jump", contacts: 1),
        Of("drop-jump", "Drop jump", MovementPattern.Jump, Nothing, [Calves, Quadriceps, Glutes], [Box], [Demand.Jump, Legs], easier: "drop-landing", contacts: 2),
        Of("hurdle-jumps", "Hurdle jumps", MovementPattern.Jump, Nothing, [Calves, Quadriceps, Glutes], [Hurdles], [Demand.Jump, Legs], easier: "pogo-jump", contacts: 1),
        Of("one-leg-hurdle-hops", "Hops over low hurdles, one leg", MovementPattern.Jump, Nothing, [Calves, Quadriceps, Glutes], [Hurdles], [Demand.Jump, Legs], easier: "hop-in-place", oneSided: true, contacts: 1),
        Of("hop-in-place", "Hop on the spot, one leg", MovementPattern.Jump, Nothing, [Calves, Feet], [], [Demand.Jump, Legs], easier: "pogo-jump", oneSided: true, contacts: 1),
        Of("held-hop", "Hop forwards, one leg, held landing", MovementPattern.Jump, Nothing, [Quadriceps, Glutes, Calves], [], [Demand.Jump, Legs], easier: "held-landing", harder: "triple-hop", oneSided: true, contacts: 1),
        Of("triple-hop", "Three hops forwards on one leg", MovementPattern.Jump, Nothing, [Glutes, Quadriceps, Calves], [Track], [Demand.Jump, Legs], easier: "held-hop", oneSided: true, contacts: 3),
        Of("side-hop", "Hop sideways, one leg", MovementPattern.Jump, Nothing, [Abductors, Quadriceps, Calves], [], [Demand.Jump, ChangeOfDirection, Legs], easier: "held-side-bound", oneSided: true, contacts: 1),
        Of("held-side-bound", "Sideways bound, held landing", MovementPattern.Jump, Nothing, [Abductors, Glutes, Quadriceps], [], [Demand.Jump, ChangeOfDirection, Legs], harder: "side-bounds", oneSided: true, contacts: 1),
        Of("side-bounds", "Bounds from side to side", MovementPattern.Jump, Nothing, [Abductors, Glutes, Quadriceps], [], [Demand.Jump, ChangeOfDirection, Legs], easier: "held-side-bound", contacts: 1),
        Of("bounds", "Bounding", MovementPattern.Jump, Nothing, [Glutes, Hamstrings, Calves], [Track], [Demand.Jump, Legs], easier: "high-skips", contacts: 1),
        Of("high-skips", "Skips for height", MovementPattern.Jump, Nothing, [Calves, Glutes, HipFlexors], [Track], [Demand.Jump, Legs], harder: "bounds", contacts: 1),
        Of("run-up-jump", "Jump off one leg with a run-up", MovementPattern.Jump, Nothing, [Quadriceps, Glutes, Calves], [Track], [Demand.Jump, Legs], easier: "high-skips", oneSided: true, contacts: 1),
        Of("dumbbell-jump", "Jump with dumbbells", MovementPattern.Jump, TwoDumbbells, [Quadriceps, Glutes, Calves], [Dumbbells], [Demand.Jump, Legs, Demand.Arms, Spine], easier: "countermovement-jump", contacts: 1),
        Of("trap-bar-jump", "Trap-bar jump", MovementPattern.Jump, Bar, [Quadriceps, Glutes, Calves], [TrapBar], [Demand.Jump, Legs, Demand.Arms, Spine], easier: "countermovement-jump", contacts: 1),
        Of("bar-jump", "Jump squat with a bar", MovementPattern.Jump, Bar, [Quadriceps, Glutes, Calves], [Barbell, Rack], [Demand.Jump, Legs, Demand.Arms, Spine], easier: "dumbbell-jump", contacts: 1),
        Of("band-helped-jump", "Jump helped by a band", MovementPattern.Jump, Nothing, [Quadriceps, Glutes, Calves], [Band, Rack], [Demand.Jump, Legs, Demand.Arms], easier: "countermovement-jump", contacts: 1),
    ];
}
