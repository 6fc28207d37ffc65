using System.Globalization;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.Year.YearTexts;

namespace Seasonwright.Documents.Year;

/// <summary>Week numbers with their dates and ISO weeks beneath, and small marks for locked and ready weeks.</summary>
internal static class WeeksTrack
{
    private const double NumberBaseline = 14;
    private const double RowHeight = 11.5;

    public static TrackDrawing Draw(YearPlan plan)
    {
        var sketch = new TrackSketch(plan, TrackIds.Weeks, Say("track.weeks"));
        var hasDates = plan.HasWords || !plan.View.Sees(TrackIds.Dates);
        var hasIso = plan.Columns.Any(column => column.Week.IsoWeek.Number != column.Week.Number);
        var hasMarks = plan.View.Sees("marks") && plan.Columns.Any(column => plan.Season.IsLocked(column.Week.Id) || plan.Season.IsReady(column.Week.Id));

        var bottom = NumberBaseline;
        var datesAt = hasDates ? bottom += RowHeight : 0;
        var isoAt = hasIso ? bottom += RowHeight : 0;
        var locksAt = hasMarks ? bottom += 9 : 0;
        // Side by side they need 15 px.
        var ticksAt = hasMarks && plan.IsSlim ? bottom += 9 : locksAt;
        var height = bottom + 5;
        sketch.Name(NumberBaseline, hasIso ? Say("hint.weeks.iso") : "", height + 1);

        foreach (var column in plan.Columns)
        {
            var week = column.Week;
            Number(plan, sketch, column);
            if (hasDates)
                sketch.Centred(column.Centre, datesAt, column.Width - 3, Type.Small, Looks.Muted, [.. Dates(plan, column)]);
            if (hasIso && week.IsoWeek.Number != week.Number && plan.HasFigures(column))
                sketch.Centred(column.Centre, isoAt, SlimRoom(plan, column), Type.Small, Looks.Muted, [Iso(plan, week.IsoWeek.Number)]);
            var (isLocked, isReady) = (hasMarks && plan.Season.IsLocked(week.Id), hasMarks && plan.Season.IsReady(week.Id));
            var aside = isLocked && isReady && !plan.IsSlim ? 4.5 : 0;
            if (isLocked)
                sketch.Add(WeekMarks.Locked(new(column.Centre - aside, locksAt - 3)));
            if (isReady)
                sketch.Add(WeekMarks.Ready(new(column.Centre + aside, ticksAt - 3)));
            sketch.Cell(column, Sentence(plan, column));
        }
        return sketch.Drawing(height);
    }

    private static void Number(YearPlan plan, TrackSketch sketch, WeekColumn column)
    {
        var text = column.Week.Number.ToString(CultureInfo.InvariantCulture);
        var isNow = plan.Today is { } today && column.Week.Days.Contains(today);
        // Today's number is always there, and then its neighbours give way.
        if (!isNow && (!plan.HasFigures(column) || plan.Today is { } now && Math.Abs(plan.ColumnOf(now).Week.Number - column.Week.Number) < plan.Stride))
            return;
        if (isNow)
        {
            var width = TextWidths.Of(text, Type.Figure) + 8;
            sketch.Add(new Box(new(column.Centre - width / 2, NumberBaseline - 11, width, 14.5), Looks.TodayFlag, 7));
        }
        sketch.Centred(column.Centre, NumberBaseline, SlimRoom(plan, column), Type.Figure, isNow ? Looks.OnTodayFlag : Looks.Ink, [text]);
    }

    /// <summary>A figure in slim columns has the room of those without one.</summary>
    private static double SlimRoom(YearPlan plan, WeekColumn column) => plan.IsSlim ? plan.Stride * column.Width - 4 : column.Width - 2;

    private static IEnumerable<string> Dates(YearPlan plan, WeekColumn column)
    {
        var days = column.Week.Days;
        // All weeks alike: a span only where the longest one fits.
        if (column.Width >= 88)
            yield return plan.Words.ShortDate(days.First) + " – " + plan.Words.ShortDate(days.Last);
        yield return plan.Words.ShortDate(days.First);
        yield return days.First.Day.ToString(CultureInfo.InvariantCulture);
    }

    private static string Iso(YearPlan plan, int number) =>
        plan.HasWords ? Say("iso", number) : number.ToString(CultureInfo.InvariantCulture);

    private static string Sentence(YearPlan plan, WeekColumn column)
    {
        var week = column.Week;
        List<string> parts = [plan.Words.Summary(week)];
        if (week.IsoWeek.Number != week.Number) parts.Add(Say("iso", week.IsoWeek.Number));
        if (plan.Season.IsLocked(week.Id)) parts.Add(Say("locked"));
        if (plan.Season.IsReady(week.Id)) parts.Add(Say("ready"));
        if (plan.Today is { } today && week.Days.Contains(today)) parts.Add(Say("this-week"));
        return YearWords.Join(parts);
    }
}
