using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Strength;

namespace Seasonwright.Core.Tests.Strength;

/// <summary>The weight somebody lifts, as it is worked out and as it can be made.</summary>
public class GivenLoadTests
{
    private static readonly Gym Gym = new([new GymRack("1", new Weight(20), [new(20, 2), new(10), new(5), new(2.5m), new(1.25m)])], new(2, 30, 2, MassUnit.Kilogram), null, new Weight(5), []);

    private static readonly RackLoads Loads = RackLoads.Of(Gym);

    private static Exercise With(LoadedBy load) => new(new("e"), "E", MovementPattern.Squat, load, [], [], []);

    private static GivenLoad Of(Effort effort, LoadedBy load = LoadedBy.Bar, decimal? maximum = 120, decimal? body = 70, int repetitions = 5, RackLoads? loads = null, decimal today = 1) =>
        GivenLoad.Of(new(3, repetitions, WorkUnit.Repetitions, effort), With(load), maximum is { } kg ? new(kg) : null, body, loads ?? Loads, today);

    /// <summary>Check value R23: 1RM 120, 5 repetitions with 2 in reserve are 99.6 kg, to the nearest 2.5 kg 100.</summary>
    [Fact]
    public void Repetitions_in_reserve_are_a_share_of_the_maximum_by_the_table()
    {
        var given = Of(Effort.Reserve(2));
        Assert.Equal((new Weight(99.6m), new Weight(100), "20 20", 2), (given.Target, given.Made?.Weight, string.Join(' ', given.Made!.PerSide), given.Reserve));
    }

    [Fact]
    public void Without_a_maximum_the_reserve_says_how_hard()
    {
        // 80 %: eight are possible, five are done.
        var given = Of(Effort.OfMax(80), maximum: null);
        Assert.Equal((null, null, 3), (given.Target, given.Made, given.Reserve));
        Assert.Null(Of(new(EffortKind.Velocity, 0.5m)).Target);
        Assert.Null(Of(Effort.Reserve(2), repetitions: 20).Target);
        Assert.Equal(2, Of(Effort.Reserve(2), repetitions: 20).Reserve);
    }

    [Fact]
    public void Never_above_is_the_gym_s_choice()
    {
        Assert.Equal(new Weight(100), Of(Effort.OfMax(83)).Made!.Weight);
        Assert.Equal(new Weight(97.5m), Of(Effort.OfMax(83), loads: RackLoads.Of(Gym with { NeverAbove = true })).Made!.Weight);
    }

    [Fact]
    public void What_hangs_on_the_body_is_what_the_share_leaves_beside_it()
    {
        // 90 % of 100 kg together are 90: 20 hang on 70, made from the plates in steps of the smallest.
        Assert.Equal((new Weight(20), new Weight(20)), (Of(Effort.OfMax(90), LoadedBy.OnTheBody, 100).Target, Of(Effort.OfMax(90), LoadedBy.OnTheBody, 100).Made!.Weight));
        Assert.Null(Of(Effort.OfMax(60), LoadedBy.OnTheBody, 100).Target);
        Assert.Null(Of(Effort.OfMax(90), LoadedBy.OnTheBody, 100, body: null).Target);
    }

    [Fact]
    public void Each_kind_of_weight_has_its_own_steps()
    {
        Assert.Equal(new Weight(14), Of(Effort.OfMax(70), LoadedBy.TwoDumbbells, 20.5m).Made!.Weight);
        Assert.Equal(new Weight(45), Of(Effort.OfMax(70), LoadedBy.Stack, 65).Made!.Weight);
        Assert.Null(Of(Effort.OfMax(70), LoadedBy.Kettlebell, 20).Made);
        Assert.Equal(new Weight(35), Of(new(EffortKind.OfBodyMass, 50)).Made!.Weight);
        Assert.Equal(new Weight(45, MassUnit.Pound), Of(new(EffortKind.Fixed, null, new Weight(45, MassUnit.Pound))).Target);
    }

    [Fact]
    public void Lighter_than_the_bar_cannot_be_made()
    {
        var given = Of(Effort.OfMax(30), maximum: 40);
        Assert.Equal((new Weight(12), null), (given.Target, given.Made));
        Assert.Null(Of(Effort.OfMax(80), loads: RackLoads.Of(Gym with { Racks = [Gym.Racks[0] with { IsBroken = true }] })).Made);
    }

    [Theory]
    // 5 done and 2 left is the row of seven, 83 %: 99.6 kg are all of 120; a bar of 105 then is more than the known maximum has, as far as a day is held.
    [InlineData(99.6, 5, 2, 1)]
    [InlineData(102, 5, 2, 1.024)]
    [InlineData(110, 5, 2, 1.05)]
    [InlineData(80, 5, 2, 0.95)]
    public void A_day_is_held_to_five_per_cent(double lifted, int done, int left, double share) =>
        Assert.Equal((decimal)share, Math.Round(DayShare.OfReserve(new Weight((decimal)lifted), done, left, new Weight(120))!.Value, 3));

    [Fact]
    public void A_day_changes_what_is_lifted() => Assert.Equal(new Weight(91.2m), Of(Effort.OfMax(80), today: 0.95m).Target);

    [Fact]
    public void A_bar_that_moves_faster_than_usual_is_a_good_day()
    {
        var profile = VelocityProfile.Of([new(40, 1.10), new(60, 0.86), new(80, 0.62), new(100, 0.38)]).Profile!;
        // 80 kg usually move at 0.62; 82.4 kg at 0.62 are three per cent more.
        Assert.Equal(1.03, (double)DayShare.OfVelocity(profile, 82.4, 0.62)!.Value, 9);
        Assert.Null(DayShare.OfReserve(new(100), 12, 10, new(120)));
    }
}
