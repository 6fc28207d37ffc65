using Seasonwright.Core;

namespace Seasonwright.Cli;

/// <summary>Every sentence the command line says to people, by id, from <c>Texts.resx</c>.</summary>
internal static class Texts
{
    private static readonly SentenceBook Book = new("Seasonwright.Cli.Texts", typeof(Texts).Assembly);

    /// <inheritdoc cref="SentenceBook.Say"/>
    public static string Say(string id, params object?[] numbers) => Book.Say(id, numbers);
}
