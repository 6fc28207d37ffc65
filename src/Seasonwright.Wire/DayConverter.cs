using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Seasonwright.Wire;

/// <summary>Days as yyyy-MM-dd.</summary>
internal sealed class DayConverter : JsonConverter<DateOnly>
{
    private const string Form = "yyyy-MM-dd";

    public override DateOnly Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var text = WireText.Of(ref reader);
        return DateOnly.TryParseExact(text, Form, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day
            : throw new JsonException(Sentences.Say("expected.day", WireText.Quoted(text)));
    }

    public override void Write(Utf8JsonWriter writer, DateOnly value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.ToString(Form, CultureInfo.InvariantCulture));
}
