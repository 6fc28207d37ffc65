using Seasonwright.Documents.Read.Events;

namespace Seasonwright.Documents.Read;

/// <summary>A line that became no row, and why. Every line of a file is part of a row or is found here.</summary>
/// <param name="Line">Physical line where it starts, 1 is the first.</param>
/// <param name="Text">The line as written, shortened to <see cref="LongestText"/> characters.</param>
/// <param name="Kind">For programs, for instance <c>headings</c>, <c>blank</c>, <c>bye</c>.</param>
/// <param name="Why">For people.</param>
public sealed record Skipped(int Line, string Text, string Kind, string Why)
{
    public const int LongestText = 80;

    /// <summary>A skipped line with the sentence <c>skipped.KIND</c>. A text that holds health details is not shown.</summary>
    public static Skipped Of(int line, string text, string kind, params object?[] values) =>
        new(line, HealthWords.In(text) ? "" : text.Length > LongestText ? text[..(LongestText - 3)] + "..." : text, kind, Sentences.Say($"skipped.{kind}", values));
}
