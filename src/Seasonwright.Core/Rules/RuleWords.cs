namespace Seasonwright.Core.Rules;

/// <summary>Every word of the rulebook, by rule and id, from <c>RuleWords.resx</c>.</summary>
internal static class RuleWords
{
    private static readonly SentenceBook Book = new("Seasonwright.Core.Rules.RuleWords", typeof(RuleWords).Assembly);

    /// <inheritdoc cref="SentenceBook.Say"/>
    public static string Say(string id, params object?[] numbers) => Book.Say(id, numbers);

    /// <summary>The sentence with this id, or null.</summary>
    public static string? Find(string id) => Book.Find(id);
}
