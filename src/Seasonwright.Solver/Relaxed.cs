using System.Collections.Immutable;

namespace Seasonwright.Solver;

/// <summary>
/// Conditions that are not asked for in full: everywhere, or in one week. Left out, for "what if" and for finding what clashes; or eased by
/// what a plan that is repaired goes against them already, so that the repair may do as before and no worse.
/// </summary>
/// <param name="Eased">Tenths of a point or of a week by which each may be passed; <see cref="Whole"/> for one that is left out.</param>
public sealed record Relaxed(ImmutableDictionary<(Condition Condition, int? Week), int> Eased)
{
    private const int Whole = int.MaxValue;

    public static Relaxed None { get; } = new(ImmutableDictionary<(Condition, int?), int>.Empty);

    /// <summary>What is eased or left out.</summary>
    public IReadOnlyCollection<(Condition Condition, int? Week)> Conditions => [.. Eased.Keys];

    /// <summary>Whether a condition is not asked for at all.</summary>
    public bool Has(Condition condition, int week) => By(condition, week) == Whole;

    /// <summary>By how much a condition may be passed in a week, in tenths of a point or of a week.</summary>
    public int By(Condition condition, int week) => Eased.Count == 0 ? 0 : Math.Max(Eased.GetValueOrDefault((condition, null)), Eased.GetValueOrDefault((condition, week)));

    /// <summary>The same with a condition left out, everywhere or in one week.</summary>
    public Relaxed With(Condition condition, int? week = null) => new(Eased.SetItem((condition, week), Whole));

    /// <summary>The same with a condition eased in the week of a breach, by as much as it breaks it.</summary>
    public Relaxed With(Breach breach) => new(Eased.SetItem((breach.Condition, breach.Week), Math.Max(breach.Beyond, Eased.GetValueOrDefault((breach.Condition, breach.Week)))));
}
