using System.Globalization;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>A lift as entered. No one-repetition maximum is worked out of it.</summary>
/// <param name="Exercise">By its usual English name where the word is known, else as the list calls it.</param>
/// <param name="CalledAs">As the list calls it.</param>
/// <param name="Weight">Weight and unit as entered.</param>
/// <param name="Reps">Repetitions; null for a bare figure.</param>
/// <param name="IsMax">Whether a bare figure is a one-repetition maximum; null while nobody has said, and beside repetitions.</param>
public sealed record SquadLift(string Exercise, string CalledAs, EnteredMass Weight, int? Reps, bool? IsMax)
{
    /// <summary>"back squat 85 kg x 5", "clean 55 kg".</summary>
    public override string ToString() => Reps is { } reps ? string.Create(CultureInfo.InvariantCulture, $"{Exercise} {Weight} x {reps}") : $"{Exercise} {Weight}";
}
