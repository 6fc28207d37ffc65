using System.Text;
using System.Text.Json.Nodes;
using CsCheck;

namespace Seasonwright.Wire.Tests;

/// <summary>Texts that were cut off, mixed up or filled with the wrong things: a problem in words, never an exception.</summary>
public class DamagedTextTests
{
    private static readonly byte[] SeasonGolden = File.ReadAllBytes(Repository.File("tests", "Cases", "wire", "season-v1.json"));

    [Fact]
    public void A_season_file_cut_off_anywhere_is_told_to_be_incomplete()
    {
        // The last byte is the line end, which no reader misses.
        for (var length = 0; length < SeasonGolden.Length - 1; length += 1 + length / 100)
        {
            var problem = Problem(SeasonGolden.AsSpan(0, length).ToArray())!;
            Assert.True(problem.What.Contains("ends before it is complete", StringComparison.Ordinal) || problem.What.Contains("no JSON", StringComparison.Ordinal), problem.ToString());
            Assert.NotNull(problem.Line);
        }
    }

    [Fact]
    public void A_season_file_with_any_bytes_changed_is_read_or_told() =>
        Gen.Select(Gen.Int[0, SeasonGolden.Length - 1], Gen.Byte, Gen.Int[1, 20]).Array[1, 3].Sample(changes =>
        {
            var bytes = (byte[])SeasonGolden.Clone();
            foreach (var (place, value, run) in changes) bytes.AsSpan(place, Math.Min(run, bytes.Length - place)).Fill(value);
            Problem(bytes);
        }, iter: 1000);

    [Fact]
    public void A_season_file_with_a_wrong_thing_in_any_place_is_read_or_told()
    {
        var whole = JsonNode.Parse(SeasonGolden)!;
        int told = 0, places = 0;
        foreach (var text in Damage.Of(whole, every: Damage.Wrong.Count + 1))
        {
            places++;
            if (Problem(Encoding.UTF8.GetBytes(text)) is not null) told++;
        }
        // Some wrong things are right by chance: a text where any text may stand, null where nothing need be.
        Assert.True(told * 2 > places, $"only {told} of {places} wrong things were told");
    }

    [Fact]
    public void An_edit_with_a_wrong_thing_in_any_place_is_told_or_decided()
    {
        var told = Told.Page();
        var count = 0;
        foreach (var (_, line, _) in EditsPage.Lines)
        {
            foreach (var text in Damage.Of(JsonNode.Parse(line)!))
            {
                var before = told.Season;
                var edit = EditLines.Read(text, told.Season, out var problem);
                if (problem is not null) InWords(problem);
                if (edit is not null) _ = edit switch
                {
                    Core.Edits.SeasonEdit mine => Core.Edits.Decider.Decide(told.Season, mine),
                    Core.Edits.ClubEdit mine => Core.Edits.Decider.Decide(told.Club, mine),
                    _ => Core.Edits.Decider.Decide(told.Setup, (Core.Edits.SetupEdit)edit),
                };
                Assert.Equal(before, told.Season);
                count++;
            }
        }
        Assert.True(count > 3000, $"{count} wrong edits");
    }

    [Theory]
    [InlineData("", "ends before it is complete")]
    [InlineData("null", "no Seasonwright season file")]
    [InlineData("[]", "An object { } is expected")]
    [InlineData("{}", "no Seasonwright season file")]
    [InlineData("\"seasonwright-season\"", "An object { } is expected")]
    [InlineData("date,opponent\n2027-09-04,Turnes\n", "no JSON")]
    [InlineData("""{"format":"another-program","version":1}""", "no Seasonwright season file")]
    [InlineData("""{"format":"seasonwright-season","version":2,"wonders":[]}""", "has version 2; this program reads up to version 1. Open it with a newer Seasonwright.")]
    [InlineData("""{"format":"seasonwright-season","version":0}""", "versions begin with 1")]
    [InlineData("""{"format":"seasonwright-season","version":"1"}""", "A whole number is expected")]
    [InlineData("""{"format":"seasonwright-season","version":1,"id":"s","teamId":"t","season":{},"team":{}}""", "0 weeks cannot be drawn")]
    [InlineData("""{"format":"seasonwright-season","version":1,"id":"s","teamId":"t","season":{}}""", "The field 'team' is missing. Add it.")]
    [InlineData("""{"format":"seasonwright-season","version":1,"id":"s","id":"u","teamId":"t","season":{},"team":{}}""", "The field 'id' stands twice.")]
    [InlineData("""{"format":"seasonwright-season","version":1,"id":"s","teamId":"t","season":{},"team":{},"people":[]}""", "There is no field 'people' here.")]
    public void What_is_no_season_file_is_told(string text, string said) =>
        Assert.Contains(said, Problem(Encoding.UTF8.GetBytes(text))!.ToString(), StringComparison.Ordinal);

    /// <summary>Told apart by its beginning alone, so that a broken season file is told to be broken and never read as a list.</summary>
    [Fact]
    public void A_season_file_is_known_by_its_beginning_and_nothing_else_is_taken_for_one()
    {
        for (var length = 40; length <= SeasonGolden.Length; length += 1 + length / 10) Assert.True(SeasonFile.IsNamed(SeasonGolden.AsSpan(0, length)));
        Assert.True(SeasonFile.IsNamed([.. Encoding.UTF8.Preamble, .. SeasonGolden]));
        foreach (var text in new[] { "", "{}", "[]", "{", "7", "null", "\"format\"", "{\"format\"", "{\"format\":7}", "{\"format\":\"json\",\"matches\":[]}", "{\"name\":\"seasonwright-season\"}", "date,opponent\n", "\uFFFD" })
            Assert.False(SeasonFile.IsNamed(Encoding.UTF8.GetBytes(text)), text);
    }

    [Fact]
    public void Huge_and_deep_texts_are_told_at_once()
    {
        Assert.Contains("larger than 32 MB", Problem(new byte[SeasonFile.MostBytes + 1])!.ToString(), StringComparison.Ordinal);
        var deep = Encoding.UTF8.GetString(SeasonGolden).Replace("\"season\": {", $"\"season\": {new string('[', 5000)}", StringComparison.Ordinal);
        Assert.NotNull(Problem(Encoding.UTF8.GetBytes(deep)));
    }

    [Fact]
    public void A_problem_deep_inside_a_file_has_the_line_and_column_of_the_file()
    {
        var lines = Encoding.UTF8.GetString(SeasonGolden).Split('\n');
        var at = Array.FindIndex(lines, line => line.Contains("\"2028-01-17\"", StringComparison.Ordinal));
        lines[at] = lines[at].Replace("2028-01-17", "17.1.2028", StringComparison.Ordinal);
        var problem = Problem(Encoding.UTF8.GetBytes(string.Join('\n', lines)))!;
        Assert.Equal((at + 1L, lines[at].IndexOf(',', StringComparison.Ordinal) + 1L), (problem.Line, problem.Column));
        Assert.Contains("'17.1.2028' is no day of the calendar.", problem.What, StringComparison.Ordinal);
    }

    private static WireProblem? Problem(byte[] bytes)
    {
        var read = SeasonFile.Read(bytes, out var problem);
        Assert.True(read is null == problem is not null);
        if (problem is not null) InWords(problem);
        return problem;
    }

    /// <summary>People read it: nothing of how the program is made.</summary>
    private static void InWords(WireProblem problem)
    {
        foreach (var inside in new[] { "System.", "Seasonwright.", "Path:", "BytePosition", ".NET", "deserializ", "Parameter", "Exception" })
            Assert.DoesNotContain(inside, problem.ToString().Replace("with a newer Seasonwright.", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }
}
