using System.Text.Json;
using System.Text.Json.Serialization;
using Seasonwright.Core.Quantities;

namespace Seasonwright.Wire;

/// <summary>Quantities are bare numbers (load in AU, per cent, minutes, RPE) or what people write: a weight "102.5 kg", a tempo "3-1-X-0".</summary>
internal sealed class QuantityConverter : JsonConverterFactory
{
    public override bool CanConvert(Type typeToConvert) =>
        typeToConvert == typeof(Load) || typeToConvert == typeof(Percent) || typeToConvert == typeof(Minutes) || typeToConvert == typeof(Rpe)
        || typeToConvert == typeof(Weight) || typeToConvert == typeof(Tempo);

    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        typeToConvert == typeof(Load) ? new Whole<Load>(Load.Most, au => new Load(au), load => load.Au)
        : typeToConvert == typeof(Percent) ? new Whole<Percent>(Percent.Most, value => new Percent(value), percent => percent.Value)
        : typeToConvert == typeof(Minutes) ? new Whole<Minutes>(MostMinutes, value => new Minutes(value), minutes => minutes.Value)
        : typeToConvert == typeof(Rpe) ? new RpeConverter()
        : typeToConvert == typeof(Weight) ? new Written<Weight>(text => Weight.TryParse(text, out var weight) ? weight : null, "expected.weight")
        : new Written<Tempo>(text => Tempo.Parse(text), "expected.tempo");

    private const int MostMinutes = 1440;

    private sealed class Whole<T>(int most, Func<int, T> make, Func<T, int> number) : JsonConverter<T>
    {
        public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        {
            if (reader.TokenType != JsonTokenType.Number || !reader.TryGetInt32(out var value)) throw new JsonException(Sentences.Say("expected.whole"));
            return value >= 0 && value <= most ? make(value) : throw new JsonException(Sentences.Say("expected.bounds", 0, most));
        }

        public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteNumberValue(number(value));
    }

    /// <summary>What is written as its own text; <paramref name="parse"/> gives null for what is none.</summary>
    private sealed class Written<T>(Func<string, object?> parse, string expected) : JsonConverter<T>
    {
        public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            parse(WireText.Of(ref reader)) is T value ? value : throw new JsonException(Sentences.Say(expected));

        public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(value!.ToString());
    }

    private sealed class RpeConverter : JsonConverter<Rpe>
    {
        public override Rpe Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        {
            if (reader.TokenType != JsonTokenType.Number || !reader.TryGetDecimal(out var value)) throw new JsonException(Sentences.Say("expected.number"));
            return value is >= 0 and <= 10 && value * 2 == decimal.Truncate(value * 2) ? new Rpe(value) : throw new JsonException(Sentences.Say("expected.halves"));
        }

        public override void Write(Utf8JsonWriter writer, Rpe value, JsonSerializerOptions options) => writer.WriteNumberValue(value.Value);
    }
}
