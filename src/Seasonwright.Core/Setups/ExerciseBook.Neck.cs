using System.Collections.Immutable;
using static Seasonwright.Core.Seasons.Equipment;
using static Seasonwright.Core.Setups.Demand;
using static Seasonwright.Core.Setups.LoadedBy;
using static Seasonwright.Core.Setups.MovementPattern;
using static Seasonwright.Core.Setups.Muscle;

namespace Seasonwright.Core.Setups;

public static partial class ExerciseBook
{
    private static ImmutableArray<Exercise> NeckWork =>
    [
        Of("neck-hold-front", "Neck hold forwards against the hands", MovementPattern.Neck, Nothing, [Muscle.Neck], [], [Demand.Arms], easier: "head-lift-front"),
        Of("neck-hold-back", "Neck hold backwards against the hands", MovementPattern.Neck, Nothing, [Muscle.Neck], [], [Demand.Arms], easier: "head-lift-back"),
        Of("neck-hold-side", "Neck hold sideways against the hand", MovementPattern.Neck, Nothing, [Muscle.Neck], [], [Demand.Arms], easier: "head-lift-side", oneSided: true),
        Of("head-lift-front", "Head lift, lying on the back", MovementPattern.Neck, Nothing, [Muscle.Neck], [], [], easier: "chin-tuck"),
        Of("head-lift-back", "Head lift, lying on the front", MovementPattern.Neck, Nothing, [Muscle.Neck], [], [], easier: "chin-tuck"),
        Of("head-lift-side", "Head lift, lying on the side", MovementPattern.Neck, Nothing, [Muscle.Neck], [], [], easier: "chin-tuck", oneSided: true),
        Of("chin-tuck", "Chin tuck, lying", MovementPattern.Neck, Nothing, [Muscle.Neck], [], []),
        Of("ball-neck-hold", "Neck hold against a Swiss ball on a wall", MovementPattern.Neck, Nothing, [Muscle.Neck], [SwissBall], [Legs], easier: "chin-tuck"),
        Of("band-neck-hold", "Neck hold against a band", MovementPattern.Neck, Nothing, [Muscle.Neck], [Band], [], easier: "chin-tuck", oneSided: true),
        Of("partner-neck-hold", "Neck hold against a partner's hands", MovementPattern.Neck, Nothing, [Muscle.Neck], [Partner], [], easier: "chin-tuck", oneSided: true),
    ];
}
