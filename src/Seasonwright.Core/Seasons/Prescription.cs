using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Seasons;

/// <summary>What a set's length is counted in.</summary>
public enum WorkUnit
{
    Repetitions,
    Seconds,
    Metres,
}

/// <summary>Sets, their length and how hard they are.</summary>
/// <param name="Sets">1 to 20.</param>
/// <param name="Amount">Repetitions 1 to 100, seconds 1 to 3,600 or metres 1 to 20,000 a set; of a one-sided exercise for each side.</param>
/// <param name="Tempo">Null where none is asked for.</param>
public sealed record Prescription(int Sets, int Amount, WorkUnit Unit, Effort Effort, Tempo? Tempo = null)
{
    public const int MostSets = 20, MostRepetitions = 100, MostSeconds = 3_600, MostMetres = 20_000;

    public static int MostOf(WorkUnit unit) => unit switch { WorkUnit.Repetitions => MostRepetitions, WorkUnit.Seconds => MostSeconds, _ => MostMetres };
}
