using System.Globalization;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.Year.YearTexts;

namespace Seasonwright.Documents.Year;

/// <summary>A tick and the name where a month begins.</summary>
internal static class MonthsTrack
{
    private const double Height = 22;
    private const double Baseline = 14.5;

    public static TrackDrawing Draw(YearPlan plan)
    {
        var sketch = new TrackSketch(plan, TrackIds.Months, Say("track.months"));
        sketch.Name(Baseline);
        var starts = Starts(plan).ToList();
        for (var i = 0; i < starts.Count; i++)
        {
            var (day, x) = starts[i];
            var room = (i + 1 < starts.Count ? starts[i + 1].X : plan.Right) - x - 7;
            sketch.Add(new Line(new(x, 4), new(x, Height), Looks.Rule));
            var fitted = Ladder.Whole([.. Names(day, i == 0)], room, Type.Heading);
            if (fitted.Kind != FitKind.Nothing)
                sketch.Add(new TextRun(new(x + 4, Baseline), fitted.Text, Type.Heading, Looks.Ink));
        }
        foreach (var column in plan.Columns)
            sketch.Cell(column, plan.Words.Week(column.Week) + " " + column.Week.Days.Last.Year.ToString(CultureInfo.InvariantCulture));
        return sketch.Drawing(Height);
    }

    /// <summary>Where months begin: the column that holds the first of the month, by day the day itself.</summary>
    private static IEnumerable<(DateOnly Day, double X)> Starts(YearPlan plan)
    {
        yield return (plan.Days.First, plan.IsByDay ? plan.ColumnOf(plan.Days.First).XOf(plan.Days.First) : plan.Left);
        foreach (var column in plan.Columns)
        {
            var first = new DateOnly(column.Week.Days.Last.Year, column.Week.Days.Last.Month, 1);
            if (column.Week.Days.Contains(first) && first > plan.Days.First)
                yield return (first, plan.IsByDay ? column.XOf(first) : column.X);
        }
    }

    private static IEnumerable<string> Names(DateOnly day, bool isFirst)
    {
        var (name, brief) = (Say($"month.{day.Month}"), Say($"month.{day.Month}.short"));
        if (isFirst || day.Month == 1)
        {
            yield return $"{name} {day.Year:0000}";
            yield return $"{brief} {day.Year:0000}";
        }
        yield return name;
        yield return brief;
    }
}
