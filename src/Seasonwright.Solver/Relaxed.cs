using System.Collections.Immutable;

namespace Seasonwright.Solver;

/// <summary>Conditions that are not asked for: everywhere, or a lock of one week. For "what if" and for finding what clashes.</summary>
public sealed record Relaxed(ImmutableHashSet<(Condition Condition, int? Week)> Conditions)
{
    public static Relaxed None { get; } = new([]);

    public bool Has(Condition condition, int week) => Conditions.Count > 0 && (Conditions.Contains((condition, null)) || Conditions.Contains((condition, week)));

    public Relaxed With(Condition condition, int? week = null) => new(Conditions.Add((condition, week)));
}
