using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Setups;

/// <summary>The closed lists of exercises in plain words.</summary>
public static class ExerciseWords
{
    /// <summary>"squat", "horizontal pull".</summary>
    public static string Word(this MovementPattern pattern) => Sentences.Say($"pattern.{pattern}");

    /// <summary>"hamstrings", "rotator cuff".</summary>
    public static string Word(this Muscle muscle) => Sentences.Say($"muscle.{muscle}");

    /// <summary>"barbell", "pull-up bar".</summary>
    public static string Word(this Equipment equipment) => Sentences.Say($"equipment.{equipment}");

    /// <summary>"knee past 90°, loaded", "arms".</summary>
    public static string Word(this Demand demand) => Sentences.Say($"demand.{demand}");

    /// <summary>"bar and plates", "two dumbbells".</summary>
    public static string Word(this LoadedBy load) => Sentences.Say($"loaded.{load}");
}
