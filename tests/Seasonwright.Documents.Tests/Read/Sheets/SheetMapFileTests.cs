using System.Text.Json;
using Json.Schema;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Sheets;
using Seasonwright.Documents.Read.Workbooks;

namespace Seasonwright.Documents.Tests.Read.Sheets;

/// <summary>docs/sheet-map.schema.json says what a map may hold, judged by a validator that is not ours (JSON Schema draft 2020-12).</summary>
public class SheetMapFileTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(SheetSampleTests.PathOf(""), "..", "..", "..", "docs", "sheet-map.schema.json")));

    [Theory]
    [MemberData(nameof(SheetSampleTests.InBothFormats), MemberType = typeof(SheetSampleTests))]
    [MemberData(nameof(Own))]
    public void What_is_proposed_is_valid_and_read_back(string file)
    {
        var text = SheetMapFile.Propose(SheetReader.Read(Workbook.Read(file, File.ReadAllBytes(SheetSampleTests.PathOf(file))), SheetMap.Empty));
        Assert.True(Holds(text), text);
        Assert.Empty(SheetMapFile.Read(SourceText.OfText("map", text)).Problems);
    }

    public static TheoryData<string> Own() => [.. SheetLayoutTests.All().Select(row => $"own/{row.Data.Item1}.{row.Data.Item2}")];

    public static TheoryData<string> Roles() => [.. Enum.GetNames<RowRole>().Select(role => role.ToLowerInvariant()), "Own", "gym", "0"];

    /// <summary>The schema and the reader agree on every role; the reader forgives capitals, and no more.</summary>
    [Theory]
    [MemberData(nameof(Roles))]
    public void A_role_is_known_to_both_or_to_neither(string role)
    {
        var text = $$"""{ "rows": [{ "row": "Plan!13", "role": "{{role}}" }] }""";
        Assert.Equal(Holds(text.Replace(role, role.ToLowerInvariant(), StringComparison.Ordinal)), SheetMapFile.Read(SourceText.OfText("map", text)).Problems.Count == 0);
    }

    [Theory]
    [InlineData("""{ "rows": [{ "row": "Plan!13" }] }""")]
    [InlineData("""{ "rows": [{ "role": "own" }] }""")]
    [InlineData("""{ "rows": { "Plan!13": "own" } }""")]
    [InlineData("""{ "answers": { "Q-day": 6 } }""")]
    [InlineData("""{ "answers": [] }""")]
    [InlineData("""{ "columns": [] }""")]
    [InlineData("[]")]
    public void What_is_no_map_is_refused_by_both(string text)
    {
        Assert.False(Holds(text));
        Assert.NotEmpty(SheetMapFile.Read(SourceText.OfText("map", text)).Problems);
    }

    private static bool Holds(string json)
    {
        using var value = JsonDocument.Parse(json);
        return Schema.Evaluate(value.RootElement).IsValid;
    }
}
