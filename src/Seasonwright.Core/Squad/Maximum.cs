using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Strength;

namespace Seasonwright.Core.Squad;

/// <summary>How a maximum is known.</summary>
public enum MaximumFrom
{
    /// <summary>It was lifted.</summary>
    Tested,

    /// <summary>By an equation from several repetitions.</summary>
    Repetitions,

    /// <summary>By the line through loads and velocities of one day.</summary>
    Velocity,

    /// <summary>A share of another exercise's, as a first guess.</summary>
    AnotherLift,
}

/// <summary>The most that somebody can lift once, as far as it is known on a day.</summary>
/// <param name="Weight">In the unit it was tested in, to a tenth. Where the body is lifted as well, both together.</param>
/// <param name="Least">The least that all equations or the interval of the line give; null where it was lifted.</param>
/// <param name="Greatest">The most of them.</param>
/// <param name="Equation">By which it was estimated; null otherwise.</param>
/// <param name="Day">Of the test.</param>
public sealed record Maximum(ExerciseId Exercise, Weight Weight, MaximumFrom From, DateOnly Day, Weight? Least = null, Weight? Greatest = null, RepMaxEquation? Equation = null)
{
    /// <summary>Days after which a maximum is called old. Common practice, no source.</summary>
    public const int FreshDays = 120;

    /// <summary>The newest that somebody's tests up to a day give; where the exercise was never tested, a share of the one it is guessed from. Null where nothing is known.</summary>
    /// <param name="tests">Of one person.</param>
    public static Maximum? On(DateOnly day, IReadOnlyCollection<LiftTest> tests, Exercise exercise, Setup setup)
    {
        if (!exercise.HasMax) return null;
        if (Own(day, tests, exercise, setup) is { } own) return own;
        return exercise is { MaxOf: { } id, MaxShare: { } share } && setup.Exercise(id) is { } other && Own(day, tests, other, setup) is { } known && Tenth(known.Weight.Amount * share.Value / 100, known.Weight.Unit) is { } guess
            ? new(exercise.Id, guess, MaximumFrom.AnotherLift, known.Day) : null;
    }

    private static Maximum? Own(DateOnly day, IReadOnlyCollection<LiftTest> tests, Exercise exercise, Setup setup)
    {
        var mine = LiftTest.Standing(tests.Where(test => test.Exercise == exercise.Id && test.Day <= day)).ToList();
        return mine.GroupBy(test => test.Day).OrderByDescending(tested => tested.Key).Select(tested => OfDay(tested.Key, [.. tested], exercise, setup.Lift(exercise.Id))).FirstOrDefault(maximum => maximum is not null);
    }

    /// <summary>Of one day: what was lifted once, else the greatest of the estimates, else by velocity.</summary>
    private static Maximum? OfDay(DateOnly day, IReadOnlyList<LiftTest> tests, Exercise exercise, Lift lift)
    {
        var equation = lift.Equation is { } name && RepMaxEquation.Find(name) is { } chosen ? chosen : RepMaxEquation.Find(Lift.UsualEquation)!;
        var estimates = tests.Where(test => test.Repetitions is > 1 and <= RepMaxEquation.Most).Select(test => Estimated(day, test, equation));
        var lifted = tests.Where(test => test.Repetitions == 1).Select(test => new Maximum(test.Exercise, test.Weight, MaximumFrom.Tested, day));
        return lifted.Concat(estimates.OfType<Maximum>()).MaxBy(maximum => maximum.Weight.Kilograms) ?? ByVelocity(day, tests, exercise, lift);
    }

    private static Maximum? Estimated(DateOnly day, LiftTest test, RepMaxEquation equation)
    {
        var (load, unit, repetitions) = ((double)test.Weight.Amount, test.Weight.Unit, test.Repetitions!.Value);
        var spread = RepMaxSpread.Of(load, repetitions);
        return Tenth((decimal)equation.OneRepMax(load, repetitions), unit) is not { } weight ? null
            : new(test.Exercise, weight, MaximumFrom.Repetitions, day, Tenth((decimal)spread.Least, unit), Tenth((decimal)spread.Greatest, unit), equation);
    }

    private static Maximum? ByVelocity(DateOnly day, IReadOnlyList<LiftTest> tests, Exercise exercise, Lift lift)
    {
        if ((lift.Threshold ?? UsualThreshold(exercise)) is not { } threshold || LiftProfile.OfDay(day, tests) is not { Unit: var unit } profile) return null;
        if (profile.Profile.OneRepMax((double)threshold).Estimate is not { } estimate || Tenth((decimal)estimate.Load, unit) is not { } weight) return null;
        return new(exercise.Id, weight, MaximumFrom.Velocity, day, estimate.Interval is { } low ? Tenth((decimal)low.Low, unit) : null, estimate.Interval is { } high ? Tenth((decimal)high.High, unit) : null);
    }

    /// <summary>That of trials, for the two patterns in which there is one.</summary>
    public static decimal? UsualThreshold(Exercise exercise) => exercise.Pattern switch
    {
        MovementPattern.Squat => (decimal)VelocityThreshold.SquatOfTrials.MetresPerSecond,
        MovementPattern.HorizontalPush => (decimal)VelocityThreshold.BenchPressOfTrials.MetresPerSecond,
        _ => null,
    };

    private static Weight? Tenth(decimal amount, MassUnit unit) => Math.Round(amount, 1, MidpointRounding.AwayFromZero) is var rounded && Weight.IsPossible(rounded, unit) ? new(rounded, unit) : null;
}
