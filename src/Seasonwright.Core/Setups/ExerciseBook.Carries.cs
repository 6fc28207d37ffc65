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
    private static ImmutableArray<Exercise> Carrying =>
    [
        Of("farmer-carry", "Farmer's carry", Carry, TwoDumbbells, [Forearms, UpperBack, Obliques], [Dumbbells], [Legs, Demand.Arms, Spine]),
        Of("trap-bar-carry", "Trap-bar carry", Carry, Bar, [Forearms, UpperBack, Glutes], [TrapBar], [Legs, Demand.Arms, Spine], easier: "farmer-carry"),
        Of("suitcase-carry", "Suitcase carry", Carry, OneDumbbell, [Obliques, Forearms, UpperBack], [Dumbbells], [Legs, Demand.Arms, Spine], oneSided: true),
        Of("front-carry", "Carry in front of the chest", Carry, LoadedBy.Kettlebell, [Abdominals, UpperBack], [Equipment.Kettlebell], [Legs, Demand.Arms, Spine], easier: "ball-carry"),
        Of("ball-carry", "Carry of a medicine ball in both arms", Carry, LoadedBy.MedicineBall, [Abdominals, UpperBack, Biceps], [Equipment.MedicineBall], [Legs, Demand.Arms, Spine], harder: "front-carry"),
        Of("overhead-carry", "Overhead carry, one arm", Carry, OneDumbbell, [Shoulders, Obliques, UpperBack], [Dumbbells], [Overhead, Legs, Demand.Arms, Spine], easier: "suitcase-carry", oneSided: true),
        Of("bottom-up-carry", "Carry of a kettlebell held bottom up", Carry, LoadedBy.Kettlebell, [RotatorCuff, Shoulders, Forearms], [Equipment.Kettlebell], [Legs, Demand.Arms, Spine], oneSided: true),
        Of("partner-carry", "Carry of a partner on the back", Carry, Nothing, [Quadriceps, Glutes, Abdominals], [Partner], [Contact, Legs, Demand.Arms, Spine], easier: "ball-carry"),
    ];
}
