using System.Collections.Frozen;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Seasonwright.Core.Edits;

namespace Seasonwright.Wire;

/// <summary>Every edit's name on the wire: its type's name in camelCase, in the property "edit". Names never change.</summary>
public static class EditNames
{
    /// <summary>The property that says which edit it is.</summary>
    public const string Property = "edit";

    public static FrozenDictionary<string, Type> All { get; } = typeof(Edit).Assembly.GetTypes()
        .Where(type => type.IsSubclassOf(typeof(Edit)) && !type.IsAbstract)
        .ToFrozenDictionary(NameOf, StringComparer.Ordinal);

    public static string NameOf(Type edit) => JsonNamingPolicy.CamelCase.ConvertName(edit.Name);

    /// <summary>The edit whose name differs least from a misspelt one; null where none is near.</summary>
    internal static string? Nearest(string name)
    {
        var (near, distance) = All.Keys.Select(key => (key, Distance(key, name))).OrderBy(pair => pair.Item2).ThenBy(pair => pair.key, StringComparer.Ordinal).First();
        return distance <= 1 + name.Length / 4 ? near : null;
    }

    /// <summary>Letters to put in, take out or change, capitals aside.</summary>
    /// <remarks>Levenshtein VI 1966, Binary codes capable of correcting deletions, insertions, and reversals, Soviet Physics Doklady 10(8):707-710.</remarks>
    private static int Distance(string a, string b)
    {
        if (b.Length > 2 * a.Length) return int.MaxValue;
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var change = diagonal + (char.ToUpperInvariant(a[i - 1]) == char.ToUpperInvariant(b[j - 1]) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(change, 1 + Math.Min(row[j], row[j - 1]));
            }
        }
        return row[^1];
    }

    internal static void Discriminate(JsonTypeInfo info)
    {
        if (info.Type != typeof(Edit) && info.Type != typeof(SeasonEdit) && info.Type != typeof(SetupEdit) && info.Type != typeof(ClubEdit)) return;
        info.PolymorphismOptions = new() { TypeDiscriminatorPropertyName = Property };
        foreach (var (name, type) in All.OrderBy(edit => edit.Key, StringComparer.Ordinal))
            if (type.IsSubclassOf(info.Type)) info.PolymorphismOptions.DerivedTypes.Add(new(type, name));
    }
}
