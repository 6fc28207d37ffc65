using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Seasons;

/// <summary>How a workout gets harder over the loading weeks of its block.</summary>
public enum ProgressionKind
{
    /// <summary>The same every week.</summary>
    Same,

    /// <summary>A step a week.</summary>
    Linear,

    /// <summary>A step every other week.</summary>
    Step,

    /// <summary>Three weeks up, then back to one step above where they began.</summary>
    Wave,

    /// <summary>A step a week, the second session of a week two steps lighter, the third one step.</summary>
    Undulating,
}

/// <summary>A workout's way over the weeks.</summary>
/// <param name="Percent">Of the maximum, that a step adds: 0 to 10. What is not in per cent of a maximum follows by it.</param>
/// <param name="Repetitions">That a step takes from each set: 0 to 5.</param>
/// <param name="Sets">That a step adds, 0 to 2.</param>
public sealed record Progression(ProgressionKind Kind, decimal Percent = 0, int Repetitions = 0, int Sets = 0)
{
    public const decimal MostPercent = 10;

    public const int MostRepetitions = 5, MostSets = 2;

    public decimal Percent { get; init => field = Plain.Of(value); } = Plain.Of(Percent);

    public static Progression None { get; } = new(ProgressionKind.Same);

    /// <summary>Steps above what is written. Sessions of a week that undulates may lie below it.</summary>
    /// <param name="week">The how-manieth loading week, from 0.</param>
    /// <param name="session">The how-manieth session of its week with this workout, from 0.</param>
    public int StepsAt(int week, int session) => Kind switch
    {
        ProgressionKind.Linear => week,
        ProgressionKind.Step => week / 2,
        ProgressionKind.Wave => week % 3 + week / 3,
        ProgressionKind.Undulating => week + (session % 3) switch { 1 => -2, 2 => -1, _ => 0 },
        _ => 0,
    };
}
