using CsCheck;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Core.Strength;
using static Seasonwright.Core.Tests.Squad.GymDay;

namespace Seasonwright.Core.Tests.Squad;

/// <summary>What holds for every squad, workout and gym.</summary>
public class AthleteWorkLaws
{
    private static readonly Gen<Effort> Efforts = Gen.OneOf(
        Gen.Const(Effort.Free), Gen.Int[80, 420].Select(quarter => Effort.OfMax(quarter / 4m)), Gen.Int[0, 10].Select(left => Effort.Reserve(left)), Gen.Const(new Effort(EffortKind.Velocity, 0.5m)),
        Gen.Int[1, 150].Select(percent => new Effort(EffortKind.OfBodyMass, percent)), Gen.Int[1, 120].Select(amount => new Effort(EffortKind.Fixed, null, new Weight(amount, amount % 2 == 0 ? MassUnit.Kilogram : MassUnit.Pound))));

    private static readonly Gen<Workout> Workouts = Gen.Select(Gen.OneOf(ExerciseBook.All.ToArray()), Gen.Int[1, 5], Gen.Int[1, 15], Efforts, Gen.Enum<WorkUnit>(),
        (exercise, sets, amount, effort, unit) => new WorkoutItem(new(exercise.Id.Text), exercise.Id, new(sets, amount, unit, effort))).List[1, 6]
        .Select(items => items.DistinctBy(item => item.Id).ToList())
        .Select(items => new Workout(All, "Drawn", [new(PartKind.WarmUp, [items[0]], 0), .. items.Skip(1).Select(item => Straight(item))], Progression.None));

    /// <summary>Plates of odd masses too, so that not every sum can be made.</summary>
    private static readonly Gen<Gym> AnyGym = Gen.Select(Gen.OneOf(15m, 20m, 45m), Gen.OneOf(25m, 20m, 15m, 10m, 7m, 5m, 2.5m, 1.25m).List[0, 6], Gen.Int[1, 2], Gen.Enum<MassUnit>(), Gen.Enum<Equipment>().List[0, 400], Gen.Int[0, 6], Gen.Bool, Gen.Bool,
        (bar, plates, pairs, unit, equipment, without, isBroken, down) => new Gym(without == 0 ? [] : [new GymRack("1", new Weight(bar, unit), [.. plates.Distinct().Select(mass => new RackPlate(mass, pairs))], IsBroken: isBroken && without == 1)],
            without == 2 ? null : new(2, 30, 2, MassUnit.Kilogram), without == 3 ? null : new(8, 24, 4, MassUnit.Kilogram), without == 2 ? null : new Weight(5, unit), [.. equipment.Distinct()], null, down));

    private static readonly Gen<Player> Players = Gen.Select(AnySquad.AnyAvailability, Gen.Int[15, 30], Gen.Int[20, 160], Gen.Int[0, 4], (availability, age, maximum, known) =>
        Strong.Born(Monday.AddYears(-age)).Reported(availability, Monday) with
        {
            Lifts = known == 0 ? [] : [.. ExerciseBook.All.Where((_, at) => at % known == 0).Select(exercise => new LiftTest(Guid.Empty, Strong.Id, exercise.Id, Monday.AddDays(-7), new Weight(maximum), 1, null, default))],
            Weighings = known == 1 ? [] : Strong.Weighings,
        });

    [Fact]
    public void Nobody_gets_what_a_restriction_rules_out_or_the_gym_does_not_have()
    {
        var (lines, instead) = (0, 0);
        Gen.Select(Workouts, AnyGym, Players).Sample((workout, gym, player) =>
        {
            var restrictions = player.StandingOn(AtNine.Day).Availability.Restrictions;
            foreach (var line in AllOf(player, Season(workout), Setup(gym)).SelectMany(work => work.Lines))
            {
                lines++;
                if (line.Instead) instead++;
                Assert.Empty(restrictions.RulingOut(line.Exercise));
                Assert.Empty(line.Exercise.Equipment.Except(gym.AtHand));
                Assert.Equal(line.Exercise.Id != line.Item.Exercise, line.Instead);
            }
        }, iter: 400, threads: 1);
        Assert.True(lines > 300 && instead > 50, $"{lines} {instead}");
    }

    /// <summary>Every weight of a bar, and of plates that hang, is a sum of plates that are there, both sides alike; others lie on their steps.</summary>
    [Fact]
    public void A_weight_can_be_made_and_lies_above_its_target_only_where_the_gym_allows_it()
    {
        var (made, above) = (0, 0);
        Gen.Select(Workouts, AnyGym, Players).Sample((workout, gym, player) =>
        {
            foreach (var work in AllOf(player, Season(workout), Setup(gym)))
                foreach (var line in work.Lines.Where(line => line.Load.Made is not null))
                {
                    made++;
                    var weight = line.Load.Made!.Weight;
                    if (weight.Kilograms > line.Load.Target!.Kilograms) above++;
                    if (gym.NeverAbove || work.IsMinor) Assert.True(weight.Kilograms <= line.Load.Target.Kilograms + 1e-12m, $"{line.Exercise.Name} {weight} above {line.Load.Target}");
                    Assert.True(CanBeMade(gym, line.Exercise.Load, line.Load.Made), $"{line.Exercise.Name} {weight}");
                }
        }, iter: 900, threads: 1);
        Assert.True(made > 300 && above > 3, $"{made} {above}");
    }

    [Fact]
    public void Modified_is_who_does_something_that_the_others_do_not() => Gen.Select(Workouts, AnyGym, Players).Sample((workout, gym, player) =>
    {
        var (season, setup) = (Season(workout), Setup(gym));
        var others = Of(Strong.Born(Monday.AddYears(-30)), setup, season);
        Assert.False(others.IsModified);
        foreach (var work in AllOf(player, season, setup).Where(work => work.Fit is not (FitKind.NotAtAll or FitKind.ToBeAsked)))
            Assert.Equal(work.MostMinutes is not null || !Done(work).SequenceEqual(Done(others)), work.IsModified);

        static IEnumerable<(string, string, Prescription)> Done(AthleteWork work) => work.Lines.Select(line => (line.Item.Id.Text, line.Exercise.Id.Text, line.Prescription));
    }, iter: 300, threads: 1);

    /// <summary>By the textbook table, for every set of which anybody can tell.</summary>
    [Fact]
    public void No_set_of_who_is_under_18_is_close_to_a_maximum() => Gen.Select(Workouts, AnyGym, Players.Where(player => player.Athlete.IsMinorOn(AtNine.Day))).Sample((workout, gym, player) =>
    {
        foreach (var line in AllOf(player, Season(workout), Setup(gym)).SelectMany(work => work.Lines))
        {
            Assert.True(line.Load.Share is not { } share || share.Percent <= 85, $"{line.Exercise.Name} {line.Load.Share}");
            if (line.Prescription.Effort.Kind == EffortKind.Reserve) Assert.True(line.Prescription.Effort.Amount >= 2);
            if (player.MaximumOn(AtNine.Day, line.Exercise, Setup(gym)) is { } maximum && line.Exercise.Load != LoadedBy.OnTheBody && line.Load.Made is { } made)
                Assert.True(made.Weight.Kilograms <= maximum.Weight.Kilograms * 0.85m + 1e-9m, $"{line.Exercise.Name} {made.Weight} of {maximum.Weight}");
        }
    }, iter: 300, threads: 1);

    private static bool CanBeMade(Gym gym, LoadedBy load, MadeWeight made) => load switch
    {
        LoadedBy.Bar => gym.Racks.Any(rack => !rack.IsBroken && made.Weight.Amount == rack.Bar.Amount + 2 * made.PerSide.Sum() && made.PerSide.GroupBy(mass => mass).All(mass => rack.Plates.Any(plate => plate.Mass == mass.Key && plate.Pairs >= mass.Count()))),
        LoadedBy.OnTheBody or LoadedBy.Sled => gym.Racks.Any(rack => !rack.IsBroken && Sums(rack.Plates.SelectMany(plate => Enumerable.Repeat(plate.Mass, 2 * plate.Pairs))).Contains(made.Weight.Amount)),
        LoadedBy.TwoDumbbells or LoadedBy.OneDumbbell => IsStep(gym.Dumbbells!, made.Weight.Amount),
        LoadedBy.Kettlebell => IsStep(gym.Kettlebells!, made.Weight.Amount),
        LoadedBy.Stack => made.Weight.Amount % gym.StackStep!.Amount == 0,
        _ => true,
    };

    private static bool IsStep(WeightSteps steps, decimal amount) => amount >= steps.From && amount <= steps.To && (amount - steps.From) % steps.Step == 0;

    private static HashSet<decimal> Sums(IEnumerable<decimal> masses) => masses.Aggregate(new HashSet<decimal> { 0 }, (sums, mass) => [.. sums, .. sums.Select(sum => sum + mass)]);
}
