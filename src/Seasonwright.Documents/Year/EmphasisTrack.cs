using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.Year.YearTexts;

namespace Seasonwright.Documents.Year;

/// <summary>The heading over the qualities, with the key to their strokes; each cell says a week's whole emphasis.</summary>
internal static class EmphasisTrack
{
    private const double Height = 26;
    private const double Baseline = 18;

    public static TrackDrawing Draw(YearPlan plan)
    {
        var sketch = new TrackSketch(plan, "emphasis", Say("track.emphasis"));
        sketch.Name(Baseline);
        var x = plan.Left + 2;
        foreach (var emphasis in new[] { Emphasis.Maintain, Emphasis.Develop, Emphasis.Focus })
        {
            var word = Sentences.Say($"emphasis.{emphasis}");
            var end = x + 26 + TextWidths.Of(word, Type.Small);
            if (end > plan.Right)
                break;
            sketch.Add(QualityTrack.Stroke(emphasis, x, x + 20, Baseline - 3));
            sketch.Add(new TextRun(new(x + 25, Baseline), word, Type.Small, Looks.Muted));
            x = end + 14;
        }
        foreach (var column in plan.Columns)
        {
            var qualities = plan.Setup.Qualities
                .Select(quality => (quality.Name, Level: plan.Season.EmphasisOf(column.Week.Id, quality.Id)))
                .Where(quality => quality.Level != Emphasis.None)
                .OrderByDescending(quality => quality.Level)
                .Select(quality => $"{quality.Name} {Sentences.Say($"emphasis.{quality.Level}")}")
                .DefaultIfEmpty(Say("emphasis.none"));
            sketch.Cell(column, $"{plan.Words.Week(column.Week)}: {YearWords.Join(qualities)}");
        }
        return sketch.Drawing(Height);
    }
}
