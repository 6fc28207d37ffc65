using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Core.Strength;

namespace Seasonwright.Core.Tests.Squad;

/// <summary>What is known of the most somebody can lift once.</summary>
public class MaximumTests
{
    private static readonly DateOnly Day = new(2027, 9, 2);
    private static readonly Setup Team = Setup.Empty(new("team"));
    private static readonly Exercise BackSquat = ExerciseBook.Find(new("back-squat"))!, FrontSquat = ExerciseBook.Find(new("front-squat"))!, Plank = ExerciseBook.All.First(exercise => !exercise.HasMax);

    private static LiftTest Test(decimal kilograms, int? repetitions, decimal? velocity = null, int days = 0, int minutes = 0, byte id = 0, string exercise = "back-squat") =>
        new(new Guid(id, 0, 0, new byte[8]), new("ida"), new(exercise), Day.AddDays(days), new Weight(kilograms), repetitions, velocity, new DateTimeOffset(2027, 9, 2, 9, minutes, 0, TimeSpan.Zero));

    private static Maximum? On(int days, params LiftTest[] tests) => Maximum.On(Day.AddDays(days), tests, BackSquat, Team);

    [Fact]
    public void What_was_lifted_once_is_the_maximum_itself() => Assert.Equal(new Maximum(BackSquat.Id, new(110), MaximumFrom.Tested, Day), On(3, Test(110, 1), Test(90, 3)));

    /// <summary>Brzycki 1993: 36 w / (37 - r). 100 kg five times are 112.5 (check value R02), between 112.5 and 119.0 by all equations (R01 to R08).</summary>
    [Fact]
    public void Several_repetitions_are_an_estimate_with_its_spread()
    {
        Assert.Equal(new Maximum(BackSquat.Id, new(112.5m), MaximumFrom.Repetitions, Day, new(112.5m), new(119m), RepMaxEquation.Find("brzycki")), On(0, Test(100, 5)));
        var epley = Team.With(((Accepted)Decider.Decide(Team, new SetLift(BackSquat.Id, new Lift("epley")))).Step);
        Assert.Equal(new Weight(116.7m), Maximum.On(Day, [Test(100, 5)], BackSquat, epley)!.Weight);
    }

    /// <summary>Check value V07, the threshold chosen for the lift: 119.1597 kg at 0.17 m/s.</summary>
    [Fact]
    public void Velocities_of_one_day_are_a_line()
    {
        LiftTest[] sets = [Test(40, null, 1.12m), Test(60, null, 0.85m), Test(80, null, 0.66m), Test(100, null, 0.39m)];
        var own = Team.With(((Accepted)Decider.Decide(Team, new SetLift(BackSquat.Id, new Lift(Threshold: 0.17m)))).Step);
        var maximum = Maximum.On(Day, sets, BackSquat, own)!;
        Assert.Equal((new Weight(119.2m), MaximumFrom.Velocity), (maximum.Weight, maximum.From));
        Assert.True(maximum.Least!.Kilograms < 119.1m && maximum.Greatest!.Kilograms > 119.3m);
        // Two points have no interval; one says nothing.
        Assert.Null(Maximum.On(Day, sets[..2], BackSquat, own)!.Least);
        Assert.Null(Maximum.On(Day, sets[..1], BackSquat, own));
    }

    [Fact]
    public void The_newest_day_counts_and_what_comes_later_is_not_known_yet()
    {
        LiftTest[] tests = [Test(110, 1), Test(105, 1, days: 40)];
        Assert.Null(On(-1, tests));
        Assert.Equal(new Weight(110), On(39, tests)!.Weight);
        Assert.Equal(new Weight(105), On(40, tests)!.Weight);
        // A day with nothing to go by leaves the one before.
        Assert.Equal(new Weight(105), On(60, [.. tests, Test(60, null, 0.8m, days: 50)])!.Weight);
    }

    [Fact]
    public void A_correction_stands_for_what_it_corrects() => Assert.Equal(5, LiftTest.Standing([Test(100, 3, minutes: 1, id: 1), Test(100, 5, minutes: 2, id: 2), Test(100, null, 0.4m, id: 3)]).Single(test => test.Repetitions is not null).Repetitions);

    [Fact]
    public void Another_lift_gives_a_first_guess_until_there_is_one()
    {
        var guess = Maximum.On(Day, [Test(100, 1)], FrontSquat, Team)!;
        Assert.Equal((new Weight(85), MaximumFrom.AnotherLift), (guess.Weight, guess.From));
        Assert.Equal(new Weight(90), Maximum.On(Day, [Test(100, 1), Test(90, 1, exercise: "front-squat")], FrontSquat, Team)!.Weight);
        Assert.Null(Maximum.On(Day, [Test(100, 1)], Plank, Team));
    }
}
