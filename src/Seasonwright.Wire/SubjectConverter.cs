using System.Text.Json;
using System.Text.Json.Serialization;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Wire;

/// <summary>Ids and other subjects of keys are written as their text.</summary>
internal sealed class SubjectConverter : JsonConverterFactory
{
    public override bool CanConvert(Type typeToConvert) => typeToConvert.IsValueType
        && typeToConvert.GetInterfaces().Any(face => face.IsGenericType && face.GetGenericTypeDefinition() == typeof(ISubject<>));

    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        (JsonConverter)Activator.CreateInstance(typeof(Of<>).MakeGenericType(typeToConvert))!;

    private sealed class Of<T> : JsonConverter<T>
        where T : struct, ISubject<T>
    {
        public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            WireText.Parse(ref reader, T.Parse);

        public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(value.ToString());
    }
}

/// <summary>A week id; in edits written by hand also a week number or a day of the week.</summary>
internal sealed class WeekIdConverter(Season? season) : JsonConverter<WeekId>
{
    public override WeekId Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (season is not null && reader.TokenType == JsonTokenType.Number && reader.TryGetInt32(out var number))
        {
            return number >= 1 && number <= season.Weeks.Length ? season.Weeks[number - 1].Id
                : throw new JsonException($"There is no week {number}; the season has weeks 1 to {season.Weeks.Length}.");
        }
        if (season is not null && reader.TokenType == JsonTokenType.String
            && DateOnly.TryParseExact(reader.GetString(), "O", System.Globalization.CultureInfo.InvariantCulture, System.Globalization.DateTimeStyles.None, out var day))
        {
            return season.WeekOf(day)?.Id ?? throw new JsonException($"{day:O} lies outside the season.");
        }
        return WireText.Parse(ref reader, WeekId.Parse);
    }

    public override void Write(Utf8JsonWriter writer, WeekId value, JsonSerializerOptions options) => writer.WriteStringValue(value.Text);
}
