using System.Text.Encodings.Web;
using System.Text.Json;
using Seasonwright.Core;

namespace Seasonwright.Documents.Read.Sheets;

/// <summary>
/// A map as JSON: <c>{ "rows": [{ "row": "Plan!13", "role": "matches" }], "answers": { "Q-day": "saturday" } }</c>, see
/// docs/sheet-map.schema.json. What is proposed also holds labels and questions for the reader; they are passed over when it is read.
/// </summary>
public static class SheetMapFile
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

    /// <summary>The roles guessed, as a map to change and give back, with what is still open.</summary>
    public static string Propose(SheetReading read) => JsonSerializer.Serialize(
        new Proposal(
            [.. read.Rows.Where(row => !row.IsRest).Select(row => new ProposedRow(row.Key, row.Label, Word(row.Role)))],
            read.Answered.ToDictionary(answered => answered.Question.Id, answered => answered.Answer, StringComparer.Ordinal),
            [.. read.Questions.Select(question => new OpenQuestion(question.Id, question.Text, [.. question.Options.Select(option => option.Id)], question.Offered, question.UntilAnswered))]), Indented) + "\n";

    /// <summary>Reads a map; anything that is none is told as a problem.</summary>
    public static (SheetMap Map, ValueList<Problem> Problems) Read(SourceText source)
    {
        if (source.Problems.Count > 0) return (SheetMap.Empty, source.Problems);
        try
        {
            using var json = JsonDocument.Parse(source.Text, new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
            var map = SheetMap.Empty;
            if (json.RootElement.ValueKind != JsonValueKind.Object) return Refused(source, "map-form", null);
            foreach (var part in json.RootElement.EnumerateObject())
            {
                switch (part.Name, part.Value.ValueKind)
                {
                    case ("rows", JsonValueKind.Array):
                        foreach (var row in part.Value.EnumerateArray())
                        {
                            if (row.ValueKind != JsonValueKind.Object || Text(row, "row") is not { } key || Text(row, "role") is not { } word) return Refused(source, "map-form", null);
                            if (Roles.TryGetValue(word, out var role)) map = map.With(key, role);
                            else return Refused(source, "map-role", null, key, word, string.Join(", ", Roles.Keys));
                        }
                        break;
                    case ("answers", JsonValueKind.Object):
                        foreach (var answer in part.Value.EnumerateObject())
                        {
                            if (answer.Value.ValueKind != JsonValueKind.String) return Refused(source, "answers-value", null, answer.Name);
                            map = map.With(answer.Name, answer.Value.GetString()!);
                        }
                        break;
                    case ("questions" or "$schema", _):
                        break;
                    default:
                        return Refused(source, "map-form", null);
                }
            }
            return (map, ValueList<Problem>.Empty);
        }
        catch (JsonException e)
        {
            return Refused(source, "json", (int?)e.LineNumber + 1);
        }
    }

    private static readonly Dictionary<string, RowRole> Roles = Enum.GetValues<RowRole>().ToDictionary(Word, StringComparer.OrdinalIgnoreCase);

    private static string Word(RowRole role) => role.ToString().ToLowerInvariant();

    private static string? Text(JsonElement row, string name) => row.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;

    private static (SheetMap, ValueList<Problem>) Refused(SourceText source, string id, int? line, params object?[] values) => (SheetMap.Empty, new([Problem.Of(id, source.Name, line, null, values)]));

    private sealed record Proposal(List<ProposedRow> Rows, Dictionary<string, string> Answers, List<OpenQuestion> Questions);

    private sealed record ProposedRow(string Row, string Label, string Role);

    private sealed record OpenQuestion(string Id, string Text, List<string> Options, string? Offered, string UntilAnswered);
}
