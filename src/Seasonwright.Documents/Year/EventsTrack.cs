using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.Year.YearTexts;

namespace Seasonwright.Documents.Year;

/// <summary>Events as bars over their true days, stacked where they overlap; dashed while provisional.</summary>
internal static class EventsTrack
{
    private const double Top = 4;
    private const double RowHeight = 18;
    private const double BarHeight = 15;

    public static TrackDrawing Draw(YearPlan plan)
    {
        var sketch = new TrackSketch(plan, "events", Say("track.events"));
        var lanes = new Lanes();
        foreach (var e in plan.Events)
        {
            if (plan.Seen(e.Days) is not { } seen)
                continue;
            var (from, to) = plan.Across(seen);
            to = Math.Max(to - 1, from + 5);
            var name = Labelled.Of([e.Title, .. Forms($"event.{e.Kind}")], from, to, plan.HasWords ? 220 : Math.Clamp(plan.Width * 0.12, 96, 150), Type.Small, plan);
            var top = Top + lanes.Take(name.From - 2, name.To + 5) * RowHeight;
            List<Shape> shapes = [new Box(new(from, top, to - from, BarHeight), e.Provisional ? Looks.EventUnsure : Looks.Event, 3)];
            if (name.Text.Kind != FitKind.Nothing)
                shapes.Add(new TextRun(new(name.X, top + 10.8), name.Text.Text, Type.Small, Looks.Ink));
            sketch.Add(new Group(plan.Words.Event(e), shapes.ToValueList(), $"event/{e.Id}"));
        }
        var height = Top + Math.Max(1, lanes.Count) * RowHeight + 1;
        sketch.Name(Top + 11);
        foreach (var column in plan.Columns)
            Cells(plan, sketch, column);
        return sketch.Drawing(height);
    }

    private static void Cells(YearPlan plan, TrackSketch sketch, WeekColumn column)
    {
        var events = plan.Events.Where(e => e.Days.Overlaps(column.Week.Days)).ToList();
        if (!plan.IsByDay)
        {
            sketch.Cell(column, $"{plan.Words.Week(column.Week)}: {Sentence(plan, events)}");
            return;
        }
        foreach (var day in column.Week.Days.Days())
            sketch.Cell(column, day, $"{plan.Words.Day(day)}: {Sentence(plan, events.Where(e => e.Days.Contains(day)))}");
    }

    private static string Sentence(YearPlan plan, IEnumerable<Event> events) =>
        string.Join("; ", events.Select(plan.Words.Event).DefaultIfEmpty(Say("events.none")));
}
