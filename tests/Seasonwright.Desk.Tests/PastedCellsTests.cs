using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk.Demo;
using Seasonwright.Desk.Lists;
using Seasonwright.Desk.Tests.Demo;
using Seasonwright.Documents.Year;

namespace Seasonwright.Desk.Tests;

/// <summary>Cells as spreadsheets copy them (tabs between cells, a line a row, quotes around what holds either; common practice, no source), pasted onto the demo's year.</summary>
public class PastedCellsTests
{
    private static readonly (Season Season, Core.Setups.Setup Setup) Demo = DemoSeasonTests.Played(DemoSeason.Make(new(2027, 7, 5)));

    private static readonly string[] Shown = [.. YearDrawing.Of(Demo.Season, Demo.Setup, new YearView()).Tracks.Select(track => track.Id)];

    private static string Own(string name) => TrackIds.Own(Demo.Season.Tracks.Single(track => track.Name == name).Id);

    private static Season Paste(string text, string track, int week, DateOnly? day = null)
    {
        var pasted = PastedCells.Read(Demo.Season, Demo.Setup, Shown, text, track, week, day);
        Assert.Null(pasted.Problem);
        return pasted.Edits.Cast<SeasonEdit>().Aggregate(Demo.Season, (season, edit) => season.With(Assert.IsType<Accepted>(Decider.Decide(season, edit)).Step));
    }

    private static string Problem(string text, string track, int week = 0, DateOnly? day = null)
    {
        var pasted = PastedCells.Read(Demo.Season, Demo.Setup, Shown, text, track, week, day);
        Assert.Empty(pasted.Edits);
        return pasted.Problem!;
    }

    private static WeekId Week(int number) => Demo.Season.Weeks[number - 1].Id;

    [Fact]
    public void A_row_of_loads_goes_to_its_weeks_in_every_way_a_spreadsheet_writes_it()
    {
        var season = Paste("92%\t 80 %\t\t61.6\t61,4\n", "load", 9);
        Assert.Equal([92, 80, null, 62, 61], Enumerable.Range(10, 5).Select(week => season.TargetOf(Week(week))?.PercentOf(Demo.Setup.ReferenceWeek).Value));
        Assert.Equal(Demo.Season.TargetOf(Week(15)), season.TargetOf(Week(15)));
    }

    [Fact]
    public void A_block_fills_the_tracks_below_as_they_are_shown_and_the_history_gets_one_line_for_them()
    {
        var pasted = PastedCells.Read(Demo.Season, Demo.Setup, Shown, "\"main \"\"A\"\"\thall\"\tb\r\nDEFENCE\tset attack\r\nx\t\r\n", Own("Gym hall"), 0, null);
        var cells = Assert.IsType<SetCells>(Assert.Single(pasted.Edits)).Cells;
        Assert.Equal(["main \"A\" hall", "b", "Defence", "Set attack", "yes"], cells.Select(cell => cell.Value), StringComparer.Ordinal);
        var season = Paste("3\t\n", "practices", 4);
        Assert.Equal((3, null), (season.PracticesOf(Week(5))!.Count, season.PracticesOf(Week(6))));
        // How long and how hard they are stays.
        Assert.Equal(Demo.Season.PracticesOf(Week(5))! with { Count = 3 }, season.PracticesOf(Week(5)));
    }

    [Theory]
    [InlineData("phases")]
    [InlineData("matches")]
    [InlineData("events")]
    public void What_is_painted_or_filled_thing_by_thing_says_where_cells_go(string track)
    {
        var problem = Problem("Competition I\t\n", track);
        Assert.Contains("thing by thing", problem, StringComparison.Ordinal);
        Assert.Contains("Power", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void On_the_weeks_the_first_column_names_the_tracks_in_any_order()
    {
        var season = Paste("\t2027-11-15\t2027-11-22\nPower\t3\tdevelop\nload\t50\t55\nOn the coach\t4,5\t\n", "weeks", 19);
        var power = Demo.Setup.Qualities.Single(quality => quality.Name == "Power").Id;
        Assert.Equal((Emphasis.Focus, Emphasis.Develop), (season.EmphasisOf(Week(20), power), season.EmphasisOf(Week(21), power)));
        Assert.Equal("4.5", season.CellOf(Demo.Season.Tracks.Single(track => track.Name == "On the coach").Id, CellPlace.Of(Week(20))));
    }

    [Fact]
    public void Days_go_to_tracks_that_go_by_days()
    {
        var swim = Demo.Season.Tracks.Single(track => track.Name == "Swim").Id;
        var season = Paste("x\t\t1", Own("Swim"), 1, new(2027, 7, 12));
        Assert.Equal(["yes", null, "yes"], Enumerable.Range(12, 3).Select(day => season.CellOf(swim, CellPlace.Of(new DateOnly(2027, 7, day)))), StringComparer.Ordinal);
        Assert.Contains("goes by days", Problem("x", Own("Swim")), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_there_already_is_no_change() =>
        Assert.Empty(PastedCells.Read(Demo.Season, Demo.Setup, Shown, string.Join('\t', Demo.Season.Weeks.Select(week => Demo.Season.TargetOf(week.Id)!.Value.PercentOf(Demo.Setup.ReferenceWeek).Value)), "load", 0, null).Edits);

    [Theory]
    [InlineData("80\tabc", "load", 0, "Row 1, column 2 of the block: “abc” does not fit Load")]
    [InlineData("0.92", "load", 0, "“0.92” does not fit Load")]
    [InlineData("301", "load", 0, "does not fit Load")]
    [InlineData("-1", "practices", 0, "does not fit Practices")]
    [InlineData("15", "practices", 0, "does not fit Practices")]
    [InlineData("2.5", "practices", 0, "does not fit Practices")]
    [InlineData("1.250,5", "load", 0, "does not fit Load")]
    [InlineData("80\t80\t80", "load", 45, "The block has 3 columns, but from week 46 on the season has 2 weeks")]
    [InlineData("Nothing\t80", "weeks", 0, "“Nothing”, which is no track")]
    [InlineData("  \n\t\n", "load", 0, "nothing in what was pasted")]
    public void What_does_not_fit_is_refused_whole_with_its_place(string text, string track, int week, string says) =>
        Assert.Contains(says, Problem(text, track, week), StringComparison.Ordinal);

    [Fact]
    public void More_rows_than_tracks_are_refused() => Assert.Contains("2 rows", Problem("x\nx", Own("Swim"), 0, new(2027, 7, 12)), StringComparison.Ordinal);
}
