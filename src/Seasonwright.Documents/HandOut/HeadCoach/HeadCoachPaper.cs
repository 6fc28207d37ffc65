using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.Year;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.HeadCoach;

/// <summary>The head coach's sheet on upright paper: what is asked of practice first, then the weeks, on as many pages as they need.</summary>
public sealed class HeadCoachPaper
{
    private const double Margin = 30, PointsPerPx = 0.75, FootHeight = 16;
    private const double Gap = 8, CellTop = 3;

    private static readonly TextStyle Title = new(20, FontWeight.SemiBold), Heading = new(12.5, FontWeight.SemiBold), Body = new(10.5),
        Strong = new(10.5, FontWeight.SemiBold), Small = new(9);

    private readonly HeadCoachSheet sheet;
    private readonly PaperSize paper;
    private readonly double width, bottom;
    private readonly List<PageSketch> pages = [];

    private HeadCoachPaper(HeadCoachSheet sheet, PaperSize paper)
    {
        (this.sheet, this.paper) = (sheet, paper);
        width = (paper.Width - 2 * Margin) / PointsPerPx;
        bottom = (paper.Height - 2 * Margin) / PointsPerPx - FootHeight;
    }

    public static ValueList<SheetDrawing> Of(HeadCoachSheet sheet, PaperSize paper) => new HeadCoachPaper(sheet, paper).Pages();

    private PageSketch Page => pages[^1];

    private ValueList<SheetDrawing> Pages()
    {
        pages.Add(new PageSketch(width));
        Head();
        if (sheet.Wishes.Count > 0) Wishes();
        Weeks();
        foreach (var (page, number) in pages.Select((page, index) => (page, index + 1)))
            page.Put(width, bottom + 4, width, Say("sheet.page", sheet.Name, sheet.Edition, number, pages.Count), Small, Looks.Muted, TextAnchor.End);
        return pages.Select(page => new SheetDrawing(Say("head-coach.title", sheet.Name), paper.Width, paper.Height, Margin, PointsPerPx,
            [page.Track("sheet", Say("head-coach.title", sheet.Name))])).ToValueList();
    }

    private void Head()
    {
        var room = Page.Stamp(sheet.Edition, sheet.IsDraft, 4, Strong);
        Page.Put(0, 0, room - Gap, sheet.Name, Title, Looks.Ink);
        Page.Space(28);
        Page.Line(Say("head-coach.for", sheet.Span), Body, Looks.Muted);
        foreach (var goal in sheet.Goals) Page.Line(Say("head-coach.goal", goal), Body, Looks.Ink);
        Page.Space(8);
    }

    private void Wishes()
    {
        Page.Line(Say("head-coach.wishes"), Heading, Looks.Ink);
        Page.Space(2);
        double[] columns = [0, 32, 128, 222, width];
        foreach (var wish in sheet.Wishes)
            Row(columns, wish.Feel, wish.Week, wish.Days, [wish.Text is { } text ? ([text], Looks.Ink) : ([Say("head-coach.nothing-asked")], Looks.Muted)]);
        Page.Space(12);
    }

    private void Weeks()
    {
        double[] columns = [0, 32, 128, 222, 222 + (width - 222) * 0.58, width];
        Columns(columns);
        foreach (var week in sheet.Weeks)
        {
            IReadOnlyList<(IReadOnlyList<string> Lines, TextLook Look)> cells = [(week.Matches, Looks.Ink), ([.. week.Away, .. week.Tests.Select(test => Say("head-coach.test", test))], Looks.Ink)];
            if (week.Phase is { } phase) Phase(phase, columns, HeightOf(Wrapped(columns, cells)));
            Row(columns, week.Feel, week.Number, week.Days, cells);
        }
        if (sheet.Weeks.Count == 0) Page.Line(Say("head-coach.no-weeks"), Body, Looks.Muted);
        Need(2 * PageSketch.LineHeight(Small) + 8);
        Page.Space(8);
        Page.Paragraph($"{Say("head-coach.legend")} {Say("paper.caution")}", Small, Looks.Muted);
    }

    private void Columns(double[] columns)
    {
        string[] names = [Say("head-coach.col.week"), Say("head-coach.col.days"), Say("head-coach.col.feel"), Say("head-coach.col.matches"), Say("head-coach.col.away")];
        foreach (var (name, at) in names.Select((name, at) => (name, at)))
            Page.Put(columns[at], Page.Y, columns[at + 1] - columns[at] - Gap, name, Small, Looks.Muted);
        Page.Space(PageSketch.LineHeight(Small) + 1);
        Page.Rule(Looks.Rule);
    }

    private void Phase(HeadCoachPhase phase, double[] columns, double firstWeek)
    {
        // With its first week, so that no heading stands alone at a page's end.
        if (Need(24 + firstWeek)) Columns(columns);
        Page.Space(5);
        Page.Add(new Box(new(0, Page.Y, 4, 15), PhasesTrack.Looking(phase.Kind).Ground));
        var name = TextFit.Fit($"{phase.Name}, {phase.Weeks}", width * 0.5, Strong);
        Page.Put(10, Page.Y + 1, width * 0.5, name.Text, Strong, Looks.Ink);
        Page.Put(10 + name.Width + Gap, Page.Y + 1, width - 10 - name.Width - Gap, phase.Means, Body, Looks.Muted);
        Page.Space(18);
    }

    /// <summary>One week: as high as its longest cell, on one page unless it is higher than a page.</summary>
    private void Row(double[] columns, WeekFeel? feel, int number, string days, IReadOnlyList<(IReadOnlyList<string> Lines, TextLook Look)> cells)
    {
        var wrapped = Wrapped(columns, cells);
        var most = (int)((bottom - 60) / PageSketch.LineHeight(Body));
        for (var from = 0; from == 0 || from < wrapped.Max(lines => lines.Count); from += most)
        {
            var part = wrapped.Select(lines => lines.Skip(from).Take(most).ToList()).ToList();
            var height = HeightOf(part);
            if (Need(height) && columns.Length == 6) Columns(columns);
            Page.Rule(Looks.Hairline);
            var top = Page.Y + CellTop;
            Page.Put(columns[0], top, columns[1] - Gap, number.ToString(CultureInfo.InvariantCulture), Strong, Looks.Ink);
            Page.Put(columns[1], top, columns[2] - columns[1] - Gap, days, Body, Looks.Ink);
            if (feel is { } known)
            {
                Page.Add(FeelMark.Of(known, new(columns[2], top + 2)));
                Page.Put(columns[2] + FeelMark.Width + 5, top, columns[3] - columns[2] - FeelMark.Width - 5 - Gap, Say($"feel.{known}"), Body, Looks.Ink);
            }
            for (var at = 0; at < part.Count; at++)
            {
                for (var line = 0; line < part[at].Count; line++)
                    Page.Put(columns[3 + at], top + line * PageSketch.LineHeight(Body), columns[4 + at] - columns[3 + at], part[at][line], Body, cells[at].Look);
            }
            Page.Space(height);
        }
    }

    private static List<List<string>> Wrapped(double[] columns, IEnumerable<(IReadOnlyList<string> Lines, TextLook Look)> cells) =>
        [.. cells.Select((cell, at) => cell.Lines.SelectMany(line => TextWrap.Lines(line, columns[4 + at] - columns[3 + at] - Gap, Body)).ToList())];

    private static double HeightOf(IEnumerable<List<string>> cells) => Math.Max(1, cells.Max(lines => lines.Count)) * PageSketch.LineHeight(Body) + 2 * CellTop;

    /// <summary>A new page where the height is not there.</summary>
    /// <returns>Whether one was begun.</returns>
    private bool Need(double height)
    {
        if (Page.Y + height <= bottom || Page.Y == 0) return false;
        pages.Add(new PageSketch(width));
        return true;
    }
}
