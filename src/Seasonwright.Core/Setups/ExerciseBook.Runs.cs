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
    private static ImmutableArray<Exercise> Running =>
    [
        Of("brisk-walk", "Brisk walk", Run, Nothing, [Calves, Glutes], [], [Legs], harder: "easy-run"),
        Of("easy-run", "Easy run", Run, Nothing, [Calves, Quadriceps, Glutes], [Track], [Legs], easier: "brisk-walk", harder: "tempo-run"),
        Of("tempo-run", "Tempo run", Run, Nothing, [Calves, Quadriceps, Glutes], [Track], [Legs], easier: "easy-run"),
        Of("long-intervals", "Long intervals", Run, Nothing, [Quadriceps, Calves, Glutes], [Track], [Legs], easier: "tempo-run"),
        Of("short-intervals", "Short intervals", Run, Nothing, [Quadriceps, Hamstrings, Calves], [Track], [Sprint, Legs], easier: "long-intervals", harder: "repeated-sprints"),
        Of("shuttle-intervals", "Intervals with turns", Run, Nothing, [Quadriceps, Glutes, Adductors], [Track], [Sprint, ChangeOfDirection, Legs], easier: "long-intervals"),
        Of("changing-pace-run", "Run with changes of pace", Run, Nothing, [Quadriceps, Hamstrings, Calves], [Track], [Sprint, Legs], easier: "tempo-run"),
        Of("build-up-runs", "Build-up runs", Run, Nothing, [Hamstrings, Glutes, Calves], [Track], [Sprint, Legs], easier: "sprint-march", harder: "flying-sprint"),
        Of("acceleration", "Acceleration from a standing start", Run, Nothing, [Glutes, Quadriceps, Calves], [Track], [Sprint, Legs], easier: "hill-sprint"),
        Of("falling-start", "Acceleration from a falling start", Run, Nothing, [Glutes, Quadriceps, Calves], [Track], [Sprint, Legs], easier: "hill-sprint"),
        Of("hill-sprint", "Sprint uphill", Run, Nothing, [Glutes, Quadriceps, Calves], [Track], [Sprint, Legs], easier: "sprint-march", harder: "acceleration"),
        Of("flying-sprint", "Flying sprint", Run, Nothing, [Hamstrings, Glutes, Calves], [Track], [Sprint, Legs], easier: "build-up-runs"),
        Of("curved-sprint", "Curved sprint", Run, Nothing, [Hamstrings, Glutes, Adductors], [Track], [Sprint, ChangeOfDirection, Legs], easier: "build-up-runs"),
        Of("sled-sprint", "Sprint with a sled", Run, LoadedBy.Sled, [Glutes, Quadriceps, Calves], [Equipment.Sled, Track], [Sprint, Legs], easier: "sprint-march"),
        Of("chase-sprint", "Chase against a partner", Run, Nothing, [Glutes, Hamstrings, Quadriceps], [Track, Partner], [Sprint, Legs], easier: "acceleration"),
        Of("repeated-sprints", "Repeated sprints", Run, Nothing, [Hamstrings, Quadriceps, Glutes], [Track], [Sprint, Legs], easier: "short-intervals"),
        Of("repeated-turn-sprints", "Repeated sprints with turns", Run, Nothing, [Quadriceps, Hamstrings, Adductors], [Track], [Sprint, ChangeOfDirection, Legs], easier: "shuttle-intervals"),
        Of("sprint-and-stop", "Sprint and stop", Run, Nothing, [Quadriceps, Glutes, Hamstrings], [Track], [Sprint, ChangeOfDirection, Legs], easier: "slow-stop"),
        Of("slow-stop", "Stop from an easy run", Run, Nothing, [Quadriceps, Glutes, Hamstrings], [Track], [ChangeOfDirection, Legs], harder: "sprint-and-stop"),
        Of("cut-45", "Cut of 45 degrees", Run, Nothing, [Quadriceps, Abductors, Adductors], [Track], [ChangeOfDirection, Legs], easier: "side-shuffle", harder: "cut-90"),
        Of("cut-90", "Cut of 90 degrees", Run, Nothing, [Quadriceps, Abductors, Adductors], [Track], [ChangeOfDirection, Legs], easier: "cut-45", harder: "turn-180"),
        Of("turn-180", "Turn of 180 degrees", Run, Nothing, [Quadriceps, Glutes, Adductors], [Track], [ChangeOfDirection, Legs], easier: "cut-90"),
        Of("side-shuffle", "Side shuffle", Run, Nothing, [Abductors, Adductors, Quadriceps], [Track], [ChangeOfDirection, Legs], harder: "defence-steps"),
        Of("defence-steps", "Defence steps, sideways and forwards", Run, Nothing, [Quadriceps, Abductors, Adductors], [Track], [ChangeOfDirection, Legs], easier: "side-shuffle"),
        Of("mirror-steps", "Following a partner's steps", Run, Nothing, [Quadriceps, Abductors, Adductors], [Track, Partner], [Sprint, ChangeOfDirection, Legs], easier: "defence-steps"),
        Of("backward-run", "Backward run", Run, Nothing, [Quadriceps, Calves], [Track], [Legs], easier: "brisk-walk"),
        Of("down-and-up-run", "Runs with going down and getting up", Run, Nothing, [Quadriceps, Abdominals, Chest], [Track], [Sprint, ChangeOfDirection, Contact, Legs, Demand.Arms], easier: "shuttle-intervals"),
        Of("sprint-march", "Sprint drill: march", Run, Nothing, [HipFlexors, Glutes, Calves], [Track], [Legs], harder: "sprint-skip"),
        Of("sprint-skip", "Sprint drill: skip", Run, Nothing, [HipFlexors, Glutes, Calves], [Track], [Demand.Jump, Legs], easier: "sprint-march", contacts: 1),
    ];
}
