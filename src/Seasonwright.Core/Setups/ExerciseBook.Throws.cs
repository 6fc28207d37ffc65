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
    private static ImmutableArray<Exercise> Throwing =>
    [
        Of("chest-pass", "Chest pass with a medicine ball", Throw, LoadedBy.MedicineBall, [Chest, Triceps, Shoulders], [Equipment.MedicineBall], [Demand.Arms], harder: "stepping-chest-pass"),
        Of("stepping-chest-pass", "Chest pass with a step", Throw, LoadedBy.MedicineBall, [Chest, Triceps, Quadriceps], [Equipment.MedicineBall], [Legs, Demand.Arms], easier: "chest-pass"),
        Of("lying-chest-throw", "Chest throw, lying on the back", Throw, LoadedBy.MedicineBall, [Chest, Triceps], [Equipment.MedicineBall], [Demand.Arms]),
        Of("overhead-throw", "Overhead throw", Throw, LoadedBy.MedicineBall, [Lats, Abdominals, Triceps], [Equipment.MedicineBall], [Overhead, Demand.Arms], easier: "chest-pass"),
        Of("stepping-overhead-throw", "Overhead throw with a step", Throw, LoadedBy.MedicineBall, [Lats, Abdominals, Quadriceps], [Equipment.MedicineBall], [Overhead, Legs, Demand.Arms], easier: "overhead-throw", oneSided: true),
        Of("one-arm-throw", "One-arm throw of a light ball", Throw, LoadedBy.MedicineBall, [Shoulders, Obliques, RotatorCuff], [Equipment.MedicineBall], [Overhead, Demand.Arms], easier: "overhead-throw", oneSided: true),
        Of("clap-press-up", "Press-up with a clap", Throw, Nothing, [Chest, Triceps, Shoulders], [], [Demand.Arms]),
        Of("ball-slam", "Ball slam", Throw, LoadedBy.MedicineBall, [Lats, Abdominals, Shoulders], [Equipment.MedicineBall], [Overhead, Legs, Demand.Arms], easier: "chest-pass"),
        Of("sideways-throw", "Sideways throw", Throw, LoadedBy.MedicineBall, [Obliques, Glutes, Shoulders], [Equipment.MedicineBall], [Legs, Demand.Arms], easier: "seated-sideways-throw", oneSided: true),
        Of("seated-sideways-throw", "Sideways throw, seated", Throw, LoadedBy.MedicineBall, [Obliques, Abdominals], [Equipment.MedicineBall], [Demand.Arms], harder: "sideways-throw", oneSided: true),
        Of("scoop-throw", "Scoop throw forwards", Throw, LoadedBy.MedicineBall, [Glutes, Quadriceps, Shoulders], [Equipment.MedicineBall], [Legs, Demand.Arms], easier: "chest-pass"),
        Of("backward-throw", "Backward throw over the head", Throw, LoadedBy.MedicineBall, [Glutes, Quadriceps, LowerBack], [Equipment.MedicineBall], [Overhead, Legs, Demand.Arms], easier: "scoop-throw"),
        Of("squat-throw", "Throw upwards out of a squat", Throw, LoadedBy.MedicineBall, [Quadriceps, Glutes, Shoulders], [Equipment.MedicineBall], [Overhead, Demand.Jump, Legs, Demand.Arms], easier: "scoop-throw", contacts: 1),
    ];
}
