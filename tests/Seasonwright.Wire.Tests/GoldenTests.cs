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
        var kinds = Logs.SelectMany(log => Replayed(log, facts)).ToHashSet();
        Assert.Equal(EditNames.All.Values.ToHashSet(), kinds);

        facts.Clear();
        _ = Replayed(LogGolden, facts).Count;
        var season = SeasonFile.Read(File.ReadAllBytes(SeasonGolden), out _)!;
        Assert.Equal(season.Season.Facts, facts["season"]);
        Assert.Equal(season.Setup.Facts, facts["team"]);
    }

    /// <summary>
    /// With APPROVE=1 the files of a new version are made once, from docs/edits.md, and so is one for edits that no file of this
    /// version holds yet; what exists is never touched.
    /// </summary>
    [Fact]
    public void Golden_files_are_there()
    {
        if (Environment.GetEnvironmentVariable("APPROVE") == "1")
        {
            if (!File.Exists(LogGolden)) Make();
            var known = Logs.SelectMany(log => Replayed(log, new(StringComparer.Ordinal))).ToHashSet();
            foreach (var (name, kind) in EditNames.All.Where(edit => !known.Contains(edit.Value)).OrderBy(edit => edit.Key, StringComparer.Ordinal)) MakeLater(name, kind);
        }
        Assert.True(File.Exists(SeasonGolden) && File.Exists(LogGolden));
    }

    /// <summary>The first one and those of edits that came later, each a history of its own.</summary>
    private static string[] Logs => Directory.GetFiles(Path.GetDirectoryName(LogGolden)!, "log-v1*.jsonl");

    private static List<Type> Replayed(string log, Dictionary<string, FactSet> facts)
    {
        facts.Clear();
        var kinds = new List<Type>();
        foreach (var line in File.ReadAllLines(log))
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
        return kinds;
    }

    /// <summary>A season, and every example of one edit that needs nothing else.</summary>
    private static void MakeLater(string name, Type kind)
    {
        var (told, lines) = (new Told(), new StringBuilder());
        Note(told, lines, Told.Start);
        foreach (var line in EditsPage.Lines.Where(line => line.Refusal is null && line.Heading == name))
            Note(told, lines, EditLines.Read(line.Line, told.Season, out _)!);
        Assert.Contains(kind.Name, lines.ToString(), StringComparison.OrdinalIgnoreCase);
        File.WriteAllText(LogGolden.Replace(".jsonl", $"-{name}.jsonl", StringComparison.Ordinal), lines.ToString());
    }

    private static void Make()
    {
        var told = new Told();
        var lines = new StringBuilder();
        var edits = EditsPage.Lines.Where(line => line.Refusal is null && line.Heading != "adoptSeason").Select(line => line.Line);
        Note(told, lines, Told.Start);
        foreach (var line in edits) Note(told, lines, EditLines.Read(line, told.Season, out _)!);
        var text = SeasonFile.Write(told.Season, told.Setup);
        var adopt = new AdoptSeason(told.Season.Facts, "2027-28");
        Note(new Told(), lines, adopt, "next");
        Directory.CreateDirectory(Path.GetDirectoryName(LogGolden)!);
        File.WriteAllText(SeasonGolden, text);
        File.WriteAllText(LogGolden, lines.ToString());
    }

    private static void Note(Told told, StringBuilder lines, Edit edit, string stream = "season")
    {
        var step = Assert.IsType<Accepted>(told.Do(edit)).Step;
        var (name, facts) = edit is SeasonEdit ? (stream, told.Season.Facts) : edit is ClubEdit ? ("club", told.Club.Facts) : ("team", told.Setup.Facts);
        lines.Append(CultureInfo.InvariantCulture, $$"""{"stream":"{{name}}","edit":{{LogText.Of(edit)}},"step":{{LogText.Of(step)}},"hash":"{{FactHash.Of(facts)}}"}""").Append('\n');
    }
}
