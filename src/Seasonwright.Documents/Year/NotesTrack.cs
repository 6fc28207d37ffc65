using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.Year.YearTexts;

namespace Seasonwright.Documents.Year;

/// <summary>Notes over their days, and the notes of weeks: words on a thin line.</summary>
internal static class NotesTrack
{
    private const double Top = 3;
    private const double RowHeight = 16;
    private const double LeastWords = 160;
    private const double MostWords = 320;

    public static TrackDrawing Draw(YearPlan plan)
    {
        var sketch = new TrackSketch(plan, "notes", Say("track.notes"));
        sketch.Name(Top + 11);
        var lanes = new Lanes();
        foreach (var note in plan.Notes)
        {
            if (plan.Seen(note.Days) is { } seen)
                Draw(plan, sketch, lanes, seen, note.Text, YearWords.Join([plan.Words.Days(note.Days), note.Text]), $"note/{note.Id}");
        }
        foreach (var column in plan.Columns)
        {
            if (plan.Season.NoteOf(column.Week.Id) is { } text)
                Draw(plan, sketch, lanes, column.Week.Days, text, YearWords.Join([plan.Words.Week(column.Week), text]), null);
        }
        foreach (var column in plan.Columns)
            Cells(plan, sketch, column);
        return sketch.Drawing(Top + Math.Max(1, lanes.Count) * RowHeight + 4);
    }

    private static void Draw(YearPlan plan, TrackSketch sketch, Lanes lanes, DaySpan seen, string text, string sentence, string? item)
    {
        var (from, to) = plan.Across(seen);
        to = Math.Max(to - 1, from + 4);
        var most = Math.Clamp(plan.Width / 5, LeastWords, MostWords);
        var words = TextFit.Fit(text, Math.Min(Math.Max(to - from, most), plan.Right - from), Type.Small);
        // At the right end of the season the words stand before the line's end if they are fuller there.
        var before = TextFit.Fit(text, Math.Min(most, to - plan.Left), Type.Small);
        var isBefore = words.Kind != FitKind.Whole && before.Width > words.Width;
        if (isBefore)
            words = before;
        var left = isBefore ? to - words.Width : from;
        var top = Top + lanes.Take(Math.Min(left, from) - 2, Math.Max(to, left + words.Width) + 6) * RowHeight;
        List<Shape> shapes = [new Line(new(from, top + 13.5), new(to, top + 13.5), Looks.Rule)];
        if (words.Kind != FitKind.Nothing)
            shapes.Add(new TextRun(new(left, top + 10), words.Text, Type.Small, Looks.Muted));
        sketch.Add(new Group(sentence, shapes.ToValueList(), item));
    }

    private static void Cells(YearPlan plan, TrackSketch sketch, WeekColumn column)
    {
        var notes = plan.Notes.Where(note => note.Days.Overlaps(column.Week.Days)).ToList();
        var ofWeek = plan.Season.NoteOf(column.Week.Id) is { } text ? Say("note.week", text) : null;
        if (!plan.IsByDay)
        {
            sketch.Cell(column, $"{plan.Words.Week(column.Week)}: {Sentence(notes, ofWeek)}");
            return;
        }
        foreach (var day in column.Week.Days.Days())
            sketch.Cell(column, day, $"{plan.Words.Day(day)}: {Sentence(notes.Where(note => note.Days.Contains(day)), ofWeek)}");
    }

    private static string Sentence(IEnumerable<Note> notes, string? ofWeek)
    {
        var spoken = notes.Select(note => note.Text);
        return string.Join("; ", (ofWeek is null ? spoken : spoken.Append(ofWeek)).DefaultIfEmpty(Say("notes.none")));
    }
}
