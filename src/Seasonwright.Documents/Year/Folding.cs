using Seasonwright.Core;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Year;

/// <summary>A track folded to a thin line with its name. What it says stays, a cell a week.</summary>
internal static class Folding
{
    private const double Height = 14;

    public static TrackDrawing Of(TrackDrawing track, YearPlan plan)
    {
        var sketch = new TrackSketch(plan, track.Id, track.Label);
        sketch.FoldedName(10);
        sketch.Add(new Line(new(plan.Left, 7), new(plan.Right, 7), Looks.Hairline));
        var spoken = track.Cells.ToLookup(cell => cell.Span.Week, cell => cell.Label);
        foreach (var column in plan.Columns)
            sketch.Cell(column, string.Join("; ", spoken[column.Week.Number - 1]));
        return sketch.Drawing(Height);
    }
}
