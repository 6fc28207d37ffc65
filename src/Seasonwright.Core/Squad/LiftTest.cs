using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Squad;

/// <summary>A set that somebody did to find out how strong they are. A correction is a newer row for the same exercise, day and weight.</summary>
/// <param name="Id">Brought by whoever records it, so that what is sent twice is one set.</param>
/// <param name="Weight">As it is counted for the exercise: bar and plates, each of two dumbbells; where the body is lifted as well, both together.</param>
/// <param name="Repetitions">Until none was left, 1 to 15: 1 is the maximum itself. Null for a set that was done for its velocity.</param>
/// <param name="Velocity">Mean velocity of the fastest repetition, metres a second above 0 to 4; null where none was measured.</param>
/// <param name="Recorded">When it was written down.</param>
public sealed record LiftTest(Guid Id, PersonId Person, ExerciseId Exercise, DateOnly Day, Weight Weight, int? Repetitions, decimal? Velocity, DateTimeOffset Recorded)
{
    public const int MostRepetitions = 15;

    public const decimal MostVelocity = 4;

    /// <summary>What holds of some tests: of the same exercise, day, weight and kind what was written down last, in the order of the days.</summary>
    public static IEnumerable<LiftTest> Standing(IEnumerable<LiftTest> tests) => tests
        .GroupBy(test => (test.Person, test.Exercise, test.Day, test.Weight.Kilograms, IsOfVelocity: test.Repetitions is null))
        .Select(same => same.MaxBy(test => (test.Recorded, test.Id))!).OrderBy(test => test.Day).ThenBy(test => test.Weight.Kilograms);
}
