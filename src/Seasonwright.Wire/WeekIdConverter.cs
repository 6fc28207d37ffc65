using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Wire;

/// <summary>A week id; in edits written by hand also a week number or a day of the week.</summary>
/// <param name="season">Whose weeks are meant; null where only ids are read.</param>
internal sealed class WeekIdConverter(Season? season) : JsonConverter<WeekId>
{
    public override WeekId Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (season is not null && reader.TokenType == JsonTokenType.Number)
            return reader.TryGetInt32(out var number) ? OfNumber(season, number) : throw new JsonException(Sentences.Say("expected.whole"));
        if (season is not null && reader.TokenType == JsonTokenType.String
            && DateOnly.TryParseExact(reader.GetString(), "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            return season.WeekOf(day)?.Id ?? None(season, day.ToString("O", CultureInfo.InvariantCulture));
        }
        return WireText.Parse(ref reader, WeekId.Parse);
    }

    public override void Write(Utf8JsonWriter writer, WeekId value, JsonSerializerOptions options) => writer.WriteStringValue(value.Text);

    public static WeekId OfNumber(Season season, int number) => number >= 1 && number <= season.Weeks.Length ? season.Weeks[number - 1].Id
        : None(season, number.ToString(CultureInfo.InvariantCulture));

    /// <summary>An id that no week has: the line is well written, and the decision refuses it by the name it gave.</summary>
    private static WeekId None(Season season, string name) => new WeekId(name) is var id && season.Week(id) is null ? id
        : throw new JsonException(Sentences.Say("edit.first", name));
}
