using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Seasonwright.Wire;

/// <summary>Times of day as HH:mm.</summary>
internal sealed class TimeOfDayConverter : JsonConverter<TimeOnly>
{
    private const string Form = "HH:mm";

    public override TimeOnly Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        WireText.Parse(ref reader, text => TimeOnly.ParseExact(text, Form, CultureInfo.InvariantCulture));

    public override void Write(Utf8JsonWriter writer, TimeOnly value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.ToString(Form, CultureInfo.InvariantCulture));
}
