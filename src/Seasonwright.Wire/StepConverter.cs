using System.Text.Json;
using System.Text.Json.Serialization;
using Seasonwright.Core;
using Seasonwright.Core.Facts;

namespace Seasonwright.Wire;

/// <summary>A step is an array of {"key","before","after"}; what held or holds nothing is left out.</summary>
internal sealed class StepConverter : JsonConverter<Step>
{
    public override Step Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        using var document = JsonDocument.ParseValue(ref reader);
        if (document.RootElement.ValueKind != JsonValueKind.Array) throw new JsonException("A step is an array of changes.");
        return new Step(document.RootElement.EnumerateArray().Select(element => ReadChange(element, options)).ToValueList());
    }

    private static Change ReadChange(JsonElement element, JsonSerializerOptions options)
    {
        if (element.ValueKind != JsonValueKind.Object || !element.TryGetProperty("key", out var keyText) || keyText.ValueKind != JsonValueKind.String)
            throw new JsonException("A change is an object with a key.");
        Key key;
        try
        {
            key = Key.Parse(keyText.GetString()!);
        }
        catch (FormatException error)
        {
            throw new JsonException(error.Message, error);
        }
        var type = FacetBook.Find(key).ValueType;
        object? Value(string name) => element.TryGetProperty(name, out var value) ? value.Deserialize(type, options) : null;
        return new Change(key, Value("before"), Value("after"));
    }

    public override void Write(Utf8JsonWriter writer, Step value, JsonSerializerOptions options)
    {
        writer.WriteStartArray();
        foreach (var change in value.Changes)
        {
            var type = FacetBook.Find(change.Key.Facet).ValueType;
            writer.WriteStartObject();
            writer.WriteString("key", change.Key.ToString());
            if (change.Before is { } before)
            {
                writer.WritePropertyName("before");
                JsonSerializer.Serialize(writer, before, type, options);
            }
            if (change.After is { } after)
            {
                writer.WritePropertyName("after");
                JsonSerializer.Serialize(writer, after, type, options);
            }
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
    }
}
