using System.Text.Json;
using System.Text.Json.Serialization;
using Seasonwright.Core.Facts;

namespace Seasonwright.Wire;

/// <summary>Facts by family and subject, both in ordinal order: {"match":{"m1":{...}},"week.load":{"w1":2432}}. A family of one place has the subject "".</summary>
internal sealed class FactSetConverter : JsonConverter<FactSet>
{
    public override FactSet Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.StartObject) throw new JsonException(Sentences.Say("expected.object"));
        var facts = FactSet.Empty;
        var families = new HashSet<string>(StringComparer.Ordinal);
        while (WireText.Next(ref reader, JsonTokenType.EndObject))
        {
            var family = reader.GetString()!;
            if (!families.Add(family)) throw new JsonException(Sentences.Say("place.twice", family));
            if (!reader.Read() || reader.TokenType != JsonTokenType.StartObject) throw new JsonException(Sentences.Say("expected.object"));
            while (WireText.Next(ref reader, JsonTokenType.EndObject))
            {
                var key = new Key(family, reader.GetString()!);
                var type = FacetBook.Find(key).ValueType;
                if (facts[key] is not null) throw new JsonException(Sentences.Say("place.twice", key));
                reader.Read();
                facts = facts.With(key, PlaceValue.Of(type).Read(ref reader, options));
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
