using Seasonwright.Core;

namespace Seasonwright.Documents.Read;

/// <summary>Every sentence the readers say to people, by id, from <c>Read/Sentences.resx</c>.</summary>
internal static class Sentences
{
    private static readonly SentenceBook Book = new("Seasonwright.Documents.Read.Sentences", typeof(Sentences).Assembly);

    /// <inheritdoc cref="SentenceBook.Say"/>
    public static string Say(string id, params object?[] numbers) => Book.Say(id, numbers);
}
