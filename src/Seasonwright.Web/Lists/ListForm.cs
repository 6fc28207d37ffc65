using Seasonwright.Documents.Read;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Lists;

/// <summary>A list as pasted or brought as a file, with what has been answered about it: all that the page knows stands in the form.</summary>
/// <param name="Source">The list.</param>
/// <param name="Answers">By question key.</param>
/// <param name="LeftOpen">Keys of questions that were looked at and left open; what is offered for them does not hold.</param>
/// <param name="Typed">Free answers as typed, by question key.</param>
public sealed record ListForm(SourceText Source, Answers Answers, IReadOnlySet<string> LeftOpen, IReadOnlyDictionary<string, string> Typed)
{
    private const string Chosen = "answer:", Free = "free:";

    /// <summary>The choice that stands for the free answer beside it.</summary>
    public const string TypedChoice = "(typed)";

    /// <summary>Before anything is pasted.</summary>
    public static ListForm Empty(Answers remembered) =>
        new(SourceText.OfText("", ""), remembered, new HashSet<string>(StringComparer.Ordinal), new Dictionary<string, string>(StringComparer.Ordinal));

    /// <summary>Whether there is anything to read.</summary>
    public bool IsEmpty { get; private init; } = true;

    /// <summary>What stands in the box: of a file that could not be read, what stood there before.</summary>
    public string Text { get; private init; } = "";

    public static string ChoiceField(Question question) => Chosen + question.Key;

    public static string ChoiceField(string key) => Chosen + key;

    public static string FreeField(Question question) => Free + question.Key;

    internal static async Task<ListForm> ReadAsync(Posted posted, Answers remembered)
    {
        var text = posted.Raw("text");
        var name = posted["name"] is { Length: > 0 } known ? known : Words.Say("list.pasted");
        var source = posted.File("file") is { } file ? await OfFileAsync(file) : SourceText.OfText(name, text);
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
        return new ListForm(source, answers, leftOpen, typed)
        {
            IsEmpty = posted.File("file") is null && text.Length == 0,
            Text = source.Problems.Count == 0 ? source.Text : text,
        };
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

    private static async Task<SourceText> OfFileAsync(IFormFile file)
    {
        using var bytes = new MemoryStream();
        await file.CopyToAsync(bytes);
        return SourceText.OfBytes(Path.GetFileName(file.FileName), bytes.ToArray());
    }
}
