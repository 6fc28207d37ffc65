using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.Year.YearTexts;

namespace Seasonwright.Documents.Year;

/// <summary>How much one quality gets: a stroke for each run of weeks of one block with one emphasis, thicker the more.</summary>
internal static class QualityTrack
{
    public static TrackDrawing Draw(YearPlan plan, Quality quality)
    {
        var height = plan.View.IsTight ? 14.5 : 17;
        var sketch = new TrackSketch(plan, TrackIds.Emphasis(quality.Id), quality.Name);
        sketch.RowName(height / 2 + 3.5);
        sketch.Add(new Line(new(plan.Left, height - 0.5), new(plan.Right, height - 0.5), Looks.Hairline));
        var weeks = plan.Columns
            .Select(column => (Column: column, Level: plan.Season.EmphasisOf(column.Week.Id, quality.Id), Block: plan.Season.BlockOf(column.Week)?.First.Number))
            .ToList();
        for (var first = 0; first < weeks.Count;)
        {
            var last = first;
            while (last + 1 < weeks.Count && weeks[last + 1].Level == weeks[first].Level && weeks[last + 1].Block == weeks[first].Block)
                last++;
            if (weeks[first].Level != Emphasis.None)
                sketch.Add(Stroke(weeks[first].Level, weeks[first].Column.X + 1, weeks[last].Column.Right - 1, height / 2 - 0.5));
            first = last + 1;
        }
        foreach (var (column, level, _) in weeks)
            sketch.Cell(column, YearWords.Join([plan.Words.Week(column.Week), Say("emphasis.week", quality.Name, Sentences.Say($"emphasis.{level}"))]));
        return sketch.Drawing(height);
    }

    /// <summary>Hairline, medium bar, thick bar.</summary>
    public static Box Stroke(Emphasis emphasis, double from, double to, double y)
    {
        var (thickness, look) = emphasis switch
        {
            Emphasis.Maintain => (1.6, Looks.Maintain),
            Emphasis.Develop => (4.6, Looks.Develop),
            _ => (9.4, Looks.Focus),
        };
        return new Box(new(from, y - thickness / 2, to - from, thickness), look, emphasis == Emphasis.Maintain ? 0 : 1.5);
    }
}
