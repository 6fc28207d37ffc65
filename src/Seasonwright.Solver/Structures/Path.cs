namespace Seasonwright.Solver;

/// <summary>A whole plan as the search finds it.</summary>
/// <param name="Value">In units, less what was paid.</param>
internal sealed record Path(List<Path.Step> Steps, long Value)
{
    /// <summary>Whether another plan has the same phases and kinds.</summary>
    public bool IsLike(Path other) => Steps.Zip(other.Steps).All(pair => pair.First.Move == pair.Second.Move);

    /// <summary>What one week becomes.</summary>
    internal readonly record struct Step(Move Move, int Points);
}
