using System.Collections.Immutable;
using System.Text.Json;
using Seasonwright.Core;

namespace Seasonwright.Documents.Read;

/// <summary>Answers to questions, by question key or id. The JSON form is one object of texts: <c>{ "Q-order": "day-first" }</c>.</summary>
public sealed class Answers
{
    private readonly ImmutableSortedDictionary<string, string> byQuestion;

    private Answers(ImmutableSortedDictionary<string, string> byQuestion) => this.byQuestion = byQuestion;

    public static Answers None { get; } = new(ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal));

    /// <summary>Every answer, by question key or id.</summary>
    public IReadOnlyDictionary<string, string> All => byQuestion;

    /// <param name="question">A question's key (to remember it for other files) or its id (within one file).</param>
    /// <param name="answer">An option's id or words, or a free answer where the question takes one.</param>
    public Answers With(string question, string answer) => new(byQuestion.SetItem(question, answer));

    public Answers Without(string question) => new(byQuestion.Remove(question));

    /// <summary>The answer under the key, else the one under the id.</summary>
    public string? Find(string key, string id) => byQuestion.GetValueOrDefault(key) ?? byQuestion.GetValueOrDefault(id);

    /// <summary>Reads the JSON form; anything else is told as a problem and gives no answers.</summary>
    public static (Answers Answers, ValueList<Problem> Problems) Read(SourceText source)
    {
        if (source.Problems.Count > 0) return (None, source.Problems);
        try
        {
            using var json = JsonDocument.Parse(source.Text, new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
            if (json.RootElement.ValueKind != JsonValueKind.Object) return Refused(source, "answers-form", null);
            var answers = None;
            foreach (var answer in json.RootElement.EnumerateObject())
            {
                if (answer.Value.ValueKind != JsonValueKind.String) return Refused(source, "answers-value", null, answer.Name);
                answers = answers.With(answer.Name, answer.Value.GetString()!);
            }
            return (answers, ValueList<Problem>.Empty);
        }
        catch (JsonException e)
        {
            return Refused(source, "json", (int?)e.LineNumber + 1);
        }
    }

    /// <summary>The JSON form, keys in ordinal order.</summary>
    public string ToJson() => JsonSerializer.Serialize(byQuestion, Indented);

    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, NewLine = "\n" };

    private static (Answers, ValueList<Problem>) Refused(SourceText source, string id, int? line, params object?[] values) =>
        (None, new([Problem.Of(id, source.Name, line, null, values)]));
}
