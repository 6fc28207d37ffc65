using System.Text;
using System.Text.Json;
using Seasonwright.Core;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>A JSON list of matches as a table: names of properties are the headings, the first (outermost) array of objects holds the rows.</summary>
internal static class JsonTable
{
    public static bool Is(SourceText source) => source.Text.AsSpan().TrimStart() is ['{' or '[', ..];

    public static CellTable Read(SourceText source)
    {
        try
        {
            using var json = JsonDocument.Parse(source.Text, new JsonDocumentOptions { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip });
            if (Rows(json.RootElement) is not { } array) return Refused(source, Problem.Of("json-form", source.Name, null, null));
            var rows = array.EnumerateArray().Where(item => item.ValueKind == JsonValueKind.Object).Select(Cells).ToList();
            var headings = rows.SelectMany(row => row.Select(cell => cell.Name)).Distinct(StringComparer.Ordinal).ToList();
            if (headings.Count > CellTable.MostCells) return Refused(source, Problem.Of("cells-many", source.Name, null, null, headings.Count, CellTable.MostCells));
            var competition = Competition(json.RootElement);
            var lines = Lines(source.Text);
            var table = new List<CellRow> { new(0, headings.Append("competition").ToValueList(), "") };
            table.AddRange(rows.Select((row, i) => new CellRow(i < lines.Count ? lines[i] : 0,
                headings.Select(heading => Spelling.Tidy(row.FirstOrDefault(cell => cell.Name == heading).Text ?? "")).Append(competition).ToValueList(), string.Join(", ", row.Select(cell => cell.Text)))));
            return new(source.Name, null, table.ToValueList(), ValueList<Problem>.Empty);
        }
        catch (JsonException e)
        {
            return Refused(source, Problem.Of("json", source.Name, (int?)e.LineNumber + 1, (int?)e.BytePositionInLine + 1));
        }
    }

    private static JsonElement? Rows(JsonElement element)
    {
        if (element.ValueKind == JsonValueKind.Array) return element.EnumerateArray().Any(item => item.ValueKind == JsonValueKind.Object) ? element : null;
        if (element.ValueKind != JsonValueKind.Object) return null;
        foreach (var property in element.EnumerateObject()) if (Rows(property.Value) is { } rows) return rows;
        return null;
    }

    // A nested object gives its name ("team": { "name": "Brovik" }) or its full-time score; an array its items with a dash.
    private static List<(string Name, string Text)> Cells(JsonElement row) => [.. row.EnumerateObject().Select(property => (property.Name, Text(property.Value))).Where(cell => cell.Item2.Length > 0)];

    private static string Text(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.String => Said(value),
        JsonValueKind.Number or JsonValueKind.True or JsonValueKind.False => value.GetRawText(),
        JsonValueKind.Array => string.Join('-', value.EnumerateArray().Select(Text)),
        JsonValueKind.Object when value.TryGetProperty("ft", out var full) => Text(full),
        JsonValueKind.Object when value.TryGetProperty("name", out var name) => Text(name),
        _ => "",
    };

    // Half a surrogate pair, escaped, is valid JSON and no text.
    private static string Said(JsonElement value)
    {
        try
        {
            return value.GetString()!;
        }
        catch (InvalidOperationException)
        {
            return "";
        }
    }

    // "English Premier League 2024/25": the years are the season's, not the competition's.
    private static string Competition(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object || !root.TryGetProperty("name", out var name) || name.ValueKind != JsonValueKind.String) return "";
        var text = Spelling.Tidy(Said(name));
        return Dates.SeasonYears.Find(text) is null ? text : text.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '/', '-', '–').TrimEnd();
    }

    // Lines on which the objects of the outermost array of objects begin.
    private static List<int> Lines(string text)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        var reader = new Utf8JsonReader(bytes, new JsonReaderOptions { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip });
        var (lines, depth, line, counted) = (new List<int>(), -1, 1, 0L);
        while (reader.Read())
        {
            for (; counted < reader.TokenStartIndex; counted++) if (bytes[counted] == '\n') line++;
            if (reader.TokenType == JsonTokenType.StartArray && depth < 0) depth = reader.CurrentDepth + 1;
            else if (reader.TokenType == JsonTokenType.StartObject && reader.CurrentDepth == depth) lines.Add(line);
            else if (reader.TokenType == JsonTokenType.EndArray && reader.CurrentDepth == depth - 1)
            {
                if (lines.Count > 0) break;
                depth = -1;
            }
        }
        return lines;
    }

    private static CellTable Refused(SourceText source, Problem problem) => new(source.Name, null, ValueList<CellRow>.Empty, new([problem]));
}
