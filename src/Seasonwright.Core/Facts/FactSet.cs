using System.Collections.Immutable;

namespace Seasonwright.Core.Facts;

/// <summary>
/// Values at keys: the whole content of a season or a team's setup. Immutable; equal to another when every place holds the same.
/// </summary>
public sealed class FactSet : IEquatable<FactSet>
{
    private readonly ImmutableSortedDictionary<string, ImmutableSortedDictionary<string, object>> facets;

    private FactSet(ImmutableSortedDictionary<string, ImmutableSortedDictionary<string, object>> facets) => this.facets = facets;

    public static FactSet Empty { get; } =
        new(ImmutableSortedDictionary.Create<string, ImmutableSortedDictionary<string, object>>(StringComparer.Ordinal));

    private static readonly ImmutableSortedDictionary<string, object> NoSubjects =
        ImmutableSortedDictionary.Create<string, object>(StringComparer.Ordinal);

    /// <summary>What a place holds, or null.</summary>
    public object? this[Key key] => facets.TryGetValue(key.Facet, out var subjects) ? subjects.GetValueOrDefault(key.Subject) : null;

    /// <summary>Every place that holds something, in ordinal order.</summary>
    public IEnumerable<Key> Keys => facets.SelectMany(facet => facet.Value.Keys.Select(subject => new Key(facet.Key, subject)));

    public int Count => facets.Sum(facet => facet.Value.Count);

    public TValue? Find<TSubject, TValue>(Facet<TSubject, TValue> facet, TSubject subject)
        where TSubject : ISubject<TSubject>
        where TValue : class => (TValue?)this[facet.Of(subject)];

    public TValue? FindValue<TSubject, TValue>(Facet<TSubject, TValue> facet, TSubject subject)
        where TSubject : ISubject<TSubject>
        where TValue : struct => (TValue?)this[facet.Of(subject)];

    /// <summary>All values of a family with their subjects, in the subjects' ordinal order.</summary>
    public IEnumerable<(TSubject Subject, TValue Value)> All<TSubject, TValue>(Facet<TSubject, TValue> facet)
        where TSubject : ISubject<TSubject>
        where TValue : notnull =>
        facets.GetValueOrDefault(facet.Name, NoSubjects).Select(entry => (TSubject.Parse(entry.Key), (TValue)entry.Value));

    /// <summary>A copy with one place changed; null empties it.</summary>
    public FactSet With(Key key, object? value)
    {
        var subjects = facets.GetValueOrDefault(key.Facet, NoSubjects);
        var changed = value is null ? subjects.Remove(key.Subject) : subjects.SetItem(key.Subject, value);
        if (ReferenceEquals(changed, subjects)) return this;
        return new FactSet(changed.IsEmpty ? facets.Remove(key.Facet) : facets.SetItem(key.Facet, changed));
    }

    /// <summary>Total: any step can follow any facts, whatever the places held before.</summary>
    public FactSet Evolve(Step step) => step.Changes.Aggregate(this, (facts, change) => facts.With(change.Key, change.After));

    public bool Equals(FactSet? other) => other is not null
        && (ReferenceEquals(this, other) || (Count == other.Count && Keys.All(key => Equals(this[key], other[key]))));

    public override bool Equals(object? obj) => Equals(obj as FactSet);

    public override int GetHashCode() => Keys.Aggregate(0, (hash, key) => HashCode.Combine(hash, key, this[key]));
}
