using System.Globalization;
using System.Text.Json;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Sheets;
using Seasonwright.Documents.Read.Workbooks;
using Seasonwright.Documents.Tests.Read.Workbooks;

namespace Seasonwright.Documents.Tests.Read.Sheets;

/// <summary>Seasons made of the sample workbooks hold what the expected results say, whatever stays unanswered.</summary>
public class SheetImportTests
{
    [Theory]
    [MemberData(nameof(SheetSampleTests.InBothFormats), MemberType = typeof(SheetSampleTests))]
    public void A_season_has_the_phases_and_matches_expected_and_nothing_of_health(string file)
    {
        var (season, read) = Season(file, SheetMap.Empty);
        var expected = SheetSampleTests.Expected(file);
        foreach (var phase in expected.GetProperty("phases").EnumerateArray().Where(phase => phase.TryGetProperty("weeks", out _)))
            for (var week = phase.GetProperty("weeks")[0].GetInt32(); week <= phase.GetProperty("weeks")[1].GetInt32(); week++)
                Assert.Equal(phase.GetProperty("name").GetString(), season.PhaseOf(season.Weeks[week - 1])?.Phase.Name);
        foreach (var match in expected.GetProperty("matches").EnumerateArray().Where(match => match.GetProperty("date").GetString() is { Length: > 0 } && !(match.TryGetProperty("status", out var status) && status.GetString() is "conditional" or "moved away: not a match day")))
        {
            var day = DateOnly.ParseExact(match.GetProperty("date").GetString()!, "yyyy-MM-dd", CultureInfo.InvariantCulture);
            Assert.Contains(season.AllMatches, made => made.Day == day && made.LastDay is null && made.Opponent == match.GetProperty("opponent").GetString());
        }
        // A match without a day is some day of its week, and never on one that the sheet does not name.
        foreach (var match in season.AllMatches.Where(match => match.Status == MatchStatus.Window)) Assert.True(match.Days!.Value.Length > 1);
        var facts = JsonSerializer.Serialize(season.Facts.Keys.Select(key => $"{key} {season.Facts[key]}"), Plain);
        foreach (var word in new[] { "physio", "surgery", "shoulder", "Do not tell" }) Assert.DoesNotContain(word, facts, StringComparison.OrdinalIgnoreCase);
        // Whatever the coach wrote into rows of his own is in a cell of a track.
        foreach (var entry in read.Rows.Where(row => row.Role == RowRole.Own).SelectMany(row => row.Entries))
            Assert.Contains(season.Facts.All(SeasonFacets.TrackCell), cell => cell.Value.Contains(entry.Text, StringComparison.Ordinal) || entry.Number is not null);
    }

    [Fact]
    public void Loads_in_per_cent_are_the_weeks_targets_and_an_empty_one_is_none()
    {
        var (season, _) = Season("samples/workbook-01-weeks-across.xlsx", SheetMap.Empty);
        var expected = SheetSampleTests.Expected("samples/workbook-01-weeks-across.xlsx").GetProperty("weeks").EnumerateArray().Select(week => week.GetProperty("load").ValueKind == JsonValueKind.Null ? null : (int?)week.GetProperty("load").GetInt32());
        var reference = Setup.Empty(new TeamId("t")).ReferenceWeek;
        Assert.Equal(expected, season.Weeks.Select(week => season.TargetOf(week.Id) is { } load ? (int?)load.PercentOf(reference).Value : null));
    }

    [Fact]
    public void Loads_in_words_are_targets_once_their_shares_are_said()
    {
        const string File = "samples/workbook-02-weeks-down.xlsx";
        Assert.All(Season(File, SheetMap.Empty).Season.Weeks, week => Assert.Null(Season(File, SheetMap.Empty).Season.TargetOf(week.Id)));
        var (season, _) = Season(File, SheetMap.Empty.With("Q-load", "hard=90, medium=70, light=50"));
        var reference = Setup.Empty(new TeamId("t")).ReferenceWeek;
        var shares = new Dictionary<string, int?>(StringComparer.Ordinal) { ["hard"] = 90, ["medium"] = 70, ["light"] = 50, [""] = null };
        Assert.Equal(SheetSampleTests.Expected(File).GetProperty("weeks").EnumerateArray().Select(week => shares[$"{week.GetProperty("load")}"]), season.Weeks.Select(week => season.TargetOf(week.Id) is { } load ? (int?)load.PercentOf(reference).Value : null));
    }

    [Fact]
    public void A_map_changes_what_a_row_becomes_and_its_text_form_is_read_back()
    {
        const string File = "samples/workbook-01-weeks-across.xlsx";
        var read = SheetSampleTests.Read(File);
        var (map, problems) = SheetMapFile.Read(SourceText.OfText("map", SheetMapFile.Propose(read)));
        Assert.Empty(problems);
        Assert.Equal(read.Rows.Select(row => row.Role), map.Roles.Count == 0 ? [] : read.Rows.Select(row => map.Roles[row.Key]));
        // Even the row of last year, hidden and left out unasked.
        var asked = SheetReader.Read(Workbook.Read("w", System.IO.File.ReadAllBytes(SheetSampleTests.PathOf(File))), map.With("Plan 26-27!11", RowRole.Own).With("Plan 26-27!17", RowRole.Leave));
        Assert.Equal(44, Assert.Single(asked.Rows, row => row.Label == "Load (old)").Entries.Count);
        Assert.Equal(RowRole.Leave, Assert.Single(asked.Rows, row => row.Label == "Video").Role);
    }

    [Fact]
    public void Marks_beside_a_list_of_matches_add_those_the_list_does_not_have_once_that_is_said()
    {
        const string File = "samples/workbook-03-several-sheets.xlsx";
        var book = Workbook.Read("w", System.IO.File.ReadAllBytes(SheetSampleTests.PathOf(File)));
        // One more mark, in a week that the list has nothing in.
        var overview = book.Sheets[0];
        var marks = overview.Cells.Where(cell => cell.Text.Trim() is "x").GroupBy(cell => cell.Row).MaxBy(row => row.Count())!.Key;
        var mark = overview.Cells.Last(cell => cell.Row == marks && cell.Text.Trim() is "x");
        var at = new CellAt(marks, Enumerable.Range(3, 60).First(column => overview[new(marks, column)] is null or { IsEmpty: true } && overview[new(marks, column + 1)] is null or { IsEmpty: true }));
        var more = book with { Sheets = book.Sheets.Select(sheet => sheet == overview ? new Sheet(sheet.Name, sheet.IsHidden, sheet.Cells.Where(cell => cell.At != at).Append(mark with { At = at }), sheet.Merges, sheet.HiddenRows, sheet.HiddenColumns, sheet.Titles) : sheet).ToValueList() };
        var (list, each) = (SheetReader.Read(more, SheetMap.Empty.With("Q-x", "list")), SheetReader.Read(more, SheetMap.Empty.With("Q-x", "each")));
        var added = each.Rows.SelectMany(row => row.Matches).Except(list.Rows.SelectMany(row => row.Matches)).ToList();
        Assert.All(added, match => Assert.Equal((null, MatchStatus.Provisional), (match.Opponent, match.Status)));
        Assert.Contains(added, match => match.Cell == at);
        Assert.All(added, match => Assert.DoesNotContain(list.Rows.SelectMany(row => row.Matches), other => other.Day is { } day && match.Window.Contains(day)));
    }

    [Theory]
    [InlineData("two", 2)]
    [InlineData("one", 1)]
    public void A_match_noted_twice_in_one_cell_is_as_many_as_is_said(string answer, int wanted)
    {
        const string Rows = "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>Week of</t></is></c><c r=\"B1\" s=\"1\"><v>46265</v></c><c r=\"C1\" s=\"1\"><v>46272</v></c><c r=\"D1\" s=\"1\"><v>46279</v></c><c r=\"E1\" s=\"1\"><v>46286</v></c></row>"
            + "<row r=\"2\"><c r=\"A2\" t=\"inlineStr\"><is><t>Match</t></is></c><c r=\"B2\" t=\"inlineStr\"><is><t>H Norwick</t></is></c><c r=\"C2\" t=\"inlineStr\"><is><t>A Kalnes x2</t></is></c></row>";
        var read = SheetReader.Read(Workbook.Read("plan.xlsx", new MadeWorkbook().With("", "0", "14").Sheet("Plan", Rows).Bytes()), SheetMap.Empty.With("Q-x2", answer));
        Assert.Equal(wanted, read.Rows.SelectMany(row => row.Matches).Count(match => match.Opponent == "Kalnes"));
    }

    private static readonly JsonSerializerOptions Plain = new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static (Season Season, SheetReading Read) Season(string file, SheetMap map)
    {
        var read = SheetReader.Read(Workbook.Read(Path.GetFileName(file), File.ReadAllBytes(SheetSampleTests.PathOf(file))), map);
        var grid = read.Grid!.Value;
        var weeks = Enumerable.Range(1, grid.Count).Select(number => new WeekId($"w{number}")).ToValueList();
        var ids = new Dictionary<string, string>(StringComparer.Ordinal);
        var season = Core.Seasons.Season.Empty(new("s"));
        var setup = Setup.Empty(new TeamId("t"));
        foreach (var edit in new SeasonEdit[] { new StartSeason(grid.FirstDay, grid.WeekStart, weeks, new TeamCard("Harbour Vale")) }.Concat(new SheetImport(read, weeks, setup.ReferenceWeek, (kind, key) => ids.TryGetValue($"{kind}|{key}", out var id) ? id : ids[$"{kind}|{key}"] = $"i{ids.Count}").Edits()))
            season = season.With(Assert.IsType<Accepted>(Decider.Decide(season, edit)).Step);
        return (season, read);
    }
}
