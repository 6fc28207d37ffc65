using Seasonwright.Documents.Read;

namespace Seasonwright.Web.Lists;

/// <summary>A question of a list as the page shows it.</summary>
/// <param name="Answer">What holds; null while it is open.</param>
public sealed record AskedQuestion(Question Question, string? Answer)
{
    /// <summary>All questions of a list, answered or not, in the order of its lines, so that none jumps when it is answered.</summary>
    public static IReadOnlyList<AskedQuestion> InOrder(IEnumerable<Question> open, IEnumerable<Answered> answered) =>
        [.. open.Select(question => new AskedQuestion(question, null)).Concat(answered.Select(known => new AskedQuestion(known.Question, known.Answer)))
            .OrderBy(asked => asked.Question.Lines.Count == 0 ? 0 : asked.Question.Lines[0]).ThenBy(asked => asked.Question.Key, StringComparer.Ordinal)];

    /// <summary>A question's number on the page, by its id.</summary>
    public static IReadOnlyDictionary<string, int> Numbers(IReadOnlyList<AskedQuestion> questions) =>
        questions.Select((asked, number) => (asked.Question.Id, number)).DistinctBy(asked => asked.Id, StringComparer.Ordinal).ToDictionary(asked => asked.Id, asked => asked.number, StringComparer.Ordinal);

    public bool IsOpen => Answer is null;
}
