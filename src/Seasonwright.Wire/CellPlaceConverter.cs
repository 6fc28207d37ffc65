using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Wire;

/// <summary>The place of an own cell: "w=" and a week id, or "d=" and a day; in edits written by hand also a week number or a day alone.</summary>
/// <param name="season">Whose weeks are meant; null where only whole places are read.</param>
internal sealed class CellPlaceConverter(Season? season) : JsonConverter<CellPlace>
{
    public override CellPlace Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (season is not null && reader.TokenType == JsonTokenType.Number && reader.TryGetInt32(out var number))
            return CellPlace.Of(WeekIdConverter.OfNumber(season, number));
        if (season is not null && reader.TokenType == JsonTokenType.String
            && DateOnly.TryParseExact(reader.GetString(), "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            return CellPlace.Of(day);
        }
        return WireText.Parse(ref reader, CellPlace.Parse);
    }

    public override void Write(Utf8JsonWriter writer, CellPlace value, JsonSerializerOptions options) => writer.WriteStringValue(value.ToString());
}
