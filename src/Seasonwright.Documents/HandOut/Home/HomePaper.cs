using Seasonwright.Core;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Home;

/// <summary>
/// Home programmes on upright paper: each player begins on a page of their own with the weeks and days to tick off and when to stop, then what is done on each day,
/// week by week. For who is under 18 a letter to the guardian follows.
/// </summary>
public sealed class HomePaper
{
    private const double Margin = 30, PointsPerPx = 0.75, FootHeight = 18, Gap = 8;

    /// <summary>px: where the weeks of the table begin, what an exercise's name may take, a box to tick.</summary>
    private const double WeekWidth = 52, NameWidth = 236, PlaceWidth = 28, Tick = 12;

    private static readonly TextStyle Title = new(20, FontWeight.SemiBold), Heading = new(13, FontWeight.SemiBold), Body = new(11), Strong = new(11, FontWeight.SemiBold), Small = new(9.5);

    private readonly SquadHome home;
    private readonly PaperSize paper;
    private readonly double width, bottom;
    private readonly List<PageSketch> pages = [];

    /// <summary>Of whose page it is: it stands at the head of every one.</summary>
    private string name = "";

    private HomePaper(SquadHome home, PaperSize paper)
    {
        (this.home, this.paper) = (home, paper);
        width = (paper.Width - 2 * Margin) / PointsPerPx;
        bottom = (paper.Height - 2 * Margin) / PointsPerPx - FootHeight;
    }

    /// <param name="paper">Upright.</param>
    public static ValueList<SheetDrawing> Of(SquadHome home, PaperSize paper) => home.Sheets.SelectMany(sheet => new HomePaper(home, paper).Pages(sheet)).ToValueList();

    private PageSketch Page => pages[^1];

    private IEnumerable<SheetDrawing> Pages(HomeSheet sheet)
    {
        Player(sheet);
        if (sheet.IsMinor) Guardian(sheet);
        var title = Say("home.title", home.Shared.Name, home.Title);
        foreach (var (page, number) in pages.Select((page, at) => (page, at + 1)))
            page.Put(width, bottom + 5, width, Say("home.foot", home.Shared.EditionWords, sheet.Name, number, pages.Count), Small, Looks.Muted, TextAnchor.End);
        return pages.Select(page => new SheetDrawing(title, paper.Width, paper.Height, Margin, PointsPerPx, [page.Track("home", title)]));
    }

    private void Player(HomeSheet sheet)
    {
        pages.Add(new PageSketch(width));
        Head(sheet, sheet.Number.Length > 0 ? $"{sheet.Number} {sheet.Name}" : sheet.Name);
        foreach (var note in sheet.Notes) Page.Paragraph(note, sheet.AsksFirst ? Heading : Body, Looks.Ink);
        Page.Space(8);
        if (sheet.AsksFirst)
        {
            Stop();
            return;
        }
        Table(sheet);
        Stop();
        foreach (var part in sheet.Parts) Part(part, sheet.Weeks.Count);
        Reading(sheet);
    }

    private void Head(HomeSheet sheet, string title)
    {
        name = title;
        var room = Page.Stamp(home.Shared.EditionWords, home.Shared.Edition.IsDraft, 0, Strong);
        Page.Put(0, 2, room - Gap, Say("home.heading", home.Shared.Name, home.Title), Strong, Looks.Muted);
        Page.Space(22);
        if (sheet.IsModified)
        {
            var word = Say("card.modified");
            var wide = TextWidths.Of(word, Strong) + 14;
            Page.Add(new Box(new(width - wide, Page.Y + 3, wide, 19), Looks.EventUnsure, 3));
            Page.Put(width - wide / 2, Page.Y + 6, wide, word, Strong, Looks.Ink, TextAnchor.Middle);
        }
        Page.Put(0, Page.Y, width - 100, title, Title, Looks.Ink);
        Page.Space(28);
        Page.Paragraph(Say("home.about", home.When, home.Kit), Body, Looks.Muted);
        Page.Space(4);
    }

    /// <summary>Weeks down, days across: what is done, or that the day is free, with a box to tick.</summary>
    private void Table(HomeSheet sheet)
    {
        var day = (width - WeekWidth) / 7;
        foreach (var week in sheet.Weeks)
        {
            var cells = week.Days.Select(cell => cell.Does.SelectMany(text => TextWrap.Lines(text, day - Gap - (cell.IsFree ? 0 : Tick + 4), Body)).ToList()).ToList();
            var height = PageSketch.LineHeight(Small) + Math.Max(2, cells.Max(lines => lines.Count)) * PageSketch.LineHeight(Body) + 8;
            Need(height);
            Page.Rule(Looks.Rule);
            Page.Put(0, Page.Y + 5, WeekWidth - 4, week.Name, Strong, Looks.Ink);
            foreach (var (cell, at) in week.Days.Select((cell, at) => (cell, at)))
            {
                var (left, top) = (WeekWidth + at * day, Page.Y + 4);
                if (at > 0) Page.Add(new Line(new(left - 5, Page.Y + 2), new(left - 5, Page.Y + height - 2), Looks.Hairline));
                Page.Put(left, top, day - Gap, cell.Day, Small, Looks.Muted);
                top += PageSketch.LineHeight(Small) + 1;
                if (!cell.IsFree) Page.Add(new Box(new(left + day - Gap - Tick, top + 1, Tick, Tick), Looks.MatchDay, 1));
                foreach (var line in cells[at])
                {
                    Page.Put(left, top, day - Gap, line, cell.IsFree ? Body : Strong, cell.IsFree ? Looks.Muted : Looks.Ink);
                    top += PageSketch.LineHeight(Body);
                }
            }
            Page.Space(height);
        }
        Page.Rule(Looks.Rule);
        Page.Space(10);
    }

    /// <summary>When to stop, when not to begin, who is called: in a frame, on every player's first page.</summary>
    private void Stop()
    {
        const double Inset = 10;
        string[] rules = [Say("home.stop"), Say("home.ill"), Say("home.pain"), Say("home.call", string.Join("; ", home.Call))];
        var lines = rules.Select(rule => TextWrap.Lines(rule, width - 2 * Inset, Body)).ToList();
        var height = PageSketch.LineHeight(Heading) + lines.Sum(rule => rule.Count * PageSketch.LineHeight(Body) + 4) + PageSketch.LineHeight(Body) + 2 * Inset;
        Need(height + 10);
        Page.Add(new Box(new(0, Page.Y, width, height), Looks.MatchDay, 3));
        var top = Page.Y + Inset;
        Page.Put(Inset, top, width - 2 * Inset, Say("home.stop-title"), Heading, Looks.Ink);
        top += PageSketch.LineHeight(Heading) + 2;
        foreach (var rule in lines)
        {
            foreach (var line in rule)
            {
                Page.Put(Inset, top, width - 2 * Inset, line, Body, Looks.Ink);
                top += PageSketch.LineHeight(Body);
            }
            top += 4;
        }
        Page.Put(Inset, top, width - 2 * Inset, Say("home.telephone"), Strong, Looks.Ink);
        Page.Space(height + 12);
    }

    private void Part(HomePart part, int weeks)
    {
        var wide = (width - NameWidth) / weeks;
        var rows = part.Rows.Select(row => (Row: row, Name: TextWrap.Lines(row.Name, NameWidth - PlaceWidth - Gap, Strong), How: TextWrap.Lines(row.How, NameWidth - PlaceWidth - Gap, Small),
            Cells: row.Weeks.Select(text => TextWrap.Lines(text, row.Weeks.Count == 1 ? width - NameWidth - Gap : wide - Gap, Body)).ToList())).ToList();
        var heights = rows.Select(row => Math.Max(row.Name.Count * PageSketch.LineHeight(Strong) + row.How.Count * PageSketch.LineHeight(Small), row.Cells.Max(cell => cell.Count) * PageSketch.LineHeight(Body)) + 7).ToList();
        var note = part.Note.Length > 0 ? TextWrap.Lines(part.Note, width, Body) : [];
        // A heading never stands alone at a page's end.
        Need(PageSketch.LineHeight(Heading) + note.Count * PageSketch.LineHeight(Body) + PageSketch.LineHeight(Small) + heights[0] + 8);
        Page.Line(part.Title, Heading, Looks.Ink);
        foreach (var line in note) Page.Line(line, Body, Looks.Ink);
        Weeks(weeks, wide);
        foreach (var ((row, named, how, cells), height) in rows.Zip(heights))
        {
            if (Need(height)) Weeks(weeks, wide);
            Page.Rule(Looks.Hairline);
            var top = Page.Y + 3;
            Page.Put(0, top, PlaceWidth - 4, row.Place, Strong, Looks.Muted);
            Column(PlaceWidth, top, NameWidth - PlaceWidth - Gap, named, Strong, Looks.Ink);
            Column(PlaceWidth, top + named.Count * PageSketch.LineHeight(Strong), NameWidth - PlaceWidth - Gap, how, Small, Looks.Muted);
            foreach (var (cell, at) in cells.Select((cell, at) => (cell, at))) Column(NameWidth + at * wide, top, row.Weeks.Count == 1 ? width - NameWidth : wide - Gap, cell, Body, Looks.Ink);
            Page.Space(height);
        }
        Page.Rule(Looks.Rule);
        Page.Space(12);
    }

    private void Weeks(int weeks, double wide)
    {
        for (var week = 1; week <= weeks; week++) Page.Put(NameWidth + (week - 1) * wide, Page.Y, wide - Gap, Say("home.week", week), Small, Looks.Muted);
        Page.Space(PageSketch.LineHeight(Small) + 2);
    }

    private void Column(double x, double top, double room, IReadOnlyList<string> lines, TextStyle style, TextLook look)
    {
        foreach (var line in lines)
        {
            Page.Put(x, top, room, line, style, look);
            top += PageSketch.LineHeight(style);
        }
    }

    /// <summary>How the words of the page are meant, and what else to heed.</summary>
    private void Reading(HomeSheet sheet)
    {
        string?[] words =
        [
            Say("home.read-reserve"), Say("home.read-more"), sheet.Parts.Any(part => part.Rows.Any(row => row.How.Contains("RPE", StringComparison.Ordinal))) ? Say("home.read-rpe") : null,
            home.LeftOut.Count > 0 ? Say("home.left-out", string.Join(", ", home.LeftOut)) : null, Say("home.missed"), Say("home.alone"), Say("home.heat"), Say("paper.caution"),
        ];
        Titled(Say("home.read-title"), words.OfType<string>());
    }

    /// <summary>To the guardian of who is under 18: what, how often, what not, who is called.</summary>
    private void Guardian(HomeSheet sheet)
    {
        pages.Add(new PageSketch(width));
        Head(sheet, Say("home.guardian-of", sheet.Name));
        Page.Space(6);
        if (sheet.AsksFirst) Page.Paragraph(Say("home.guardian-ask"), Body, Looks.Ink);
        else
        {
            var busy = sheet.Weeks.Select(week => week.Days.Count(day => !day.IsFree)).ToList();
            Page.Paragraph(Say("home.guardian-what", sheet.Name, home.When, sheet.Weeks.Count, busy.Max(), 7 - busy.Max()), Body, Looks.Ink);
            Page.Space(6);
            foreach (var part in sheet.Parts)
                // A run says all by its name; its weeks stand on the page of that day.
                Page.Paragraph(Say("home.guardian-part", part.Title, string.Join(", ", part.Rows.Select(row => row.Place.Length > 0 || part.Rows.Count > 1 ? row.Name : row.Weeks[0]))), Body, Looks.Ink);
            Page.Space(6);
            foreach (var text in new[] { Say("home.guardian-most"), Say("home.guardian-near"), Say("home.guardian-growth") })
            {
                Page.Paragraph(text, Body, Looks.Ink);
                Page.Space(4);
            }
        }
        Page.Space(8);
        Stop();
        Titled(Say("home.guardian-heed"), [Say("home.alone"), Say("home.heat"), Say("home.guardian-consent"), Say("paper.caution")]);
        Page.Space(20);
        Page.Line(Say("home.guardian-signed"), Body, Looks.Ink);
    }

    private void Titled(string title, IEnumerable<string> words)
    {
        Need(PageSketch.LineHeight(Heading) + 3 * PageSketch.LineHeight(Small));
        Page.Line(title, Heading, Looks.Ink);
        foreach (var text in words)
        {
            var lines = TextWrap.Lines(text, width, Body);
            Need(lines.Count * PageSketch.LineHeight(Body) + 3);
            foreach (var line in lines) Page.Line(line, Body, Looks.Ink);
            Page.Space(3);
        }
    }

    /// <summary>A new page where this one has no room for what comes.</summary>
    private bool Need(double height)
    {
        if (Page.Y + height <= bottom) return false;
        pages.Add(new PageSketch(width));
        Page.Line(Say("home.goes-on", name), Strong, Looks.Muted);
        Page.Space(6);
        return true;
    }
}
