using Seasonwright.Core;
using System.Collections.Immutable;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.Year.YearTexts;

namespace Seasonwright.Documents.Year;

/// <summary>Test days as triangles, with what is tested beside them, stacked where it would run into the next.</summary>
internal static class TestsTrack
{
    private const double Top = 4;
    private const double RowHeight = 15;
    private const double Reach = 5;
    private const double MostWords = 220;

    public static TrackDrawing Draw(YearPlan plan)
    {
        var sketch = new TrackSketch(plan, "tests", Say("track.tests"));
        var tests = plan.TestDays;
        var lanes = new Lanes();
        foreach (var test in tests)
        {
            var x = Centre(plan, test.Day);
            var name = Labelled.Of([test.Battery], x - Reach, x + Reach, MostWords, Type.Small, plan);
            var top = Top + lanes.Take(name.From - 1, name.To + 3) * RowHeight;
            List<Shape> shapes = [Polygon.Triangle(new(x - Reach, top + 1, 2 * Reach, 9.5), Looks.TestDay)];
            if (name.Text.Kind != FitKind.Nothing)
                shapes.Add(new TextRun(new(name.X, top + 9.6), name.Text.Text, Type.Small, Looks.Muted));
            sketch.Add(new Group(Sentence(plan, test), shapes.ToValueList(), $"test/{test.Id}"));
        }
        sketch.Name(Top + 10);
        foreach (var column in plan.Columns)
            Cells(plan, sketch, column, tests);
        return sketch.Drawing(Top + Math.Max(1, lanes.Count) * RowHeight + 3);
    }

    private static double Centre(YearPlan plan, DateOnly day)
    {
        var column = plan.ColumnOf(day);
        return plan.HasWords ? column.XOf(day) + column.DayWidth / 2 : column.Centre;
    }

    private static void Cells(YearPlan plan, TrackSketch sketch, WeekColumn column, ImmutableArray<TestDay> tests)
    {
        if (!plan.IsByDay)
        {
            sketch.Cell(column, $"{plan.Words.Week(column.Week)}: {Sentence(plan, tests.Where(test => column.Week.Days.Contains(test.Day)))}");
            return;
        }
        foreach (var day in column.Week.Days.Days())
            sketch.Cell(column, day, $"{plan.Words.Day(day)}: {Sentence(plan, tests.Where(test => test.Day == day))}");
    }

    private static string Sentence(YearPlan plan, IEnumerable<TestDay> tests) =>
        string.Join("; ", tests.Select(test => Sentence(plan, test)).DefaultIfEmpty(Say("tests.none")));

    private static string Sentence(YearPlan plan, TestDay test)
    {
        List<string> parts = [Say("test", plan.Words.Day(test.Day), test.Battery)];
        if (test.Part is { } part) parts.Add(part);
        if (test.For is { } whom) parts.Add(Say("event.for", whom));
        return YearWords.Join(parts);
    }
}
