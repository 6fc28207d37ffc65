using Seasonwright.Core;

namespace Seasonwright.Documents.Read;

/// <summary>Collects a reader's questions, and hands back at once what has been answered already.</summary>
public sealed class Asker(Answers answers)
{
    private readonly List<Question> open = [];
    private readonly List<Answered> answered = [];

    /// <summary>Questions without a usable answer, in the order asked.</summary>
    public ValueList<Question> Open => open.ToValueList();

    public ValueList<Answered> Answered => answered.ToValueList();

    /// <summary>
    /// Asks <c>ask.KIND.text</c>, with <c>ask.KIND.until</c> for what holds meanwhile. Kinds are sentence ids without the Q:
    /// <c>spelling</c> makes the question <c>Q-spelling</c>.
    /// </summary>
    /// <param name="about">What tells this question from others of its kind, in any file; empty when a file has only one.</param>
    /// <param name="lines">Lines of the rows that need the answer.</param>
    /// <param name="options">Ids of the options, each with the sentence <c>ask.KIND.OPTION</c>, or with its own words.</param>
    /// <param name="offered">The option shown as chosen.</param>
    /// <param name="takes">Whether a free answer is a good one; null when only options are taken.</param>
    /// <param name="name">Another name than <c>Q-KIND</c>.</param>
    public Asked Ask(string kind, string about, IEnumerable<int> lines, IEnumerable<AnswerOption> options, object?[] values,
        string? offered = null, Func<string, bool>? takes = null, string? name = null)
    {
        var stem = name ?? $"Q-{kind}";
        var number = 1 + open.Concat(answered.Select(a => a.Question)).Count(q => q.Kind == stem);
        var question = new Question(
            number == 1 ? stem : FormattableString.Invariant($"{stem}-{number}"),
            about.Length == 0 ? stem : $"{stem}:{about}",
            Sentences.Say($"ask.{kind}.text", values), options.ToValueList(), takes is null ? null : Sentences.Say($"ask.{kind}.free"),
            Sentences.Say($"ask.{kind}.until", values), offered, lines.Distinct().Order().ToValueList());
        var answer = Usable(answers.Find(question.Key, question.Id), question, takes);
        if (answer is null) open.Add(question);
        else answered.Add(new Answered(question, answer));
        return new Asked(question.Id, answer);
    }

    /// <summary>An option with the sentence <c>ask.KIND.OPTION</c>.</summary>
    public static AnswerOption Option(string kind, string id, params object?[] values) => new(id, Sentences.Say($"ask.{kind}.{id}", values));

    private static string? Usable(string? answer, Question question, Func<string, bool>? takes) => answer is null ? null
        : question.Options.FirstOrDefault(option => Spelling.Same(option.Id, answer) || Spelling.Same(option.Text, answer))?.Id
            ?? (takes?.Invoke(answer) == true ? answer : null);
}

/// <summary>What came of asking.</summary>
/// <param name="Id">The question's id in this file.</param>
/// <param name="Answer">The option's id or the free answer; null while open.</param>
public readonly record struct Asked(string Id, string? Answer)
{
    public bool IsOpen => Answer is null;
}
