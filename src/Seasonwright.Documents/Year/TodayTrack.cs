using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.Year.YearTexts;

namespace Seasonwright.Documents.Year;

/// <summary>The flag at the foot of today's column. Not part of the grid: the weeks say which of them is now.</summary>
internal static class TodayTrack
{
    private const double Height = 22;

    public static TrackDrawing Draw(YearPlan plan)
    {
        var sketch = new TrackSketch(plan, "today", "");
        var today = plan.Today!.Value;
        var column = plan.ColumnOf(today);
        var width = TextWidths.Of(Say("today"), Type.SmallHeavy) + 14;
        var x = Math.Clamp(column.XOf(today) + column.DayWidth - width / 2, plan.Left, Math.Max(plan.Left, plan.Width - width));
        sketch.Add(new Box(new(x, 3, width, 16), Looks.TodayFlag, 8));
        sketch.Add(new TextRun(new(x + width / 2, 14.2), Say("today"), Type.SmallHeavy, Looks.OnTodayFlag, TextAnchor.Middle));
        return sketch.Drawing(Height);
    }
}
