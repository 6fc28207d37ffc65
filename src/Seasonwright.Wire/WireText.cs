using System.Text.Json;
using System.Text.Json.Serialization;

namespace Seasonwright.Wire;

/// <summary>
/// What the converters share. They read with the reader they are given, never with one of their own, so that a problem is told
/// with the line and column of the whole text.
/// </summary>
internal static class WireText
{
    private const int Longest = 60;

    /// <exception cref="JsonException">Something else than a text stands here.</exception>
    public static string Of(ref Utf8JsonReader reader) =>
        reader.TokenType == JsonTokenType.String ? reader.GetString()! : throw new JsonException(Sentences.Say("expected.text"));

    /// <summary>A text as a sentence names it, cut where it is long.</summary>
    public static string Quoted(string text) => text.Length <= Longest ? $"'{text}'" : $"'{text[..Longest]}...'";

    /// <summary>Reads a value of the type; null is none.</summary>
    public static T Value<T>(ref Utf8JsonReader reader, JsonSerializerOptions options)
    {
        if (reader.TokenType == JsonTokenType.Null) throw new JsonException(Sentences.Say("expected.something"));
        return ((JsonConverter<T>)options.GetConverter(typeof(T))).Read(ref reader, typeof(T), options)!;
    }

    public static T Parse<T>(ref Utf8JsonReader reader, Func<string, T> parse)
    {
        var text = Of(ref reader);
        try
        {
            return parse(text);
        }
        catch (Exception error) when (error is FormatException or ArgumentException or OverflowException)
        {
            throw new JsonException(error.Message, error);
        }
    }

    /// <summary>Moves on to the next token of an object's or a list's inside.</summary>
    public static bool Next(ref Utf8JsonReader reader, JsonTokenType end)
    {
        if (!reader.Read()) throw new JsonException(Sentences.Say("json.ends"));
        return reader.TokenType != end;
    }
}
