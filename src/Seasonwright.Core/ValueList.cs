using System.Collections;
using System.Collections.Immutable;

namespace Seasonwright.Core;

/// <summary>An immutable list that equals another when its items do, in order. Records hold lists of this kind, so that they stay values.</summary>
public sealed class ValueList<T> : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    private readonly ImmutableArray<T> items;

    public ValueList(IEnumerable<T> items) => this.items = [.. items];

    public static ValueList<T> Empty { get; } = new([]);

    public int Count => items.Length;

    public T this[int index] => items[index];

    public bool Equals(ValueList<T>? other) => other is not null && items.SequenceEqual(other.items);

    public override bool Equals(object? obj) => Equals(obj as ValueList<T>);

    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var item in items) hash.Add(item);
        return hash.ToHashCode();
    }

    public override string ToString() => $"[{string.Join(", ", items)}]";

    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

/// <summary>Turns a sequence into a <see cref="ValueList{T}"/>.</summary>
public static class ValueListExtensions
{
    public static ValueList<T> ToValueList<T>(this IEnumerable<T> items) => new(items);
}
