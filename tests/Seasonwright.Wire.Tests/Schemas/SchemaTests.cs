using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using Json.Schema;
using Seasonwright.Core.Edits;

namespace Seasonwright.Wire.Tests.Schemas;

/// <summary>The published schemas say what the wire reads, judged by a validator that is not ours (JSON Schema draft 2020-12).</summary>
public class SchemaTests
{
    private static readonly EvaluationOptions Strict = new() { RequireFormatValidation = true };

    private static readonly JsonSchema SeasonSchema = JsonSchema.FromText(SchemaWriter.Season());

    private static readonly JsonSchema EditSchema = JsonSchema.FromText(SchemaWriter.Edits());

    private static readonly JsonSchema RoomSchema = JsonSchema.FromText(SchemaWriter.Room());

    private static bool Holds(JsonSchema schema, string json)
    {
        using var value = JsonDocument.Parse(json);
        return schema.Evaluate(value.RootElement, Strict).IsValid;
    }

    /// <summary>With APPROVE=1 the files are written anew; read the difference before you commit it.</summary>
    [Fact]
    public void The_files_are_what_the_wire_says_today()
    {
        foreach (var (name, text) in new[] { ("season", SchemaWriter.Season()), ("edits", SchemaWriter.Edits()), ("room", SchemaWriter.Room()) })
        {
            var path = Repository.File("docs", $"{name}.schema.json");
            if (Environment.GetEnvironmentVariable("APPROVE") == "1") File.WriteAllText(path, text);
            Assert.Equal(File.ReadAllText(path), text);
        }
    }

    [Fact]
    public void Every_golden_file_and_every_line_of_the_page_of_edits_is_valid()
    {
        Assert.True(Holds(SeasonSchema, File.ReadAllText(Repository.File("tests", "Cases", "wire", "season-v1.json"))));
        foreach (var line in File.ReadAllLines(Repository.File("tests", "Cases", "wire", "log-v1.jsonl")))
        {
            using var entry = JsonDocument.Parse(line);
            Assert.True(Holds(EditSchema, entry.RootElement.GetProperty("edit").GetRawText()), line);
        }
        // Those that are refused too: they are well written.
        Assert.All(EditsPage.Lines, line => Assert.True(Holds(EditSchema, line.Line), line.Line));
    }

    [Fact]
    public void Whatever_the_wire_writes_is_valid()
    {
        var kinds = EditNames.All.Values.OrderBy(type => type.Name, StringComparer.Ordinal).ToArray();
        Gen.Select(Gen.Int[0, kinds.Length - 1], Gen.Int).Sample((kind, seed) => Holds(EditSchema, LogText.Of((Edit)new Arbitrary(seed).Value(kinds[kind]))), iter: 1000);
        var told = Told.Page();
        Assert.True(Holds(SeasonSchema, SeasonFile.Write(told.Season, told.Setup)));
        Assert.True(Holds(SeasonSchema, SeasonFile.Write(told.Season, told.Setup, new(told.Season.LastPublication ?? new(1), new(2027, 10, 11)))));
    }

    /// <summary>
    /// A wrong thing in any place of any edit: the schema says no where the wire does, and yes where it reads. It cannot compare
    /// two fields: a span that ends before it starts is the one thing that only the wire refuses.
    /// </summary>
    [Fact]
    public void What_the_wire_does_not_read_is_not_valid_and_the_other_way_round()
    {
        var season = Told.Page().Season;
        int read = 0, unread = 0, backward = 0;
        foreach (var (_, line, _) in EditsPage.Lines)
        {
            foreach (var text in Damage.Of(JsonNode.Parse(line)!))
            {
                var isRead = EditLines.Read(text, season, out var problem) is not null;
                if (isRead) read++;
                else unread++;
                if (problem?.What.Contains("before it starts", StringComparison.Ordinal) == true)
                {
                    backward++;
                    continue;
                }
                Assert.True(isRead == Holds(EditSchema, text), $"{text}\n{problem}");
            }
        }
        Assert.True(read > 300 && unread > 3000 && backward is > 0 and < 10, $"{read} read, {unread} not, {backward} backward");
    }

    /// <summary>The reader knows more than a schema can say (bounds, half hours, ids that stand twice), never less.</summary>
    [Fact]
    public void A_room_file_that_is_not_valid_is_not_read()
    {
        var whole = File.ReadAllText(Repository.File("tests", "Cases", "cli", "files", "room.json"));
        Assert.True(Holds(RoomSchema, whole));
        Assert.True(Holds(RoomSchema, RoomFile.Write(RoomFile.Read(System.Text.Encoding.UTF8.GetBytes(whole), out _)!)));
        int valid = 0, not = 0;
        // The validator cannot hold 1e99 against a constant.
        foreach (var text in Damage.Of(JsonNode.Parse(whole)!).Where(text => !text.Contains("\"version\":1E+99", StringComparison.Ordinal)))
        {
            var isRead = RoomFile.Read(System.Text.Encoding.UTF8.GetBytes(text), out var problem) is not null;
            Assert.Equal(isRead, problem is null);
            if (Holds(RoomSchema, text)) valid++;
            else
            {
                not++;
                Assert.False(isRead, text);
            }
        }
        Assert.True(valid > 20 && not > 1000, $"{valid} valid, {not} not");
    }

    [Theory]
    [InlineData("""{"edit":"conquerTheLeague"}""")]
    [InlineData("""{"edit":"setWeekLoad","first":1,"last":3}""")]
    [InlineData("""{"edit":"setWeekLoad","first":1,"last":3,"laod":2400}""")]
    [InlineData("""{"edit":"setWeekLoad","first":1,"last":3,"load":30001}""")]
    [InlineData("""{"edit":"setWeekLoad","first":"week one","last":3,"load":1}""")]
    [InlineData("""{"edit":"setMatch","match":{"id":"m1","day":"2027-02-29"}}""")]
    [InlineData("""{"edit":"setMatch","match":{"id":"m1","day":"2027-09-05","kickOff":"24:00"}}""")]
    [InlineData("""{"edit":"setPractices","first":1,"last":1,"practices":{"count":4,"rpe":5.3}}""")]
    [InlineData("""[{"edit":"publish","name":"A"}]""")]
    public void A_malformed_edit_is_not_valid(string line)
    {
        Assert.Null(EditLines.Read(line, Told.Page().Season, out _));
        Assert.False(Holds(EditSchema, line));
    }

    /// <summary>The reader knows more than a schema can say (counts of practices, weeks that are there), never less.</summary>
    [Fact]
    public void A_season_file_that_is_not_valid_is_not_opened()
    {
        var count = 0;
        foreach (var text in Damage.Of(JsonNode.Parse(File.ReadAllText(Repository.File("tests", "Cases", "wire", "season-v1.json")))!, every: 7))
        {
            if (Holds(SeasonSchema, text)) continue;
            count++;
            Assert.Null(SeasonFile.Read(System.Text.Encoding.UTF8.GetBytes(text), out _));
        }
        Assert.True(count > 300, $"{count} files");
    }
}
