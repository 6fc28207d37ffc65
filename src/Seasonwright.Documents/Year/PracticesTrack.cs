using System.Globalization;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.Year.YearTexts;

namespace Seasonwright.Documents.Year;

/// <summary>The head coach's practices: how many, and beneath the minutes of one wherever they change.</summary>
internal static class PracticesTrack
{
    private const double Height = 30;

    public static TrackDrawing Draw(YearPlan plan)
    {
        var sketch = new TrackSketch(plan, "practices", Say("track.practices"));
        sketch.Name(13, Say("hint.practices"), Height + 1);
        Minutes? before = null;
        foreach (var column in plan.Columns)
        {
            var practices = plan.Season.PracticesOf(column.Week.Id);
            if (practices is null)
                sketch.Add(new Circle(new(column.Centre, 9.5), 0.9, Looks.MatchHomeQuiet));
            else if (Draw(plan, sketch, column, practices, before) is { } shown)
                before = shown;
            sketch.Cell(column, $"{plan.Words.Week(column.Week)}: {plan.Words.Practices(practices)}");
        }
        return sketch.Drawing(Height);
    }

    /// <returns>The minutes that hold from here on, if any were named.</returns>
    private static Minutes? Draw(YearPlan plan, TrackSketch sketch, WeekColumn column, Practices practices, Minutes? before)
    {
        var count = practices.Count.ToString(CultureInfo.InvariantCulture);
        sketch.Centred(column.Centre, 13, column.Width - 2, Type.Mark, Looks.Ink, [count]);
        var minutes = practices.Minutes ?? plan.Setup.UsualWeek.Practices.Minutes;
        if (practices.Count == 0 || minutes == before || plan.IsSlim)
            return null;
        var text = plan.HasWords ? minutes.ToString() : minutes.Value.ToString(CultureInfo.InvariantCulture);
        return sketch.Centred(column.Centre, 25, column.Width - 2, Type.Small, Looks.Muted, [text]) ? minutes : null;
    }
}
