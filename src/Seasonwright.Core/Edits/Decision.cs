using System.Collections.Immutable;
using Seasonwright.Core.Facts;

namespace Seasonwright.Core.Edits;

/// <summary>The answer to an edit.</summary>
public abstract record Decision
{
    private protected Decision() { }
}

/// <summary>The edit holds.</summary>
/// <param name="Step">What it does.</param>
/// <param name="Reads">Places it relied on without changing them.</param>
public sealed record Accepted(Step Step, ImmutableHashSet<Key> Reads) : Decision
{
    /// <summary>Whether any place this decision read or wrote is among those changed meanwhile.</summary>
    public Key? ConflictsWith(IReadOnlySet<Key> changed)
    {
        foreach (var key in Step.Changes.Select(change => change.Key).Concat(Reads))
            if (changed.Contains(key)) return key;
        return null;
    }
}

/// <summary>The edit does not hold; nothing changes. All reasons at once, in a fixed order.</summary>
public sealed record Refused(ValueList<Refusal> Reasons) : Decision;
