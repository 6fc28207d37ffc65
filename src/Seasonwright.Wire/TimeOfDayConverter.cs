using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Seasonwright.Wire;

/// <summary>Times of day as HH:mm.</summary>
internal sealed class TimeOfDayConverter : JsonConverter<TimeOnly>
{
    private const string Form = "HH:mm";

    public override TimeOnly Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var text = WireText.Of(ref reader);
        return TimeOnly.TryParseExact(text, Form, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time) ? time
            : throw new JsonException(Sentences.Say("expected.time", WireText.Quoted(text)));
    }

    public override void Write(Utf8JsonWriter writer, TimeOnly value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.ToString(Form, CultureInfo.InvariantCulture));
}
