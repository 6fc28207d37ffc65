using System.Text.Json;
using System.Text.Json.Serialization;
using Seasonwright.Core;

namespace Seasonwright.Wire;

/// <summary>Value lists are JSON arrays.</summary>
internal sealed class ValueListConverter : JsonConverterFactory
{
    public override bool CanConvert(Type typeToConvert) => typeToConvert.IsGenericType && typeToConvert.GetGenericTypeDefinition() == typeof(ValueList<>);

    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        (JsonConverter)Activator.CreateInstance(typeof(Of<>).MakeGenericType(typeToConvert.GetGenericArguments()))!;

    private sealed class Of<T> : JsonConverter<ValueList<T>>
    {
        public override ValueList<T> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        {
            if (reader.TokenType != JsonTokenType.StartArray) throw new JsonException(Sentences.Say("expected.list"));
            var items = new List<T>();
            while (WireText.Next(ref reader, JsonTokenType.EndArray)) items.Add(WireText.Value<T>(ref reader, options));
            return new(items);
        }

        public override void Write(Utf8JsonWriter writer, ValueList<T> value, JsonSerializerOptions options)
        {
            writer.WriteStartArray();
            foreach (var item in value) JsonSerializer.Serialize(writer, item, options);
            writer.WriteEndArray();
        }
    }
}
