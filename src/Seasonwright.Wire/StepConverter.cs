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
        if (reader.TokenType != JsonTokenType.StartArray) throw new JsonException(Sentences.Say("expected.list"));
        var changes = new List<Change>();
        while (WireText.Next(ref reader, JsonTokenType.EndArray)) changes.Add(ReadChange(ref reader, options));
        return new Step(changes.ToValueList());
    }

    private static Change ReadChange(ref Utf8JsonReader reader, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.StartObject) throw new JsonException(Sentences.Say("expected.object"));
        Key? key = null;
        object? before = null, after = null;
        while (WireText.Next(ref reader, JsonTokenType.EndObject))
        {
            var field = reader.GetString()!;
            reader.Read();
            // The key says what kind of value follows, so it comes first.
            switch (field)
            {
                case "key" when key is null: key = WireText.Parse(ref reader, Key.Parse); break;
                case "before" when key is { } known && before is null: before = Value(ref reader, known); break;
                case "after" when key is { } known && after is null: after = Value(ref reader, known); break;
                case "before" or "after" when key is null: throw new JsonException(Sentences.Say("json.missing", "'key'"));
                case "key" or "before" or "after": throw new JsonException(Sentences.Say("json.twice", field));
                default: throw new JsonException(Sentences.Say("json.unknown", field));
            }
        }
        return new Change(key ?? throw new JsonException(Sentences.Say("json.missing", "'key'")), before, after);

        object Value(ref Utf8JsonReader reader, Key known) => PlaceValue.Of(FacetBook.Find(known).ValueType).Read(ref reader, options);
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
