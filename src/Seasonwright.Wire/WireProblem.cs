using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Seasonwright.Wire;

/// <summary>Why a text could not be read.</summary>
/// <param name="Line">1-based, null where unknown.</param>
/// <param name="Column">Letters of the line that were read before it was noticed, plus 1; null where unknown.</param>
/// <param name="What">What is wrong.</param>
/// <param name="Mend">How to mend it.</param>
public sealed partial record WireProblem(long? Line, long? Column, string What, string Mend)
{
    /// <summary>Path of the field it is about within its edit or file, for instance "match.kickOff"; null where it is about the whole text.</summary>
    public string? Field { get; init; }

    /// <summary>Whether the field holds nothing, or is not there, where something must be.</summary>
    public bool IsMissing { get; init; }

    /// <summary>What is wrong, without saying where.</summary>
    public string Finding { get; init; } = What;

    internal static WireProblem Say(string what, string mend, params object?[] words) =>
        new(null, null, Sentences.Say(what, words), Sentences.Say(mend, words));

    /// <param name="text">The text that was read.</param>
    internal static WireProblem Of(JsonException error, ReadOnlySpan<byte> text)
    {
        var (what, mend, missing) = JsonWords.Of(error);
        var field = Inside().Match(error.Path ?? "") is { Success: true } path ? path.Groups["field"].Value : null;
        var read = Read(error, text);
        return new(error.LineNumber + 1, read is null ? null : read.EnumerateRunes().Count() + 1, (field is null ? "" : Sentences.Say("field", field)) + what, mend)
        {
            // What is missing is told in the object it should stand in, or in its own place.
            Field = missing is null || field?.Split('.')[^1] == missing ? field : field is null ? missing : $"{field}.{missing}",
            Finding = what,
            IsMissing = missing is not null || read?.EndsWith("null", StringComparison.Ordinal) == true,
        };
    }

    public override string ToString() => (Line, Column) switch
    {
        ({ } line, { } column) => Sentences.Say("at.column", line, column, What, Mend),
        ({ } line, null) => Sentences.Say("at.line", line, What, Mend),
        _ => $"{What} {Mend}",
    };

    /// <summary>What of the line was read before it was noticed, in letters, as people count them; the reader counts bytes. Null where unknown.</summary>
    private static string? Read(JsonException error, ReadOnlySpan<byte> text)
    {
        if (error.LineNumber is not { } line || error.BytePositionInLine is not { } bytes) return null;
        foreach (var range in text.Split((byte)'\n'))
        {
            if (line-- > 0) continue;
            var before = text[range];
            return Encoding.UTF8.GetString(before[..(int)Math.Min(bytes, before.Length)]);
        }
        return null;
    }

    // An edit of a list has its place in the list before its fields.
    [GeneratedRegex(@"^\$(\[\d+\])?\.(?<field>.+)$", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Inside();
}
