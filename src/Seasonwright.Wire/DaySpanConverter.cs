using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Seasonwright.Core.Calendar;

namespace Seasonwright.Wire;

/// <summary>A span of days as {"first","last"}, both inside.</summary>
internal sealed class DaySpanConverter : JsonConverter<DaySpan>
{
    private sealed record Form(DateOnly First, DateOnly Last);

    public override DaySpan Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var form = WireText.Value<Form>(ref reader, options);
        return form.First <= form.Last ? new DaySpan(form.First, form.Last)
            : throw new JsonException(Sentences.Say("span.backward", form.First.ToString("O", CultureInfo.InvariantCulture), form.Last.ToString("O", CultureInfo.InvariantCulture)));
    }

    public override void Write(Utf8JsonWriter writer, DaySpan value, JsonSerializerOptions options) =>
        JsonSerializer.Serialize(writer, new Form(value.First, value.Last), options);
}
