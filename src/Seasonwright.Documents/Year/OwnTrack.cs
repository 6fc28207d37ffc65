using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.Year.YearTexts;

namespace Seasonwright.Documents.Year;

/// <summary>
/// A row of the coach's own. Equal neighbours are one run; a run has its words on a line, a tick its check mark, a number
/// itself. What does not fit leaves a spot, and is said by its cell.
/// </summary>
internal static class OwnTrack
{
    private static double Height(YearPlan plan) => plan.View.IsTight ? 18 : 22;

    private static double Baseline(YearPlan plan) => plan.View.IsTight ? 12 : 13.5;

    public static TrackDrawing Draw(YearPlan plan, Track track)
    {
        var sketch = new TrackSketch(plan, TrackIds.Own(track.Id), track.Name);
        sketch.Name(Baseline(plan));
        var cells = Cells(plan, track).ToList();
        for (var first = 0; first < cells.Count;)
        {
            var last = first;
            while (track.Form is TrackForm.Text or TrackForm.Choice && last + 1 < cells.Count && cells[last + 1].Value == cells[first].Value)
                last++;
            if (cells[first].Value is { } value)
                sketch.Add(Mark(plan, track, value, cells[first].From, cells[last].To, RoomFor(plan, cells, last)));
            first = last + 1;
        }
        foreach (var column in plan.Columns)
            Sentences(plan, sketch, track, column);
        return sketch.Drawing(Height(plan));
    }

    private static IEnumerable<(double From, double To, string? Value)> Cells(YearPlan plan, Track track)
    {
        foreach (var column in plan.Columns)
        {
            if (track.Grain == TrackGrain.Week)
                yield return (column.X, column.Right, plan.Season.CellOf(track.Id, CellPlace.Of(column.Week.Id)));
            else
                foreach (var day in column.Week.Days.Days())
                    yield return (column.XOf(day), column.XOf(day) + column.DayWidth, plan.Season.CellOf(track.Id, CellPlace.Of(day)));
        }
    }

    /// <summary>Words may run on over empty cells, up to the next filled one.</summary>
    private static double RoomFor(YearPlan plan, List<(double From, double To, string? Value)> cells, int last)
    {
        var next = cells.FindIndex(last + 1, cell => cell.Value is not null);
        return next < 0 ? plan.Right : cells[next].From - 4;
    }

    private static IEnumerable<Shape> Mark(YearPlan plan, Track track, string value, double from, double to, double room)
    {
        var baseline = Baseline(plan);
        var centre = new Point((from + to) / 2, baseline - 3.5);
        if (track.Form == TrackForm.Tick)
        {
            yield return to - from < 9
                ? new Line(new(centre.X, centre.Y - 4), new(centre.X, centre.Y + 4), Looks.MatchDay)
                : new Polyline([new(centre.X - 4, centre.Y), new(centre.X - 1, centre.Y + 3), new(centre.X + 4, centre.Y - 3.5)], Looks.MatchDay);
            yield break;
        }
        if (track.Form == TrackForm.Number)
        {
            var unit = track.Unit is { } of && plan.HasWords ? [Say("own.number", value, of), value] : new[] { value };
            var number = Ladder.Whole([.. unit], to - from - 2, Type.Small);
            yield return number.Kind == FitKind.Nothing
                ? new Circle(centre, Math.Min(1.8, (to - from) / 2), Looks.MatchHome)
                : new TextRun(new(centre.X, baseline), number.Text, Type.Small, Looks.Ink, TextAnchor.Middle);
            yield break;
        }
        var line = baseline + (plan.View.IsTight ? 3.5 : 4.5);
        yield return new Line(new(from + 1, line), new(Math.Max(to - 1, from + 2), line), Looks.Rule);
        var words = Ladder.Cut([value], room - from - 1, Type.Small);
        if (words.Kind != FitKind.Nothing)
            yield return new TextRun(new(from + 1, baseline), words.Text, Type.Small, Looks.Ink);
    }

    private static void Sentences(YearPlan plan, TrackSketch sketch, Track track, WeekColumn column)
    {
        if (track.Grain == TrackGrain.Week)
        {
            sketch.Cell(column, $"{plan.Words.Week(column.Week)}: {Spoken(track, plan.Season.CellOf(track.Id, CellPlace.Of(column.Week.Id)))}");
            return;
        }
        var days = column.Week.Days.Days().Select(day => (Day: day, Value: plan.Season.CellOf(track.Id, CellPlace.Of(day)))).ToList();
        if (plan.IsByDay)
        {
            foreach (var (day, value) in days)
                sketch.Cell(column, day, $"{plan.Words.Day(day)}: {Spoken(track, value)}");
            return;
        }
        var filled = days.Where(cell => cell.Value is not null)
            .Select(cell => $"{Say($"day.{cell.Day.DayOfWeek}")} {Spoken(track, cell.Value)}")
            .DefaultIfEmpty(Say("own.empty"));
        sketch.Cell(column, $"{plan.Words.Week(column.Week)}: {YearWords.Join(filled)}");
    }

    private static string Spoken(Track track, string? value) => value switch
    {
        null => Say("own.empty"),
        _ when track.Form == TrackForm.Tick => Say("own.tick"),
        _ when track.Form == TrackForm.Number && track.Unit is { } unit => Say("own.number", value, unit),
        _ => value,
    };
}
