namespace Seasonwright.Core;

/// <summary>Every sentence Core says to people, by id, from <c>Sentences.resx</c>.</summary>
public static class Sentences
{
    private static readonly SentenceBook Book = new("Seasonwright.Core.Sentences", typeof(Sentences).Assembly);

    /// <inheritdoc cref="SentenceBook.Say"/>
    public static string Say(string id, params object?[] numbers) => Book.Say(id, numbers);
}
