using System.Globalization;
using Seasonwright.Core.Seasons;
using Seasonwright.Core;
using Seasonwright.Core.Rules;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.Year.YearTexts;

namespace Seasonwright.Documents.Year;

/// <summary>What the rulebook found: a mark where each finding begins, the gravest on top, how many beside it, and a line over the weeks it covers.</summary>
internal static class FindingsTrack
{
    private const double Middle = 9;
    private const double Radius = 4.6;
    private const double Height = 20;

    public static TrackDrawing Draw(YearPlan plan)
    {
        var sketch = new TrackSketch(plan, TrackIds.Findings, Say("track.findings"));
        sketch.Name(Middle + 3.5);
        foreach (var column in plan.Columns)
        {
            var number = column.Week.Number;
            var here = plan.View.Findings.Where(finding => finding.Place.First <= number && number <= finding.Place.Last).ToList();
            var begun = here.Where(finding => finding.Place.First == number || column == plan.Columns[0]).ToList();
            if (here.Any(finding => finding.Place.Last > number) && column != plan.Columns[^1])
                sketch.Add(new Line(new(column.Centre, Middle), new(column.Centre + plan.ColumnWidth, Middle), Looks.Bracket));
            sketch.Cell(column, $"{plan.Words.Week(column.Week)}: {Sentence(here)}");
            if (begun.Count == 0) continue;
            var worst = begun.Max(finding => finding.Severity);
            List<Shape> shapes = [FindingMark.Of(worst, new(column.Centre, Middle), Radius)];
            if (begun.Count > 1 && plan.ColumnWidth >= 2 * Radius + 12)
                shapes.Add(new TextRun(new(column.Centre + Radius + 2, Middle + 3), begun.Count.ToString(CultureInfo.InvariantCulture), Type.Small, Looks.Muted));
            sketch.Add(new Group(Sentence(begun), shapes.ToValueList()));
        }
        return sketch.Drawing(Height);
    }

    private static string Sentence(List<Finding> findings) => findings.Count == 0
        ? Say("findings.none")
        : string.Join(" ", findings.Select(finding => $"{RuleText.Of(finding.Severity)}: {finding.Sentence}"));
}
