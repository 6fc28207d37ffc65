namespace Seasonwright.Solver;

/// <summary>The stages of the engine, in order.</summary>
public enum Stage
{
    Structure,
    Loads,
    Emphasis,
}

/// <summary>Somebody watches the engine at work.</summary>
/// <param name="Tell">Called on the engine's thread with the stage that is at work now and the best plan so far; before there are loads it has the structure's, and before there is emphasis none.</param>
/// <param name="Enough">Cancelled when what there is shall be kept: the search for better loads ends with the best found, and no other plans are looked for.</param>
public sealed record Watch(Action<Stage, Proposal> Tell, CancellationToken Enough)
{
    /// <summary>Nobody.</summary>
    public static Watch None { get; } = new((_, _) => { }, CancellationToken.None);
}
