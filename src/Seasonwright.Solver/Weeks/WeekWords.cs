using Seasonwright.Core;

namespace Seasonwright.Solver;

/// <summary>Every word of the week stage, by id, from <c>WeekWords.resx</c>.</summary>
internal static class WeekWords
{
    private static readonly SentenceBook Book = new("Seasonwright.Solver.WeekWords", typeof(WeekWords).Assembly);

    /// <inheritdoc cref="SentenceBook.Say"/>
    public static string Say(string id, params object?[] numbers) => Book.Say(id, numbers);

    /// <summary>What a condition asks, as a sentence.</summary>
    public static string Of(WeekCondition condition) => Say($"condition.{condition.Name}");
}
