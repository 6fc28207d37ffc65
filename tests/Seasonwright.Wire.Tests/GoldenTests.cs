using System.Globalization;
using System.Text;
using System.Text.Json;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;

namespace Seasonwright.Wire.Tests;

/// <summary>Files that version 1 wrote. They are never edited: whatever the program becomes, it opens them.</summary>
public class GoldenTests
{
    private static readonly string SeasonGolden = Repository.File("tests", "Cases", "wire", "season-v1.json");
    private static readonly string LogGolden = Repository.File("tests", "Cases", "wire", "log-v1.jsonl");

    [Fact]
    public void A_season_file_opens_and_is_written_again_byte_for_byte()
    {
        var bytes = File.ReadAllBytes(SeasonGolden);
        var read = SeasonFile.Read(bytes, out var problem);
        Assert.Null(problem);
        Assert.Equal(Encoding.UTF8.GetString(bytes), SeasonFile.Write(read!.Season, read.Setup));
    }

    [Fact]
    public void A_log_opens_replays_to_the_same_fingerprints_and_is_written_again_byte_for_byte()
    {
        var facts = new Dictionary<string, FactSet>(StringComparer.Ordinal);
        var kinds = new HashSet<Type>();
        foreach (var line in File.ReadAllLines(LogGolden))
        {
            using var entry = JsonDocument.Parse(line);
            string Raw(string field) => entry.RootElement.GetProperty(field).GetRawText();
            var stream = entry.RootElement.GetProperty("stream").GetString()!;
            var edit = LogText.ReadEdit(Raw("edit"))!;
            var step = LogText.ReadStep(Raw("step"));
            Assert.Equal(Raw("edit"), LogText.Of(edit));
            Assert.Equal(Raw("step"), LogText.Of(step));
            facts[stream] = facts.GetValueOrDefault(stream, FactSet.Empty).Evolve(step);
            Assert.Equal(entry.RootElement.GetProperty("hash").GetString(), FactHash.Of(facts[stream]).Hex);
            kinds.Add(edit.GetType());
        }
        Assert.Equal(EditNames.All.Values.ToHashSet(), kinds);
        var season = SeasonFile.Read(File.ReadAllBytes(SeasonGolden), out _)!;
        Assert.Equal(season.Season.Facts, facts["season"]);
        Assert.Equal(season.Setup.Facts, facts["team"]);
    }

    /// <summary>With APPROVE=1 the files of a new version are made once, from docs/edits.md; what exists is never touched.</summary>
    [Fact]
    public void Golden_files_are_there()
    {
        if (Environment.GetEnvironmentVariable("APPROVE") == "1" && !File.Exists(LogGolden)) Make();
        Assert.True(File.Exists(SeasonGolden) && File.Exists(LogGolden));
    }

    private static void Make()
    {
        var told = new Told();
        var lines = new StringBuilder();
        var edits = EditsPage.Lines.Where(line => line.Refusal is null && line.Heading != "adoptSeason").Select(line => line.Line);
        Note(_ => Told.Start);
        foreach (var line in edits) Note(told => EditLines.Read(line, told.Season, out _)!);
        var text = SeasonFile.Write(told.Season, told.Setup);
        var adopt = new AdoptSeason(told.Season.Facts, "2027-28");
        told = new Told();
        Note(_ => adopt, "next");
        Directory.CreateDirectory(Path.GetDirectoryName(LogGolden)!);
        File.WriteAllText(SeasonGolden, text);
        File.WriteAllText(LogGolden, lines.ToString());

        void Note(Func<Told, Edit> next, string? stream = null)
        {
            var edit = next(told);
            var step = Assert.IsType<Accepted>(told.Do(edit)).Step;
            var (name, facts) = edit is SeasonEdit ? (stream ?? "season", told.Season.Facts) : ("team", told.Setup.Facts);
            lines.Append(CultureInfo.InvariantCulture, $$"""{"stream":"{{name}}","edit":{{LogText.Of(edit)}},"step":{{LogText.Of(step)}},"hash":"{{FactHash.Of(facts)}}"}""").Append('\n');
        }
    }
}
