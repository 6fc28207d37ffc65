using CsCheck;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.Tests.Draw;
using Seasonwright.Documents.Year;

namespace Seasonwright.Documents.Tests.Year;

/// <summary>What holds of every drawing of every season.</summary>
public class YearLaws
{
    private const int Drawings = 150;

    [Fact]
    public void No_text_leaves_its_track() => Holds((_, drawing) =>
        from track in drawing.Tracks
        from text in track.Texts()
        where text.Area.X < -0.02 || text.Area.Right > drawing.Width + 0.02 || text.Area.Y < 0 || text.Area.Bottom > track.Height
        select $"{track.Id} ({drawing.Width} x {track.Height}): '{text.Text.Text}' at {text.Area}");

    [Fact]
    public void No_text_lies_over_another() => Holds((_, drawing) =>
        from track in drawing.Tracks
        let texts = track.Texts()
        from one in Enumerable.Range(0, texts.Count)
        from other in Enumerable.Range(one + 1, texts.Count - one - 1)
        where Ink.Overlaps(texts[one].Area, texts[other].Area)
        select $"{track.Id} at {drawing.Width}: '{texts[one].Text.Text}' {texts[one].Area} over '{texts[other].Text.Text}' {texts[other].Area}");

    [Fact]
    public void No_text_is_smaller_than_9_px_and_each_stands_on_a_ground_it_contrasts_with() => Holds((_, drawing) =>
        drawing.Tracks.SelectMany(track => TextGrounds.Undeclared(track, Palette.Paper)
            .Concat(track.Texts().Where(text => text.Text.Style.Size < 9).Select(text => $"{track.Id}: small '{text.Text.Text}'"))));

    [Fact]
    public void Every_track_has_cells_that_cover_every_week_once() => Holds((_, drawing) =>
        from track in drawing.Tracks
        where track.Id != "today"
        from column in drawing.Columns
        let cells = track.Cells.Where(cell => cell.Span.Week == column.Week.Number - 1).ToList()
        where !(IsWeek(column, cells) || cells.Select(cell => cell.Span.Day).SequenceEqual(column.Week.Days.Days().Cast<DateOnly?>()))
            || cells.Exists(cell => cell.Label.Length == 0 || cell.Area.Width * cell.Area.Height == 0)
        select $"{track.Id}, week {column.Week.Number}: {string.Join(" | ", cells)}");

    private static bool IsWeek(WeekColumn column, List<Cell> cells) =>
        cells is [{ Span.Day: null } cell] && Math.Abs(cell.Area.X - column.X) < 0.01 && Math.Abs(cell.Area.Right - column.Right) < 0.02;

    [Fact]
    public void Ids_of_tracks_and_cells_stand_once() => Holds((_, drawing) =>
        Twice(drawing.Tracks.Select(track => track.Id))
            .Concat(Twice(drawing.Tracks.SelectMany(track => track.Cells.Select(cell => $"{track.Id} {cell.Span}"))))
            .Concat(drawing.Tracks.SelectMany(track => track.Cells).Where(cell => cell.Span.Week >= drawing.Columns[^1].Week.Number).Select(cell => cell.Label)));

    private static IEnumerable<string> Twice(IEnumerable<string> ids) =>
        ids.GroupBy(id => id, StringComparer.OrdinalIgnoreCase).Where(same => same.Count() > 1).Select(same => same.Key);

    [Fact]
    public void Each_match_event_test_and_note_in_sight_is_drawn_exactly_once() => Holds((season, drawing) =>
    {
        var seen = new DaySpan(drawing.Columns[0].Week.Days.First, drawing.Columns[^1].Week.Days.Last);
        return Differences("matches", season.AllMatches.Where(match => match.Days?.Overlaps(seen) == true).Select(match => $"match/{match.Id}"))
            .Concat(Differences("events", season.AllEvents.Where(e => e.Days.Overlaps(seen)).Select(e => $"event/{e.Id}")))
            .Concat(Differences("tests", season.TestDays.Where(test => seen.Contains(test.Day)).Select(test => $"test/{test.Id}")))
            .Concat(Differences("notes", season.Notes.Where(note => note.Days.Overlaps(seen)).Select(note => $"note/{note.Id}")));

        IEnumerable<string> Differences(string id, IEnumerable<string> expected)
        {
            // A folded track shows none of them.
            if (drawing.Tracks.FirstOrDefault(track => track.Id == id) is not { Height: > 14 } track)
                return [];
            var drawn = track.Marks.OfType<Group>().Select(group => group.Item).OfType<string>().Order(StringComparer.Ordinal).ToList();
            var wanted = expected.Order(StringComparer.Ordinal).ToList();
            return drawn.SequenceEqual(wanted, StringComparer.Ordinal) ? [] : [$"{id}: {string.Join(' ', drawn)} for {string.Join(' ', wanted)}"];
        }
    });

    /// <summary>Judged by the facts, week by week: which phase or block it is marked with.</summary>
    [Fact]
    public void Phases_and_blocks_cover_exactly_their_weeks() => Holds((season, drawing) =>
        from track in drawing.Tracks
        where track.Id is "phases" or "blocks"
        from column in drawing.Columns
        let marked = track.Id == "phases"
            ? season.Facts.FindValue(SeasonFacets.WeekPhase, column.Week.Id)?.Text
            : season.Facts.FindValue(SeasonFacets.WeekBlock, column.Week.Id)?.Text
        let over = track.Marks.OfType<Group>().Where(drawn => From(drawn) < column.Centre && column.Centre < To(drawn)).ToList()
        where over.Count != (marked is null ? 0 : 1)
            || over.Exists(drawn => drawn.Item != $"{track.Id[..^1]}/{marked}" || From(drawn) > column.X + 2 || To(drawn) < column.Right - 2)
        select $"{track.Id}, week {column.Week.Number}: {marked} is {string.Join(", ", over.Select(drawn => drawn.Item))}");

    private static double From(Group drawn) => drawn.Shapes[0] is Box box ? box.Area.X : ((Polyline)drawn.Shapes[0]).Points[0].X;

    private static double To(Group drawn) => drawn.Shapes[0] is Box box ? box.Area.Right : ((Polyline)drawn.Shapes[0]).Points[^1].X;

    [Fact]
    public void Load_bars_are_as_high_as_the_load() => Holds((season, drawing) =>
    {
        if (drawing.Load is not { } scale)
            return [];
        var bars = drawing.Tracks.Single(track => track.Id == "load").Flat().OfType<Box>().Where(box => box.Look == Looks.LoadPlanned).ToList();
        var perPercent = (scale.ZeroY - scale.TopY) / scale.Top;
        // 100 % is the usual week, which nobody changed here: 3,195 AU.
        var expected = drawing.Columns.Where(column => season.TargetOf(column.Week.Id) is not null)
            .Select(column => (column.Centre, Height: Math.Min(300, season.TargetOf(column.Week.Id)!.Value.Au / 31.95) * perPercent)).ToList();
        return bars.Count == expected.Count && bars.Zip(expected).All(pair =>
            Math.Abs(pair.First.Area.Bottom - scale.ZeroY) < 0.02
            && Math.Abs(pair.First.Area.Height - pair.Second.Height) < 0.02
            && Math.Abs(pair.First.Area.Centre.X - pair.Second.Centre) < 0.02)
            ? []
            : [$"{string.Join(' ', bars.Select(bar => bar.Area.Height))} for {string.Join(' ', expected.Select(bar => bar.Height))}"];
    });

    [Fact]
    public void A_place_across_is_the_day_that_stands_there() => Holds((_, drawing) =>
        from column in drawing.Columns
        from day in column.Week.Days.Days()
        where column.DayAt(column.XOf(day) + column.DayWidth / 2) != day
        select $"{day} in week {column.Week.Number}");

    [Fact]
    public void Equal_facts_give_equal_drawings() => Gen.Select(RandomSeasons.Any, RandomSeasons.Views).Sample(
        (season, view) =>
        {
            var again = new Season(season.Id, season.Facts.Keys.Reverse().Aggregate(FactSet.Empty, (facts, key) => facts.With(key, season.Facts[key])));
            return YearDrawing.Of(season, Setup.Empty(new("t")), view) == YearDrawing.Of(again, Setup.Empty(new("t")), view);
        },
        iter: 30, print: _ => "");

    private static void Holds(Func<Season, YearDrawing, IEnumerable<string>> faults) => RandomSeasons.Drawn.Sample(
        drawn => Assert.Equal("", string.Join(Environment.NewLine, faults(drawn.Season, drawn.Drawing).Take(3))), iter: Drawings, print: _ => "");
}
