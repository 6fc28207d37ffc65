namespace Seasonwright.Core.Edits;

/// <summary>Why an edit was not done.</summary>
/// <param name="Id">Stable, for scripts and tests, for instance "week-locked".</param>
/// <param name="Subject">What it concerns: a key or the name of a field.</param>
/// <param name="Sentence">What is wrong and how to mend it, for people.</param>
public sealed record Refusal(string Id, string Subject, string Sentence)
{
    public static Refusal Say(string id, string subject, params object?[] numbers) => new(id, subject, Sentences.Say($"refused.{id}", numbers));
}
