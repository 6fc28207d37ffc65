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

    /// <summary>What leads from these facts to others, in key order. Families that both share are passed over whole, so a small edit costs little.</summary>
    internal IEnumerable<Change> ChangesTo(FactSet other)
    {
        foreach (var facet in facets.Keys.Union(other.facets.Keys, StringComparer.Ordinal).Order(StringComparer.Ordinal))
        {
            var before = facets.GetValueOrDefault(facet, NoSubjects);
            var after = other.facets.GetValueOrDefault(facet, NoSubjects);
            if (ReferenceEquals(before, after)) continue;
            foreach (var subject in before.Keys.Union(after.Keys, StringComparer.Ordinal).Order(StringComparer.Ordinal))
            {
                var change = new Change(new Key(facet, subject), before.GetValueOrDefault(subject), after.GetValueOrDefault(subject));
                if (!Equals(change.Before, change.After)) yield return change;
            }
        }
    }

    public bool Equals(FactSet? other) => other is not null && (ReferenceEquals(this, other) || !ChangesTo(other).Any());

    public override bool Equals(object? obj) => Equals(obj as FactSet);

    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var (facet, subjects) in facets)
            foreach (var (subject, value) in subjects) hash.Add((facet, subject, value));
        return hash.ToHashCode();
    }
}
