namespace Seasonwright.Core.Facts;

/// <summary>Names one place that can hold a value, for instance "week.load/0198f3" or "frame".</summary>
/// <param name="Facet">The family of places, see <see cref="Facts.Facet"/>.</param>
/// <param name="Subject">Which one of the family; empty where there is only one.</param>
public readonly record struct Key(string Facet, string Subject) : IComparable<Key>
{
    /// <exception cref="FormatException">The text has no facet.</exception>
    public static Key Parse(string text)
    {
        var slash = text.IndexOf('/', StringComparison.Ordinal);
        var key = slash < 0 ? new Key(text, "") : new Key(text[..slash], text[(slash + 1)..]);
        return key.Facet.Length > 0 ? key : throw new FormatException($"'{text}' names no place.");
    }

    public int CompareTo(Key other) =>
        string.CompareOrdinal(Facet, other.Facet) is var order and not 0 ? order : string.CompareOrdinal(Subject, other.Subject);

    public override string ToString() => Subject.Length == 0 ? Facet : $"{Facet}/{Subject}";
}
