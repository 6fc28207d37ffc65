using System.Text.Json;
using System.Text.RegularExpressions;

namespace Seasonwright.Wire;

/// <summary>
/// Says in the house's words what the JSON library found. It tells its findings apart by their English sentences only, so those
/// are looked at here and nowhere else; a test brings each of them about.
/// </summary>
internal static partial class JsonWords
{
    private const RegexOptions Whole = RegexOptions.Singleline | RegexOptions.ExplicitCapture;

    /// <returns>What is wrong, how to mend it, and the field that is missing or null where that is what is wrong.</returns>
    public static (string What, string Mend, string? Missing) Of(JsonException error)
    {
        var message = Message(error);
        if (error.InnerException?.GetType().Name == "JsonReaderException" || error.GetType() != typeof(JsonException))
            return Ends().IsMatch(message) ? Said("json.ends", "mend.ends") : Said("json.syntax", "mend.there", FirstSentence(message));
        if (Unmapped().Match(message) is { Success: true } unmapped) return Said("json.unknown", "mend.unknown", unmapped.Groups["word"].Value);
        if (Missing().Match(message) is { Success: true } missing) return Said("json.missing", "mend.missing", missing.Groups["word"].Value) with { Missing = missing.Groups["word"].Value.Split('\'')[1] };
        if (Duplicate().Match(message) is { Success: true } twice) return Said("json.twice", "mend.twice", twice.Groups["word"].Value);
        if (Null().Match(message) is { Success: true } none && JsonNamingPolicy.CamelCase.ConvertName(none.Groups["word"].Value) is var field)
            return Said("json.null", "mend.null", field) with { Missing = field };
        if (Discriminator().Match(message) is { Success: true } edit) return Edit(edit.Groups["word"].Value);
        // The token's own kind is told by what caused the finding; the finding itself names only what it stands in.
        if (error.InnerException?.Message is { } cause && Token().Match(cause) is { Success: true } token)
            return Said(token.Groups["word"].Value == "boolean" ? "expected.truth" : "expected.whole", "mend.there");
        if (error.InnerException?.Message is { } why && Number().Match(why) is { Success: true } number)
            return Said(number.Groups["word"].Value == "Int32" ? "expected.whole" : "expected.number", "mend.there");
        if (Unconverted().Match(message) is { Success: true } type) return Said(Expected(type.Groups["word"].Value), "mend.there");
        return (message, Sentences.Say("mend.there"), null);
    }

    private static (string What, string Mend, string? Missing) Said(string what, string mend, params object?[] words) => (Sentences.Say(what, words), Sentences.Say(mend, words), null);

    private static (string What, string Mend, string? Missing) Edit(string name)
    {
        var near = EditNames.Nearest(name);
        return (Sentences.Say("edit.unknown", name), near is null ? Sentences.Say("mend.edit") : Sentences.Say("mend.edit-near", near), null);
    }

    private static string Expected(string type) => type switch
    {
        "System.String" => "expected.text",
        "System.Int32" => "expected.whole",
        "System.Decimal" => "expected.number",
        "System.Boolean" => "expected.truth",
        _ when type.StartsWith("Seasonwright.", StringComparison.Ordinal) => "expected.object",
        _ => "json.unreadable",
    };

    /// <summary>Without the path and position that the library puts behind it.</summary>
    private static string Message(JsonException error) => Tail().Replace(error.Message, "");

    private static string FirstSentence(string message) => message.IndexOf(". ", StringComparison.Ordinal) is > 0 and var stop ? message[..(stop + 1)] : message;

    [GeneratedRegex(@"( Path: .*)? (\| )?LineNumber: \d+ \| BytePositionInLine: \d+\.$", Whole, 1000)]
    private static partial Regex Tail();

    // A number at which the text ends is told as a digit that ends it.
    [GeneratedRegex(@"end of data|^'\d' is an invalid end of a number|Expected depth to be zero|does not contain any JSON tokens", Whole, 1000)]
    private static partial Regex Ends();

    [GeneratedRegex("^The JSON property '(?<word>.*)' could not be mapped", Whole, 1000)]
    private static partial Regex Unmapped();

    [GeneratedRegex("missing required properties including: (?<word>.*?)\\.$", Whole, 1000)]
    private static partial Regex Missing();

    [GeneratedRegex("^Duplicate property '(?<word>.*)' encountered", Whole, 1000)]
    private static partial Regex Duplicate();

    [GeneratedRegex("^The (property or field|constructor parameter) '(?<word>.*)' on type .* doesn't allow", Whole, 1000)]
    private static partial Regex Null();

    [GeneratedRegex("unrecognized type discriminator id '(?<word>.*)'", Whole, 1000)]
    private static partial Regex Discriminator();

    [GeneratedRegex("^Cannot get the value of a token type '.*' as a (?<word>boolean|number)", Whole, 1000)]
    private static partial Regex Token();

    [GeneratedRegex(@"^Either the JSON value is not in a supported format, or is out of bounds for an? (?<word>\w+)", Whole, 1000)]
    private static partial Regex Number();

    [GeneratedRegex(@"could not be converted to (?<word>.*?)\.?$", Whole, 1000)]
    private static partial Regex Unconverted();
}
