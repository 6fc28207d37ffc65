using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Strength;

namespace Seasonwright.Core.Squad;

/// <summary>Somebody's load-velocity profile in one lift, of the sets of one day.</summary>
/// <param name="Unit">Of the loads.</param>
public sealed record LiftProfile(VelocityProfile Profile, MassUnit Unit, DateOnly Day)
{
    /// <summary>The newest up to a day; null where no day's sets make one.</summary>
    /// <param name="tests">Of one person.</param>
    public static LiftProfile? On(DateOnly day, IEnumerable<LiftTest> tests, ExerciseId exercise) => LiftTest.Standing(tests.Where(test => test.Exercise == exercise && test.Day <= day))
        .GroupBy(test => test.Day).OrderByDescending(tested => tested.Key).Select(tested => OfDay(tested.Key, [.. tested])).FirstOrDefault(profile => profile is not null);

    /// <param name="tests">Of one person and lift on one day.</param>
    internal static LiftProfile? OfDay(DateOnly day, IReadOnlyList<LiftTest> tests) => tests.FirstOrDefault(test => test.Velocity is > 0)?.Weight.Unit is { } unit
        && VelocityProfile.Of(tests.Where(test => test.Velocity is > 0).Select(test => new VelocityPoint((double)test.Weight.In(unit), (double)test.Velocity!.Value))).Profile is { } profile ? new(profile, unit, day) : null;

    /// <summary>The load with which the fastest repetition has a velocity, to a tenth. Null outside the velocities that were measured: there the line is a guess.</summary>
    /// <param name="velocity">Metres a second.</param>
    public Weight? LoadAt(decimal velocity) => velocity >= (decimal)Profile.Points.Min(point => point.Velocity) && velocity <= (decimal)Profile.Points.Max(point => point.Velocity)
        && Math.Round((decimal)Profile.VelocityOnLoad.XAt((double)velocity), 1, MidpointRounding.AwayFromZero) is var load && Weight.IsPossible(load, Unit) ? new(load, Unit) : null;
}
