using System.Text.Json;
using System.Text.Json.Serialization;
using Seasonwright.Core.Quantities;

namespace Seasonwright.Wire;

/// <summary>Quantities are bare numbers: load in AU, per cent, minutes, RPE.</summary>
internal sealed class QuantityConverter : JsonConverterFactory
{
    public override bool CanConvert(Type typeToConvert) =>
        typeToConvert == typeof(Load) || typeToConvert == typeof(Percent) || typeToConvert == typeof(Minutes) || typeToConvert == typeof(Rpe);

    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        typeToConvert == typeof(Load) ? new Whole<Load>(au => new Load(au), load => load.Au)
        : typeToConvert == typeof(Percent) ? new Whole<Percent>(value => new Percent(value), percent => percent.Value)
        : typeToConvert == typeof(Minutes) ? new Whole<Minutes>(value => new Minutes(value), minutes => minutes.Value)
        : new RpeConverter();

    private static T Born<T>(Func<T> make)
    {
        try
        {
            return make();
        }
        catch (ArgumentException error)
        {
            throw new JsonException(error.Message, error);
        }
    }

    private sealed class Whole<T>(Func<int, T> make, Func<T, int> number) : JsonConverter<T>
    {
        public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType == JsonTokenType.Number && reader.TryGetInt32(out var value) ? Born(() => make(value))
            : throw new JsonException("A whole number is expected here.");

        public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteNumberValue(number(value));
    }

    private sealed class RpeConverter : JsonConverter<Rpe>
    {
        public override Rpe Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType == JsonTokenType.Number && reader.TryGetDecimal(out var value) ? Born(() => new Rpe(value))
            : throw new JsonException("A number is expected here.");

        public override void Write(Utf8JsonWriter writer, Rpe value, JsonSerializerOptions options) => writer.WriteNumberValue(value.Value);
    }
}
