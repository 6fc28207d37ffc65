using Seasonwright.Core;

namespace Seasonwright.Documents.HandOut;

/// <summary>Every word on what is handed out, by id, from <c>HandOutTexts.resx</c>.</summary>
public static class HandOutTexts
{
    private static readonly SentenceBook Book = new("Seasonwright.Documents.HandOut.HandOutTexts", typeof(HandOutTexts).Assembly);

    /// <inheritdoc cref="SentenceBook.Say"/>
    public static string Say(string id, params object?[] values) => Book.Say(id, values);
}
