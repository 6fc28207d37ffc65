using System.Collections.Immutable;
using Seasonwright.Core;

namespace Seasonwright.Documents.Year;

/// <summary>Every word the year's drawing says, by id, from <c>YearTexts.resx</c>.</summary>
public static class YearTexts
{
    private static readonly SentenceBook Book = new("Seasonwright.Documents.Year.YearTexts", typeof(YearTexts).Assembly);

    /// <inheritdoc cref="SentenceBook.Say"/>
    public static string Say(string id, params object?[] values) => Book.Say(id, values);

    /// <summary>The forms of a word from long to short, parted by '|' in the resource.</summary>
    internal static ImmutableArray<string> Forms(string id) => [.. Say(id).Split('|')];

    /// <summary>One of a thing has a text of its own ("one home match"), more share one with the number.</summary>
    internal static string Count(string id, int count) => count == 1 ? Say(id + ".one") : Say(id + ".many", count);
}
