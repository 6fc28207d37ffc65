using Seasonwright.Core;

namespace Seasonwright.Solver;

/// <summary>The stages of the engine, in order.</summary>
public enum Stage
{
    Structure,
    Loads,
    Emphasis,
}

/// <summary>Somebody watches the engine at work.</summary>
/// <param name="Tell">Called on the engine's thread with the stage that is at work now and the plans so far, the one at work last: before it has loads it has the structure's, and before it has emphasis none. Of a repair it is the best so far, from the first on that is whole.</param>
/// <param name="Enough">Cancelled when what there is shall be kept: the search for better loads ends with the best found, and no other plans are looked for.</param>
public sealed record Watch(Action<Stage, ValueList<Proposal>> Tell, CancellationToken Enough)
{
    /// <summary>Nobody.</summary>
    public static Watch None { get; } = new((_, _) => { }, CancellationToken.None);
}
