using Seasonwright.Core;

namespace Seasonwright.Desk.Lists;

/// <summary>Every word about pasted cells, by id, from <c>PasteTexts.resx</c>.</summary>
internal static class PasteTexts
{
    private static readonly SentenceBook Book = new("Seasonwright.Desk.Lists.PasteTexts", typeof(PasteTexts).Assembly);

    /// <inheritdoc cref="SentenceBook.Say"/>
    public static string Say(string id, params object?[] values) => Book.Say(id, values);
}
