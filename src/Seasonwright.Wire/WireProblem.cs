using System.Text;
using System.Text.Json;

namespace Seasonwright.Wire;

/// <summary>Why a text could not be read.</summary>
/// <param name="Line">1-based, null where unknown.</param>
/// <param name="Column">Letters of the line that were read before it was noticed, plus 1; null where unknown.</param>
/// <param name="What">What is wrong.</param>
/// <param name="Mend">How to mend it.</param>
public sealed record WireProblem(long? Line, long? Column, string What, string Mend)
{
    internal static WireProblem Say(string what, string mend, params object?[] words) =>
        new(null, null, Sentences.Say(what, words), Sentences.Say(mend, words));

    /// <param name="text">The text that was read.</param>
    internal static WireProblem Of(JsonException error, ReadOnlySpan<byte> text)
    {
        var (what, mend) = JsonWords.Of(error);
        var field = error.Path is { Length: > 2 } path && path.StartsWith("$.", StringComparison.Ordinal) ? Sentences.Say("field", path[2..]) : "";
        return new(error.LineNumber + 1, ColumnOf(error, text), field + what, mend);
    }

    public override string ToString() => (Line, Column) switch
    {
        ({ } line, { } column) => Sentences.Say("at.column", line, column, What, Mend),
        ({ } line, null) => Sentences.Say("at.line", line, What, Mend),
        _ => $"{What} {Mend}",
    };

    /// <summary>The reader counts bytes; people count letters.</summary>
    private static long? ColumnOf(JsonException error, ReadOnlySpan<byte> text)
    {
        if (error.LineNumber is not { } line || error.BytePositionInLine is not { } bytes) return null;
        foreach (var range in text.Split((byte)'\n'))
        {
            if (line-- > 0) continue;
            var before = text[range];
            return Encoding.UTF8.GetString(before[..(int)Math.Min(bytes, before.Length)]).EnumerateRunes().Count() + 1;
        }
        return null;
    }
}
