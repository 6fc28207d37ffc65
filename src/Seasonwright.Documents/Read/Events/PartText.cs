using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Events;

/// <summary>A part of the day that a cell or remark names by itself.</summary>
internal static class PartText
{
    /// <summary>A cell of parts or times: in the usual words where they are known, else as written.</summary>
    public static string? Of(string? cell) => cell is null ? null : Alone(cell) ?? cell;

    /// <summary>A text that is nothing but a part of the day ("evening", "half day", "14:00-16:00"); null for any other.</summary>
    public static string? Alone(string text) => new SpanFinder(text, true).PartAlone()?.Words;
}
