using System.Collections.Immutable;
using static Seasonwright.Core.Seasons.Equipment;
using static Seasonwright.Core.Setups.Demand;
using static Seasonwright.Core.Setups.LoadedBy;
using static Seasonwright.Core.Setups.MovementPattern;
using static Seasonwright.Core.Setups.Muscle;

namespace Seasonwright.Core.Setups;

public static partial class ExerciseBook
{
    private static ImmutableArray<Exercise> Pulling =>
    [
        Of("bench-pull", "Bench pull", HorizontalPull, Bar, [UpperBack, Lats, Biceps], [Barbell, Bench], [Demand.Arms], easier: "chest-supported-row"),
        Of("bent-over-row", "Bent-over row", HorizontalPull, Bar, [UpperBack, Lats, LowerBack], [Barbell], [Legs, Demand.Arms, Spine], easier: "dumbbell-bent-over-row"),
        Of("dumbbell-bent-over-row", "Bent-over dumbbell row", HorizontalPull, TwoDumbbells, [UpperBack, Lats, LowerBack], [Dumbbells], [Legs, Demand.Arms, Spine], easier: "dumbbell-row", harder: "bent-over-row"),
        Of("dumbbell-row", "Dumbbell row, hand on a bench", HorizontalPull, OneDumbbell, [Lats, UpperBack, Biceps], [Dumbbells, Bench], [Legs, Demand.Arms], easier: "band-row", oneSided: true),
        Of("chest-supported-row", "Chest-supported dumbbell row", HorizontalPull, TwoDumbbells, [UpperBack, Lats, Biceps], [Dumbbells, Bench], [Demand.Arms], easier: "band-row", harder: "bench-pull"),
        Of("landmine-row", "Landmine row", HorizontalPull, Bar, [UpperBack, Lats, LowerBack], [Barbell, Landmine], [Legs, Demand.Arms, Spine], easier: "chest-supported-row"),
        Of("seated-cable-row", "Seated cable row", HorizontalPull, Stack, [UpperBack, Lats, Biceps], [Cable], [Demand.Arms], easier: "band-row"),
        Of("one-arm-cable-row", "Cable row, one arm", HorizontalPull, Stack, [Lats, UpperBack, Obliques], [Cable], [Demand.Arms], easier: "band-row", oneSided: true),
        Of("band-row", "Seated row with a band", HorizontalPull, Nothing, [UpperBack, Lats, Biceps], [Band], [Demand.Arms], harder: "chest-supported-row"),
        Of("inverted-row", "Inverted row", HorizontalPull, Nothing, [UpperBack, Lats, Biceps], [Barbell, Rack], [Demand.Arms], easier: "table-row", harder: "feet-raised-inverted-row"),
        Of("feet-raised-inverted-row", "Inverted row, feet raised", HorizontalPull, Nothing, [UpperBack, Lats, Biceps], [Barbell, Rack, Box], [Demand.Arms], easier: "inverted-row"),
        Of("strap-row", "Row in straps", HorizontalPull, Nothing, [UpperBack, Lats, Biceps], [Straps], [Demand.Arms], easier: "band-row", harder: "inverted-row"),
        Of("table-row", "Row under a sturdy table", HorizontalPull, Nothing, [UpperBack, Lats, Biceps], [], [Demand.Arms], easier: "towel-row", harder: "inverted-row"),
        Of("towel-row", "Seated row with a towel round the feet, held", HorizontalPull, Nothing, [UpperBack, Lats, Biceps], [], [Demand.Arms], harder: "table-row"),
        Of("plank-row", "Row in the press-up position", HorizontalPull, OneDumbbell, [UpperBack, Abdominals, Obliques], [Dumbbells], [Demand.Arms], easier: "band-row", oneSided: true),

        Of("pull-up", "Pull-up", VerticalPull, OnTheBody, [Lats, UpperBack, Biceps], [PullUpBar], [Overhead, Demand.Arms], easier: "band-pull-up"),
        Of("chin-up", "Chin-up", VerticalPull, OnTheBody, [Lats, Biceps, UpperBack], [PullUpBar], [Overhead, Demand.Arms], easier: "band-pull-up", maxOf: "pull-up", share: 105),
        Of("neutral-pull-up", "Pull-up, palms facing each other", VerticalPull, OnTheBody, [Lats, Biceps, UpperBack], [PullUpBar], [Overhead, Demand.Arms], easier: "band-pull-up", maxOf: "pull-up", share: 105),
        Of("band-pull-up", "Pull-up with a band's help", VerticalPull, Nothing, [Lats, UpperBack, Biceps], [PullUpBar, Band], [Overhead, Demand.Arms], easier: "lat-pull-down", harder: "pull-up"),
        Of("pull-up-lower", "Pull-up, lowering only", VerticalPull, Nothing, [Lats, UpperBack, Biceps], [PullUpBar, Box], [Overhead, Demand.Arms], easier: "lat-pull-down", harder: "pull-up"),
        Of("lat-pull-down", "Lat pull-down", VerticalPull, Stack, [Lats, Biceps, UpperBack], [Cable], [Overhead, Demand.Arms], easier: "band-pull-down", harder: "band-pull-up"),
        Of("one-arm-pull-down", "Pull-down, one arm", VerticalPull, Stack, [Lats, Biceps, Obliques], [Cable], [Overhead, Demand.Arms], easier: "band-pull-down", oneSided: true),
        Of("band-pull-down", "Pull-down with a band", VerticalPull, Nothing, [Lats, Biceps, UpperBack], [Band], [Overhead, Demand.Arms], easier: "towel-pull-down", harder: "lat-pull-down"),
        Of("straight-arm-pull-down", "Straight-arm pull-down, from shoulder height", VerticalPull, Stack, [Lats, UpperBack], [Cable], [Demand.Arms], easier: "band-straight-arm-pull"),
        Of("band-straight-arm-pull", "Straight-arm pull with a band, from shoulder height", VerticalPull, Nothing, [Lats, UpperBack], [Band], [Demand.Arms], harder: "straight-arm-pull-down"),
        Of("dumbbell-pullover", "Dumbbell pullover", VerticalPull, OneDumbbell, [Lats, Chest, Triceps], [Dumbbells, Bench], [Overhead, Demand.Arms], easier: "band-pull-down"),
        Of("towel-pull-down", "Prone pull-down with a towel", VerticalPull, Nothing, [Lats, UpperBack], [], [Overhead, Demand.Arms], harder: "band-pull-down"),
    ];
}
