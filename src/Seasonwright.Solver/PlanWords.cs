using Seasonwright.Core;

namespace Seasonwright.Solver;

/// <summary>Every word of the engine, by id, from <c>PlanWords.resx</c>.</summary>
internal static class PlanWords
{
    private static readonly SentenceBook Book = new("Seasonwright.Solver.PlanWords", typeof(PlanWords).Assembly);

    /// <inheritdoc cref="SentenceBook.Say"/>
    public static string Say(string id, params object?[] numbers) => Book.Say(id, numbers);

    /// <summary>What a condition asks, as part of a sentence.</summary>
    public static string Of(Condition condition) => Say($"condition.{condition.Name}");
}
