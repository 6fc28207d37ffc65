using System.Globalization;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Sheets;
using Seasonwright.Documents.Read.Workbooks;

namespace Seasonwright.Documents.Tests.Read.Sheets;

/// <summary>
/// Year plans laid out as people do (tests/Cases/workbooks/own, invented; make.py there says what stands in them), with what a careful
/// reader takes from each. The old format is written by LibreOffice.
/// </summary>
public class SheetLayoutTests
{
    public static TheoryData<string, string> All()
    {
        var all = new TheoryData<string, string>();
        foreach (var name in Wanted.Keys)
            foreach (var format in new[] { "xlsx", "xls" }) all.Add(name, format);
        return all;
    }

    private sealed record Reading(string FirstDay, int Weeks, string[] Matches, string[] Rows);

    private static readonly SortedDictionary<string, Reading> Wanted = new(StringComparer.Ordinal)
    {
        ["text-dates"] = new("2026-07-06", 42,
            ["2026-10-03 18:00 Home Nordwik", "2026-10-05..2026-10-11 Away Kalnes", "2026-10-28 Away Brovik", "2026-11-23..2026-11-29 Away Ostermeer Pokal", "2027-02-28 Away Nordwik"],
            ["Phase Phases 6", "Spiel Matches 5", "Belastung % Load 42", "Urlaub Own 1", "Kraft Emphasis 42"]),
        ["columns-beside"] = new("2026-08-03", 16,
            ["2026-09-05 19:30 Away Norwick", "2026-09-13 16:00 Home Kalnes", "2026-09-28..2026-10-04 Away Tarnholt", "2026-10-21 18:15 ? Brovik"],
            ["Phase Phases 2", "Opponent Matches 4", "H/A Details 3", "Day Details 3", "Throw-off Details 3", "Load (1-10) Load 16", "Gym Emphasis 16", "Comments Own 2"]),
        ["two-bands"] = new("2026-07-06", 48,
            ["2026-09-19 Home Kalnes", "2026-10-11 Away Brovik", "2027-03-06 Home Norwick"],
            ["Phase Phases 4", "Match Matches 3", "Load Load 48", "Pool Own 2"]),
        ["calendar-of-weeks"] = new("2026-08-31", 12,
            ["2026-09-26 18:00 Home Kalnes", "2026-10-18 Away Norwick"],
            ["Matches Matches 2", "Tests Tests 1", "Day notes Own 30"]),
        ["day-by-day"] = new("2026-08-01", 18,
            ["2026-09-12 Home Kalnes", "2026-10-03 19:00 Away Norwick"],
            ["Team session Own 34", "Gym Own 17", "Match Matches 2", "Remark Own 2"]),
        ["numbers-under-months"] = new("2026-07-06", 40,
            ["2026-09-12 Away Kalnes", "2027-01-31 17:00 Home Brovik"],
            ["Period Phases 2", "Fixtures Matches 2"]),
        ["said-twice"] = new("2026-08-31", 12,
            ["2026-09-19 18:00 Home Kalnes", "2026-09-30 Away Brovik", "2026-10-04 15:30 Home Norwick", "2026-10-12..2026-10-18 Away Tarnholt", "2026-10-26..2026-11-01 Home Queen Maude's", "2026-11-14 17:00 Away Ostermeer"],
            ["Matches Own 4", "Block Blocks 3", "Week of block Own 12", "Match Matches 3", "Fixtures Matches 3"]),
    };

    [Theory]
    [MemberData(nameof(All))]
    public void A_layout_is_read_as_a_careful_reader_would(string name, string format)
    {
        var read = Read(name, format, SheetMap.Empty);
        var wanted = Wanted[name];
        Assert.Empty(read.Problems);
        Assert.Equal((wanted.FirstDay, wanted.Weeks), (read.Grid?.FirstDay.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), read.Grid?.Count));
        Assert.Equal(wanted.Matches, read.Rows.SelectMany(row => row.Matches).OrderBy(match => match.Day ?? match.Window.First).Select(Words), StringComparer.Ordinal);
        Assert.Equal(wanted.Rows, read.Rows.Select(row => $"{row.Label} {row.Role} {(row.Role == RowRole.Matches ? row.Matches.Count : row.Entries.Count)}"), StringComparer.Ordinal);
    }

    [Fact]
    public void Loads_in_parts_of_one_are_per_cent_and_go_on_in_the_next_band()
    {
        var load = Assert.Single(Read("two-bands", "xlsx", SheetMap.Empty).Rows, row => row.Role == RowRole.Load);
        Assert.Equal(("50%", new DateOnly(2026, 7, 6), "60%", new DateOnly(2027, 5, 31)), (load.Entries[0].Text, load.Entries[0].Days.First, load.Entries[^1].Text, load.Entries[^1].Days.First));
        Assert.False(load.IsOfTen);
        // What is said of the row holds for both bands.
        Assert.Equal(48, Assert.Single(Read("two-bands", "xlsx", SheetMap.Empty.With("Year!6", RowRole.Own)).Rows, row => row.Label == "Load").Entries.Count);
    }

    [Fact]
    public void A_column_of_details_that_is_taken_as_a_track_says_nothing_of_the_matches()
    {
        var read = Read("columns-beside", "xlsx", SheetMap.Empty.With("Plan!E", RowRole.Own).With("Plan!F", RowRole.Own));
        Assert.All(read.Rows.SelectMany(row => row.Matches), match => Assert.Equal((null, null), (match.Venue, match.Day)));
        Assert.Equal(4, read.Rows.Count(row => row.Role == RowRole.Own) + 1);
    }

    private static SheetReading Read(string name, string format, SheetMap map) =>
        SheetReader.Read(Workbook.Read($"{name}.{format}", File.ReadAllBytes(SheetSampleTests.PathOf($"own/{name}.{format}"))), map);

    private static string Words(SheetMatch match)
    {
        string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        return string.Join(' ', new[] { match.Day is { } day ? Iso(day) : $"{Iso(match.Window.First)}..{Iso(match.Window.Last)}", match.KickOff?.ToString("HH:mm", CultureInfo.InvariantCulture), match.Venue?.ToString() ?? "?", match.Opponent, match.Competition }.OfType<string>());
    }
}
