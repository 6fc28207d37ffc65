using Seasonwright.Documents.Read;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Lists;

/// <summary>What has been said on a form about the questions of a file.</summary>
/// <param name="Answers">By question key.</param>
/// <param name="LeftOpen">Keys of questions that were looked at and left open; what is offered for them does not hold.</param>
/// <param name="Typed">Free answers as typed, by question key.</param>
public sealed record FormAnswers(Answers Answers, IReadOnlySet<string> LeftOpen, IReadOnlyDictionary<string, string> Typed)
{
    private const string Chosen = "answer:", Free = "free:";

    /// <summary>The choice that stands for the free answer beside it.</summary>
    public const string TypedChoice = "(typed)";

    /// <summary>Before anything is asked.</summary>
    public static FormAnswers Of(Answers remembered) =>
        new(remembered, new HashSet<string>(StringComparer.Ordinal), new Dictionary<string, string>(StringComparer.Ordinal));

    public static string ChoiceField(string key) => Chosen + key;

    public static string FreeField(string key) => Free + key;

    internal static FormAnswers Read(Posted posted, Answers remembered)
    {
        var typed = posted.Starting(Free).Where(field => field.Value.Length > 0).ToDictionary(field => field.Name, field => field.Value, StringComparer.Ordinal);
        var (answers, leftOpen) = (remembered, new HashSet<string>(StringComparer.Ordinal));
        foreach (var (key, choice) in posted.Starting(Chosen))
        {
            var answer = choice == TypedChoice ? typed.GetValueOrDefault(key, "") : choice;
            if (answer.Length > 0) answers = answers.With(key, answer);
            else
            {
                answers = answers.Without(key);
                leftOpen.Add(key);
            }
        }
        return new(answers, leftOpen, typed);
    }

    /// <summary>
    /// Reads with everything that is offered taken as answered, so that what is shown is what will be written: one tap changes it.
    /// Never on its own: the order of day and month, which no one could tell from the page to be wrong.
    /// </summary>
    /// <param name="read">Reads with some answers and gives the questions that stay open.</param>
    public (T Read, Answers Answers) Settle<T>(Func<Answers, (T Read, IEnumerable<Question> Open)> read)
    {
        // An answer may raise the next question: a team, then its spellings. It ends since every round answers one more.
        var answers = Answers;
        while (true)
        {
            var (result, open) = read(answers);
            var offered = open.Where(question => question is { Offered: not null, Kind: not "Q-order" } && !LeftOpen.Contains(question.Key) && answers.Find(question.Key, question.Key) is null).ToList();
            if (offered.Count == 0) return (result, answers);
            answers = offered.Aggregate(answers, (all, question) => all.With(question.Key, question.Offered!));
        }
    }
}
