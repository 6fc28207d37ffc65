using System.Text.Json;

namespace Seasonwright.Wire;

/// <summary>Why a text could not be read.</summary>
/// <param name="Line">1-based, null where unknown.</param>
/// <param name="Column">1-based position in bytes, null where unknown.</param>
/// <param name="What">What is wrong.</param>
/// <param name="Mend">How to mend it.</param>
public sealed record WireProblem(long? Line, long? Column, string What, string Mend)
{
    public static WireProblem Of(JsonException error)
    {
        // The library repeats path and position behind the message; the position has columns of its own here.
        var what = error.Message;
        var tail = what.IndexOf(" Path: ", StringComparison.Ordinal);
        if (tail < 0) tail = what.IndexOf(" LineNumber: ", StringComparison.Ordinal);
        if (tail > 0) what = what[..tail];
        var path = string.IsNullOrEmpty(error.Path) || error.Path == "$" ? "" : $" (at {error.Path})";
        return new(error.LineNumber + 1, error.BytePositionInLine + 1, what + path, "Mend the text there, or take a file that Seasonwright wrote.");
    }

    public override string ToString() => (Line, Column) is ({ } line, { } column) ? $"line {line}, column {column}: {What} {Mend}" : $"{What} {Mend}";
}
