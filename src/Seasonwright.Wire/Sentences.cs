using Seasonwright.Core;

namespace Seasonwright.Wire;

/// <summary>Every sentence about a text that cannot be read, by id, from <c>Sentences.resx</c>.</summary>
internal static class Sentences
{
    private static readonly SentenceBook Book = new("Seasonwright.Wire.Sentences", typeof(Sentences).Assembly);

    /// <inheritdoc cref="SentenceBook.Say"/>
    public static string Say(string id, params object?[] numbers) => Book.Say(id, numbers);
}
