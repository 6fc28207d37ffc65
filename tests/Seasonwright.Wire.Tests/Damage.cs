using System.Text.Json.Nodes;

namespace Seasonwright.Wire.Tests;

/// <summary>Texts with a wrong thing put in any place.</summary>
internal static class Damage
{
    public static IReadOnlyList<JsonNode?> Wrong { get; } =
        [null, true, -1, 7, 1e99, "", "x", "9999-12-31", "\u0000", new JsonArray(), new JsonObject(), new JsonArray(1, "x"), new JsonObject { ["id"] = 1 }];

    /// <summary>Every place with every wrong thing.</summary>
    /// <param name="every">Only each n-th of them, for long texts; best prime to the number of wrong things.</param>
    public static IEnumerable<string> Of(JsonNode whole, int every = 1) =>
        Places(whole).SelectMany(path => Wrong.Select(wrong => (path, wrong))).Where((_, index) => index % every == 0).Select(damage => With(whole, damage.path, damage.wrong));

    /// <summary>Every place of a text that holds something, as the way to it.</summary>
    private static IEnumerable<object[]> Places(JsonNode? node, params object[] path) => node switch
    {
        JsonObject fields => fields.SelectMany(field => Places(field.Value, [.. path, field.Key])).Append(path),
        JsonArray items => items.SelectMany((item, index) => Places(item, [.. path, index])).Append(path),
        _ => [path],
    };

    private static string With(JsonNode whole, object[] path, JsonNode? wrong)
    {
        if (path.Length == 0) return wrong?.ToJsonString() ?? "null";
        var copy = whole.DeepClone();
        var parent = path[..^1].Aggregate(copy, (node, step) => step is int index ? node[index]! : node[(string)step]!);
        if (path[^1] is int last) parent[last] = wrong?.DeepClone();
        else parent[(string)path[^1]] = wrong?.DeepClone();
        return copy.ToJsonString();
    }
}
