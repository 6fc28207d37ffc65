using System.Collections.Immutable;
using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.Year.YearTexts;

namespace Seasonwright.Documents.Year;

/// <summary>
/// The calendar: a thin row for every weekday, week start first, a stepped line between months, match days ringed. By day it is
/// one row of days.
/// </summary>
internal static class DatesTrack
{
    private const double RowHeight = 13.8;
    private const double Top = 4;

    /// <summary>Of a match day where there is no room for its date.</summary>
    private const double SpotRadius = 2.6;

    public static TrackDrawing Draw(YearPlan plan) => plan.IsByDay ? ByDay(plan) : ByWeek(plan);

    private static TrackDrawing ByWeek(YearPlan plan)
    {
        var sketch = new TrackSketch(plan, TrackIds.Dates, Say("track.dates"));
        var height = Top + 7 * RowHeight + 4;
        sketch.Name(Top + 10, Say(plan.IsSlim ? "hint.dates.slim" : "hint.dates"), height, 12);
        for (var slot = 0; slot < 7; slot++)
            sketch.GutterFigure(Say($"day.{(DayOfWeek)(((int)plan.Season.Frame.WeekStart + slot) % 7)}.letter"), Baseline(slot));
        var certain = MatchDays.Certain(plan);
        var unsure = MatchDays.Unsure(plan);
        foreach (var column in plan.Columns)
        {
            Step(plan, sketch, column);
            foreach (var day in column.Week.Days.Days())
            {
                var slot = column.SlotOf(day);
                var centre = new Point(column.Centre, Top + (slot + 0.5) * RowHeight);
                var isMatch = certain.Contains(day) || unsure.Contains(day);
                if (plan.IsSlim)
                    Slim(plan, sketch, column, day, slot, centre, certain, unsure);
                else
                {
                    if (isMatch)
                        sketch.Add(new Circle(centre, 6.9, certain.Contains(day) ? Looks.MatchDay : Looks.MatchDayUnsure));
                    sketch.Add(new TextRun(new(column.Centre, Baseline(slot)), Number(day), Type.Small, Look(day), TextAnchor.Middle));
                }
                sketch.Cell(new Area(column.X, Top + slot * RowHeight, column.Width, RowHeight), column, day, Sentence(plan, day));
            }
        }
        return sketch.Drawing(height);
    }

    /// <summary>No room for every date: those that begin some of the weeks, and a spot for each match day.</summary>
    private static void Slim(YearPlan plan, TrackSketch sketch, WeekColumn column, DateOnly day, int slot, Point centre, ImmutableHashSet<DateOnly> certain, ImmutableHashSet<DateOnly> unsure)
    {
        if (certain.Contains(day))
            sketch.Add(new Circle(centre, SpotRadius, Looks.MatchHome));
        else if (unsure.Contains(day))
            sketch.Add(new Circle(centre, SpotRadius + 0.4, Looks.MatchDayUnsure));
        else if (slot == 0 && plan.HasFigures(column) && !ReachesSpot())
            sketch.Add(new TextRun(new(column.Centre, Baseline(slot)), Number(day), Type.Small, Look(day), TextAnchor.Middle));

        // In the slimmest columns a figure is wider than its own.
        bool ReachesSpot()
        {
            var weeks = (int)((TextWidths.Of(Number(day), Type.Small) / 2 + SpotRadius + 1) / column.Width);
            return Enumerable.Range(-weeks, 2 * weeks + 1).Any(week => day.AddDays(7 * week) is var beside && (certain.Contains(beside) || unsure.Contains(beside)));
        }
    }

    private static TrackDrawing ByDay(YearPlan plan)
    {
        const double Height = 50;
        var sketch = new TrackSketch(plan, TrackIds.Dates, Say("track.dates"));
        sketch.Name(13, Say("hint.dates.day"), Height);
        var certain = MatchDays.Certain(plan);
        var unsure = MatchDays.Unsure(plan);
        // All days alike: three letters only where the widest of them fit.
        var form = Enum.GetValues<DayOfWeek>().All(day => TextWidths.Of(Say($"day.{day}.short"), Type.Small) <= plan.DayWidth - 3) ? "short" : "letter";
        foreach (var column in plan.Columns)
        {
            sketch.Add(new Line(new(column.X, 3), new(column.X, Height), Looks.Hairline));
            foreach (var day in column.Week.Days.Days())
            {
                var x = column.XOf(day) + column.DayWidth / 2;
                sketch.Centred(x, 13, column.DayWidth - 2, Type.Small, Looks.Muted, [Say($"day.{day.DayOfWeek}.{form}")]);
                if (certain.Contains(day) || unsure.Contains(day))
                    sketch.Add(new Circle(new(x, 26), 8.5, certain.Contains(day) ? Looks.MatchDay : Looks.MatchDayUnsure));
                sketch.Centred(x, 29.6, column.DayWidth - 2, Type.Mark, Look(day), [Number(day)]);
                if (Offset(plan, day) is { } offset)
                    sketch.Centred(x, 46, column.DayWidth - 2, Type.Small, Looks.Muted, [offset, offset["MD".Length..]]);
                sketch.Cell(column, day, Sentence(plan, day));
            }
        }
        return sketch.Drawing(Height);
    }

    /// <summary>
    /// The part of the line between months that this column holds: down its left edge beside the new month, across above the
    /// first, and up its right edge beside the old one.
    /// </summary>
    private static void Step(YearPlan plan, TrackSketch sketch, WeekColumn column)
    {
        var days = column.Week.Days;
        var first = new DateOnly(days.Last.Year, days.Last.Month, 1);
        if (!days.Contains(first) || first == plan.Days.First)
            return;
        var (top, bottom) = (Top, Top + 7 * RowHeight);
        var y = Top + column.SlotOf(first) * RowHeight;
        List<Point> line = [new(column.X, bottom), new(column.X, y)];
        if (y > top)
            line.AddRange([new(column.Right, y), new(column.Right, top)]);
        sketch.Add(new Polyline(line.ToValueList(), Looks.Rule));
    }

    /// <summary>"MD-2" within a week of a match; farther from every match it says nothing to anybody. Common practice, no source.</summary>
    private static string? Offset(YearPlan plan, DateOnly day) =>
        MatchDay.Of(day, plan.Season.MatchDays) is var at && Math.Min(at.ToNext ?? int.MaxValue, at.SinceLast ?? int.MaxValue) <= 7 ? at.Label : null;

    private static double Baseline(int slot) => Top + slot * RowHeight + 10.2;

    private static string Number(DateOnly day) => day.Day.ToString(CultureInfo.InvariantCulture);

    private static TextLook Look(DateOnly day) =>
        day.DayOfWeek is DayOfWeek.Saturday or DayOfWeek.Sunday ? Looks.Weekend : Looks.Ink;

    private static string Sentence(YearPlan plan, DateOnly day)
    {
        var matches = plan.Matches.Where(match => match.Day == day && match.IsOnOneDay)
            .Select(match => Say($"match.{match.Venue?.ToString() ?? "Unknown"}", match.Opponent ?? Say("match.nobody")));
        return YearWords.Join([plan.Words.Day(day), .. Offset(plan, day) is { } offset ? [offset] : Array.Empty<string>(), .. matches, .. plan.Today == day ? [Say("today")] : Array.Empty<string>()]);
    }
}
