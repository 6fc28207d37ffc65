using System.Collections.Immutable;
using static Seasonwright.Core.Seasons.Equipment;
using static Seasonwright.Core.Setups.Demand;
using static Seasonwright.Core.Setups.LoadedBy;
using static Seasonwright.Core.Setups.MovementPattern;
using static Seasonwright.Core.Setups.Muscle;

namespace Seasonwright.Core.Setups;

public static partial class ExerciseBook
{
    private static ImmutableArray<Exercise> BendingKnees =>
    [
        Of("nordic-lower", "Nordic hamstring lower", KneeFlexion, Nothing, [Hamstrings], [Partner], [Legs, Demand.Arms], easier: "band-nordic-lower"),
        Of("bench-nordic-lower", "Nordic hamstring lower, feet under a pad", KneeFlexion, Nothing, [Hamstrings], [BackExtension], [Legs, Demand.Arms], easier: "sliding-leg-lower"),
        Of("band-nordic-lower", "Nordic hamstring lower, held by a band", KneeFlexion, Nothing, [Hamstrings], [Band, Partner], [Legs, Demand.Arms], easier: "sliding-leg-lower", harder: "nordic-lower"),
        Of("glute-ham-raise", "Glute-ham raise", KneeFlexion, Nothing, [Hamstrings, Glutes], [BackExtension], [Legs], easier: "hamstring-walkout"),
        Of("lying-leg-curl", "Lying leg curl", KneeFlexion, Stack, [Hamstrings], [LegCurl], [DeepKnee, Legs], easier: "short-leg-curl", harder: "slow-leg-curl"),
        Of("short-leg-curl", "Leg curl, not past 90 degrees", KneeFlexion, Stack, [Hamstrings], [LegCurl], [Legs], harder: "lying-leg-curl"),
        Of("seated-leg-curl", "Seated leg curl", KneeFlexion, Stack, [Hamstrings], [LegCurl], [DeepKnee, Legs], easier: "short-leg-curl"),
        Of("one-leg-curl", "Leg curl, one leg", KneeFlexion, Stack, [Hamstrings], [LegCurl], [DeepKnee, Legs], easier: "short-leg-curl", oneSided: true),
        Of("slow-leg-curl", "Leg curl, up with both and down with one", KneeFlexion, Stack, [Hamstrings], [LegCurl], [DeepKnee, Legs], easier: "lying-leg-curl", oneSided: true),
        Of("sliding-leg-curl", "Sliding leg curl", KneeFlexion, Nothing, [Hamstrings, Glutes], [Sliders], [DeepKnee, Legs], easier: "sliding-leg-lower", harder: "one-leg-sliding-curl"),
        Of("sliding-leg-lower", "Sliding leg lower", KneeFlexion, Nothing, [Hamstrings, Glutes], [Sliders], [Legs], easier: "hamstring-walkout", harder: "sliding-leg-curl"),
        Of("one-leg-sliding-curl", "Sliding leg curl, one leg", KneeFlexion, Nothing, [Hamstrings, Glutes], [Sliders], [DeepKnee, Legs], easier: "sliding-leg-curl", oneSided: true),
        Of("ball-leg-curl", "Swiss-ball leg curl", KneeFlexion, Nothing, [Hamstrings, Glutes], [SwissBall], [DeepKnee, Legs], easier: "hamstring-walkout", harder: "one-leg-ball-curl"),
        Of("one-leg-ball-curl", "Swiss-ball leg curl, one leg", KneeFlexion, Nothing, [Hamstrings, Glutes], [SwissBall], [DeepKnee, Legs], easier: "ball-leg-curl", oneSided: true),
        Of("strap-leg-curl", "Leg curl in straps", KneeFlexion, Nothing, [Hamstrings, Glutes], [Straps], [DeepKnee, Legs], easier: "hamstring-walkout"),
        Of("band-leg-curl", "Leg curl with a band", KneeFlexion, Nothing, [Hamstrings], [Band], [DeepKnee, Legs], easier: "long-bridge-hold"),
        Of("hamstring-walkout", "Hamstring walkout", KneeFlexion, Nothing, [Hamstrings, Glutes], [], [Legs], easier: "long-bridge-hold"),
        Of("long-bridge-hold", "Long bridge hold", KneeFlexion, Nothing, [Hamstrings, Glutes], [], [Legs], harder: "one-leg-long-bridge"),
        Of("one-leg-long-bridge", "Long bridge hold on one leg", KneeFlexion, Nothing, [Hamstrings, Glutes], [], [Legs], easier: "long-bridge-hold", oneSided: true),
    ];
}
