using System.Collections.Frozen;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Seasonwright.Wire;

/// <summary>Enums are words in camelCase, whatever letters a hand-written one is in.</summary>
internal sealed class WordConverter : JsonConverterFactory
{
    public override bool CanConvert(Type typeToConvert) => typeToConvert.IsEnum;

    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        (JsonConverter)Activator.CreateInstance(typeof(Of<>).MakeGenericType(typeToConvert))!;

    /// <summary>The words of an enum, in the order it declares them.</summary>
    public static IEnumerable<string> Words(Type type) => Enum.GetNames(type).Select(JsonNamingPolicy.CamelCase.ConvertName);

    private sealed class Of<T> : JsonConverter<T>
        where T : struct, Enum
    {
        private static readonly FrozenDictionary<string, T> Values = Enum.GetNames<T>()
            .ToFrozenDictionary(JsonNamingPolicy.CamelCase.ConvertName, Enum.Parse<T>, StringComparer.OrdinalIgnoreCase);

        private static readonly FrozenDictionary<T, string> Names = Values.ToFrozenDictionary(word => word.Value, word => word.Key);

        public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        {
            var text = WireText.Of(ref reader);
            return Values.TryGetValue(text, out var value) ? value
                : throw new JsonException(Sentences.Say("expected.word", WireText.Quoted(text), string.Join(", ", Words(typeof(T)))));
        }

        public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(Names[value]);
    }
}
