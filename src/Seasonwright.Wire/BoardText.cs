using System.Collections.Frozen;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Seasonwright.Core.Boards;

namespace Seasonwright.Wire;

/// <summary>What is tapped at the board, as boards send it and the file keeps it: the mark's name in the property "mark", without its ending. Names never change.</summary>
public static class BoardText
{
    private const string Property = "mark", Ending = "Mark";

    private static readonly FrozenDictionary<string, Type> Names = typeof(BoardMark).Assembly.GetTypes()
        .Where(type => type.IsSubclassOf(typeof(BoardMark)) && !type.IsAbstract)
        .ToFrozenDictionary(type => JsonNamingPolicy.CamelCase.ConvertName(type.Name[..^Ending.Length]), StringComparer.Ordinal);

    public static string Of(BoardMark mark) => JsonSerializer.Serialize(mark, WireOptions.Compact);

    /// <returns>Null where the text is not a mark of this version.</returns>
    public static BoardMark? TryRead(string json)
    {
        try
        {
            return JsonSerializer.Deserialize<BoardMark>(json, WireOptions.Compact);
        }
        catch (Exception trouble) when (trouble is JsonException or NotSupportedException)
        {
            return null;
        }
    }

    /// <summary>Reads a JSON array of marks, as boards send them, each for itself: null for what is none of this version.</summary>
    /// <returns>Null where it is no array.</returns>
    public static IReadOnlyList<BoardMark?>? TryReadList(string json)
    {
        try
        {
            return JsonSerializer.Deserialize<List<JsonElement>>(json, WireOptions.Compact)?.Select(mark => TryRead(mark.GetRawText())).ToList();
        }
        catch (JsonException)
        {
            return null;
        }
    }

    internal static void Discriminate(JsonTypeInfo info)
    {
        if (info.Type != typeof(BoardMark)) return;
        info.PolymorphismOptions = new() { TypeDiscriminatorPropertyName = Property };
        foreach (var (name, type) in Names.OrderBy(mark => mark.Key, StringComparer.Ordinal)) info.PolymorphismOptions.DerivedTypes.Add(new(type, name));
    }
}
