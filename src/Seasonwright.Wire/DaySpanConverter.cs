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
        var form = JsonSerializer.Deserialize<Form>(ref reader, options) ?? throw new JsonException("A span of days is expected here.");
        return form.First <= form.Last ? new DaySpan(form.First, form.Last)
            : throw new JsonException($"The span ends ({form.Last:O}) before it starts ({form.First:O}).");
    }

    public override void Write(Utf8JsonWriter writer, DaySpan value, JsonSerializerOptions options) =>
        JsonSerializer.Serialize(writer, new Form(value.First, value.Last), options);
}
