using Seasonwright.Core;

namespace Seasonwright.Web;

/// <summary>Every sentence the pages say, by id, from <c>Words.resx</c>.</summary>
public static class Words
{
    private static readonly SentenceBook Book = new("Seasonwright.Web.Words", typeof(Words).Assembly);

    /// <inheritdoc cref="SentenceBook.Say"/>
    public static string Say(string id, params object?[] numbers) => Book.Say(id, numbers);
}
