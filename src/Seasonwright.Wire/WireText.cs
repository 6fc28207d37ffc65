using System.Text.Json;

namespace Seasonwright.Wire;

/// <summary>Reads a value from its text; what the text cannot be becomes a sentence about the JSON.</summary>
internal static class WireText
{
    public static T Parse<T>(ref Utf8JsonReader reader, Func<string, T> parse)
    {
        if (reader.TokenType != JsonTokenType.String) throw new JsonException($"A text is expected here, not {reader.TokenType}.");
        try
        {
            return parse(reader.GetString()!);
        }
        catch (Exception error) when (error is FormatException or ArgumentException or OverflowException)
        {
            throw new JsonException(error.Message, error);
        }
    }
}
