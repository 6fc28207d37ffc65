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

    internal static void Discriminate(JsonTypeInfo info)
    {
        if (info.Type != typeof(Edit) && info.Type != typeof(SeasonEdit) && info.Type != typeof(SetupEdit)) return;
        info.PolymorphismOptions = new() { TypeDiscriminatorPropertyName = Property };
        foreach (var (name, type) in All.OrderBy(edit => edit.Key, StringComparer.Ordinal))
            if (type.IsSubclassOf(info.Type)) info.PolymorphismOptions.DerivedTypes.Add(new(type, name));
    }
}
