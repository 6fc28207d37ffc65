using System.Collections.Immutable;
using Seasonwright.Core;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Year;

/// <summary>A track while it is being drawn. Its name stands in the gutter, today's part lies beneath everything.</summary>
internal sealed class TrackSketch(YearPlan plan, string id, string label)
{
    private const double GutterLeft = 4;
    private const double GutterGap = 8;
    private const double LineHeight = 11.5;
    private const int MostLines = 4;

    private readonly List<Shape> marks = [];
    private readonly List<Cell> cells = [];

    // What stands in the gutter above the chart's marks: it needs the height, which is known last.
    private readonly List<(double X, double Width, string Label, Core.Calendar.DaySpan? Day, int Week)> whole = [];

    public void Add(Shape shape) => marks.Add(shape);

    public void Add(IEnumerable<Shape> shapes) => marks.AddRange(shapes);

    /// <summary>A cell of a week, as high as the track.</summary>
    public void Cell(WeekColumn column, string sentence) =>
        whole.Add((column.X, column.Width, sentence, null, column.Week.Number - 1));

    /// <summary>A cell of a day, as high as the track.</summary>
    public void Cell(WeekColumn column, DateOnly day, string sentence) =>
        whole.Add((column.XOf(day), column.DayWidth, sentence, Core.Calendar.DaySpan.Of(day), column.Week.Number - 1));

    /// <summary>A cell with a place of its own.</summary>
    public void Cell(Area area, WeekColumn column, DateOnly day, string sentence) =>
        cells.Add(new Cell(area, new CellSpan(column.Week.Number - 1, day), sentence));

    /// <summary>The track's name, and beneath it in small print the longest form of the hint that has room.</summary>
    /// <param name="baseline">Where the name stands.</param>
    /// <param name="hint">Forms from long to short, parted by '|', each of which may take several lines; empty for none.</param>
    /// <param name="bottom">The hint ends above this.</param>
    /// <param name="room">px kept free at the gutter's right for figures of the track.</param>
    public void Name(double baseline, string hint = "", double bottom = 0, double room = 0)
    {
        var width = plan.LabelWidth - GutterLeft - GutterGap;
        Gutter(label, baseline, width, Type.Name, Looks.Ink);
        foreach (var form in hint.Split('|'))
        {
            var lines = TextWrap.Lines(form, width - room, Type.Small);
            if (lines.Count > MostLines || baseline + 13 + LineHeight * (lines.Count - 1) + 2.5 > bottom)
                continue;
            for (var i = 0; i < lines.Count; i++)
                marks.Add(new TextRun(new(GutterLeft, baseline + 13 + LineHeight * i), lines[i], Type.Small, Looks.Muted));
            break;
        }
    }

    /// <summary>The name of one row among several of a kind.</summary>
    public void RowName(double baseline) =>
        Gutter(label, baseline, plan.LabelWidth - GutterLeft - GutterGap, Type.Row, Looks.Ink);

    public void FoldedName(double baseline) =>
        Gutter(label, baseline, plan.LabelWidth - GutterLeft - GutterGap, Type.Small, Looks.Muted);

    /// <summary>A figure at the gutter's right end.</summary>
    public void GutterFigure(string text, double baseline) =>
        marks.Add(new TextRun(new(plan.LabelWidth - GutterGap + 2, baseline), text, Type.Small, Looks.Muted, TextAnchor.End));

    /// <summary>Text if it fits the width, in the middle of a place; the first of the candidates that does.</summary>
    /// <returns>Whether anything was drawn.</returns>
    public bool Centred(double x, double baseline, double width, TextStyle style, TextLook look, ImmutableArray<string> candidates)
    {
        var fitted = Ladder.Whole(candidates, width, style);
        if (fitted.Kind != FitKind.Nothing)
            marks.Add(new TextRun(new(x, baseline), fitted.Text, style, look, TextAnchor.Middle));
        return fitted.Kind != FitKind.Nothing;
    }

    public TrackDrawing Drawing(double height)
    {
        var shapes = new List<Shape>(marks.Count + 1);
        if (plan.Today is { } today)
        {
            var column = plan.ColumnOf(today);
            shapes.Add(new Box(new(column.X, 0, column.XOf(today) + column.DayWidth - column.X, height), Looks.TodayColumn));
        }
        shapes.AddRange(marks);
        cells.AddRange(whole.Select(cell => new Cell(
            new Area(cell.X, 0, cell.Width, height), new CellSpan(cell.Week, cell.Day?.First), cell.Label)));
        return new TrackDrawing(id, label, height, shapes.ToValueList(), cells.ToValueList());
    }

    private void Gutter(string text, double baseline, double width, TextStyle style, TextLook look)
    {
        var fitted = TextFit.Fit(text, width, style);
        if (fitted.Kind != FitKind.Nothing)
            marks.Add(new TextRun(new(GutterLeft, baseline), fitted.Text, style, look));
    }
}
