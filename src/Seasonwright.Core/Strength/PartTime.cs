using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Strength;

/// <summary>How long a part of a workout takes: a guess for planning, in seconds. Common practice, no source.</summary>
public static class PartTime
{
    /// <summary>To begin with an exercise, to change its weight and place: seconds for each exercise.</summary>
    private const int SetUp = 60;

    /// <summary>Between the exercises of a round.</summary>
    private const int ChangeOver = 15;

    /// <summary>From one athlete to the next at one rack: plates, places.</summary>
    private const int NextOne = 30;

    /// <summary>Metres a second at which metres of work are counted; running fast and carrying slowly differ.</summary>
    private const int Pace = 3;

    /// <param name="exercises">What an exercise is; one that the team does not have any more counts its time alone.</param>
    /// <param name="sharing">Athletes who take turns at one place, 1 or more: once their turns last longer than the rest, the turns count.</param>
    public static int Seconds(WrittenPart part, Func<ExerciseId, Exercise?> exercises, int sharing = 1)
    {
        var setUp = part.Items.Count * SetUp;
        if (part.Part.Kind is PartKind.Straight) return setUp + part.Items.Sum(item => item.Prescription.Sets * Math.Max(OfSet(item, exercises) + part.Part.Rest, Turns(item)));
        var rounds = part.Items.Max(item => item.Prescription.Sets);
        var round = part.Part.Rest + part.Items.Sum(item => item.Prescription.Sets * (OfSet(item, exercises) + ChangeOver)) / (decimal)rounds;
        return setUp + (int)decimal.Ceiling(rounds * Math.Max(round, part.Items.Max(Turns)));

        int Turns(WrittenItem item) => sharing == 1 ? 0 : sharing * (OfSet(item, exercises) + NextOne);
    }

    private static int OfSet(WrittenItem item, Func<ExerciseId, Exercise?> exercises) => (exercises(item.Item.Exercise) is { IsOneSided: true } ? 2 : 1) * item.Prescription.Unit switch
    {
        WorkUnit.Repetitions => item.Prescription.Amount * (item.Prescription.Tempo?.Seconds ?? Quantities.Tempo.UsualSeconds),
        WorkUnit.Seconds => item.Prescription.Amount,
        _ => (item.Prescription.Amount + Pace - 1) / Pace,
    };
}
