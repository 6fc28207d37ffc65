using System.Collections;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace Seasonwright.Core;

/// <summary>
/// An immutable list that equals another when its items do, in order. Records hold lists of this kind, so that they stay values.
/// The hash is made once, so two different lists are told apart at once, and only equal ones are walked.
/// </summary>
[CollectionBuilder(typeof(ValueList), nameof(ValueList.Create))]
public sealed class ValueList<T> : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    private readonly ImmutableArray<T> items;
    private readonly int hash;

    public ValueList(IEnumerable<T> items)
        : this(items.ToImmutableArray())
    {
    }

    internal ValueList(ImmutableArray<T> items)
    {
        this.items = items;
        var sum = new HashCode();
        foreach (var item in items) sum.Add(item);
        hash = sum.ToHashCode();
    }

    public static ValueList<T> Empty { get; } = new(ImmutableArray<T>.Empty);

    public int Count => items.Length;

    public T this[int index] => items[index];

    public bool Equals(ValueList<T>? other) =>
        ReferenceEquals(this, other)
        || (other is not null && hash == other.hash && items.AsSpan().SequenceEqual(other.items.AsSpan()));

    public override bool Equals(object? obj) => Equals(obj as ValueList<T>);

    public override int GetHashCode() => hash;

    public override string ToString() => $"[{string.Join(", ", items)}]";

    public ImmutableArray<T>.Enumerator GetEnumerator() => items.GetEnumerator();

    IEnumerator<T> IEnumerable<T>.GetEnumerator() => ((IEnumerable<T>)items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => ((IEnumerable)items).GetEnumerator();
}

/// <summary>Builds value lists, also for collection expressions.</summary>
public static class ValueList
{
    public static ValueList<T> Create<T>(ReadOnlySpan<T> items) => new(ImmutableArray.Create(items));

    public static ValueList<T> ToValueList<T>(this IEnumerable<T> items) => new(items.ToImmutableArray());
}
