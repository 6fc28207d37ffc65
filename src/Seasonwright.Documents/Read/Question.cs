using Seasonwright.Core;

namespace Seasonwright.Documents.Read;

/// <summary>Something the file does not say. Until it is answered the rows stay in their weaker form; nothing is guessed.</summary>
/// <param name="Id">
/// Short, one per file: the kind, from the second of a kind on with a number (<c>Q-spelling</c>, <c>Q-spelling-2</c>).
/// It may be another question's in another file; remember answers by <paramref name="Key"/>.
/// </param>
/// <param name="Key">The kind and what it is about, the same in every file that raises it (<c>Q-spelling:skarholm i.f.|skarholm if</c>).</param>
/// <param name="Text">The question in words.</param>
/// <param name="Options">What may be answered; empty when only free text answers it.</param>
/// <param name="Free">Words for what else may be answered (a date, a season), or null when only an option may.</param>
/// <param name="UntilAnswered">What holds meanwhile, in words.</param>
/// <param name="Offered">The option shown as chosen, or null. It holds only once it is confirmed.</param>
/// <param name="Lines">Physical lines of the rows it concerns, ascending.</param>
public sealed record Question(
    string Id,
    string Key,
    string Text,
    ValueList<AnswerOption> Options,
    string? Free,
    string UntilAnswered,
    string? Offered,
    ValueList<int> Lines)
{
    /// <summary>The part of the key before the colon, for instance <c>Q-spelling</c>.</summary>
    public string Kind => Key.Split(':')[0];
}

/// <summary>One possible answer.</summary>
/// <param name="Id">What an answer names, for instance <c>day-first</c>.</param>
/// <param name="Text">The same in words.</param>
public sealed record AnswerOption(string Id, string Text);

/// <summary>A question that has been answered, kept so that a preview can show it and take it back.</summary>
/// <param name="Answer">The option's id, or the free answer.</param>
public sealed record Answered(Question Question, string Answer);
