namespace Seasonwright.Solver;

/// <summary>A whole plan as the search finds it.</summary>
/// <param name="Value">In units, less what was paid.</param>
internal sealed record Path(List<Path.Step> Steps, long Value)
{
    /// <summary>In how many weeks another plan has another phase or kind.</summary>
    public int WeeksApart(Path other) => Steps.Zip(other.Steps).Count(pair => pair.First.Move != pair.Second.Move);

    /// <summary>What one week becomes.</summary>
    internal readonly record struct Step(Move Move, int Points);
}
