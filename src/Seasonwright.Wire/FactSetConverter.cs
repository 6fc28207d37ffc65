using System.Text.Json;
using System.Text.Json.Serialization;
using Seasonwright.Core.Facts;

namespace Seasonwright.Wire;

/// <summary>Facts by family and subject, both in ordinal order: {"match":{"m1":{...}},"week.load":{"w1":2432}}. A family of one place has the subject "".</summary>
internal sealed class FactSetConverter : JsonConverter<FactSet>
{
    public override FactSet Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        using var document = JsonDocument.ParseValue(ref reader);
        if (document.RootElement.ValueKind != JsonValueKind.Object) throw new JsonException("Facts are an object of families.");
        var facts = FactSet.Empty;
        foreach (var family in document.RootElement.EnumerateObject())
        {
            if (family.Value.ValueKind != JsonValueKind.Object) throw new JsonException($"'{family.Name}' is an object of subjects.");
            foreach (var place in family.Value.EnumerateObject())
            {
                var key = new Key(family.Name, place.Name);
                var value = place.Value.Deserialize(FacetBook.Find(key).ValueType, options) ?? throw new JsonException($"'{key}' holds null.");
                if (facts[key] is not null) throw new JsonException($"'{key}' stands twice.");
                facts = facts.With(key, value);
            }
        }
        return facts;
    }

    public override void Write(Utf8JsonWriter writer, FactSet value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        foreach (var family in value.Keys.GroupBy(key => key.Facet, StringComparer.Ordinal))
        {
            writer.WriteStartObject(family.Key);
            foreach (var key in family)
            {
                writer.WritePropertyName(key.Subject);
                JsonSerializer.Serialize(writer, value[key], FacetBook.Find(key.Facet).ValueType, options);
            }
            writer.WriteEndObject();
        }
        writer.WriteEndObject();
    }
}
