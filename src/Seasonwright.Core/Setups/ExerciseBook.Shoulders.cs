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
    private static ImmutableArray<Exercise> ShoulderWork =>
    [
        Of("external-rotation", "External rotation with a band, elbow at the side", Shoulder, Nothing, [RotatorCuff], [Band], [Demand.Arms], harder: "raised-external-rotation", oneSided: true),
        Of("raised-external-rotation", "External rotation with a band, arm raised", Shoulder, Nothing, [RotatorCuff, UpperBack], [Band], [Overhead, Demand.Arms], easier: "external-rotation", harder: "slow-external-rotation", oneSided: true),
        Of("slow-external-rotation", "External rotation with a band, arm raised, lowering only", Shoulder, Nothing, [RotatorCuff, UpperBack], [Band], [Overhead, Demand.Arms], easier: "raised-external-rotation", oneSided: true),
        Of("lying-external-rotation", "External rotation, lying on the side", Shoulder, OneDumbbell, [RotatorCuff], [Dumbbells], [Demand.Arms], easier: "external-rotation", oneSided: true),
        Of("held-external-rotation", "External rotation held against a wall", Shoulder, Nothing, [RotatorCuff], [], [Demand.Arms], harder: "external-rotation", oneSided: true),
        Of("internal-rotation", "Internal rotation with a band, elbow at the side", Shoulder, Nothing, [RotatorCuff], [Band], [Demand.Arms], harder: "raised-internal-rotation", oneSided: true),
        Of("raised-internal-rotation", "Internal rotation with a band, arm raised", Shoulder, Nothing, [RotatorCuff], [Band], [Overhead, Demand.Arms], easier: "internal-rotation", oneSided: true),
        Of("face-pull", "Face pull", Shoulder, Stack, [UpperBack, RotatorCuff, Shoulders], [Cable], [Demand.Arms], easier: "band-face-pull"),
        Of("band-face-pull", "Face pull with a band", Shoulder, Nothing, [UpperBack, RotatorCuff, Shoulders], [Band], [Demand.Arms], easier: "band-pull-apart", harder: "face-pull"),
        Of("band-pull-apart", "Pulling a band apart", Shoulder, Nothing, [UpperBack, Shoulders, RotatorCuff], [Band], [Demand.Arms], harder: "band-face-pull"),
        Of("lateral-raise", "Lateral raise", Shoulder, TwoDumbbells, [Shoulders], [Dumbbells], [Demand.Arms]),
        Of("scapular-raise", "Raise in the plane of the shoulder blade", Shoulder, TwoDumbbells, [Shoulders, RotatorCuff], [Dumbbells], [Demand.Arms]),
        Of("rear-raise", "Rear raise, chest supported", Shoulder, TwoDumbbells, [Shoulders, UpperBack], [Dumbbells, Bench], [Demand.Arms], easier: "prone-t-raise"),
        Of("prone-t-raise", "Prone T raise", Shoulder, Nothing, [UpperBack, Shoulders], [], [Demand.Arms], harder: "rear-raise"),
        Of("prone-y-raise", "Prone Y raise", Shoulder, Nothing, [UpperBack, Shoulders], [], [Overhead, Demand.Arms], easier: "prone-t-raise"),
        Of("prone-w-raise", "Prone W raise", Shoulder, Nothing, [UpperBack, RotatorCuff], [], [Demand.Arms]),
        Of("wall-slide", "Wall slide", Shoulder, Nothing, [UpperBack, Shoulders], [], [Overhead, Demand.Arms]),
        Of("blade-press-up", "Shoulder-blade press-up", Shoulder, Nothing, [UpperBack, Shoulders], [], [Demand.Arms], easier: "wall-blade-press-up"),
        Of("wall-blade-press-up", "Shoulder-blade press against a wall", Shoulder, Nothing, [UpperBack, Shoulders], [], [Demand.Arms], harder: "blade-press-up"),
        Of("blade-pull-up", "Shoulder-blade pull-up", Shoulder, Nothing, [UpperBack, Lats], [PullUpBar], [Overhead, Demand.Arms]),
        Of("shrug", "Shrug", Shoulder, TwoDumbbells, [UpperBack, Muscle.Neck], [Dumbbells], [Legs, Demand.Arms, Spine]),
        Of("wall-ball-circles", "Ball circles on a wall", Shoulder, LoadedBy.MedicineBall, [RotatorCuff, Shoulders], [Equipment.MedicineBall], [Demand.Arms], oneSided: true),
        Of("prone-ball-drops", "Prone ball drops and catches", Shoulder, LoadedBy.MedicineBall, [RotatorCuff, UpperBack], [Equipment.MedicineBall, Bench], [Demand.Arms], easier: "prone-t-raise", oneSided: true),
    ];
}
