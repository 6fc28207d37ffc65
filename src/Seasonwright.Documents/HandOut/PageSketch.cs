using Seasonwright.Core;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.HandOut;

/// <summary>
/// A piece of a page while it is being drawn: the cursor is the top of what comes next, px from the piece's own top. Nothing
/// is ever wider than the piece.
/// </summary>
internal sealed class PageSketch(double width)
{
    /// <summary>How far the baseline lies below the top of a line, and how high a line is, in sizes of its text.</summary>
    private const double Ascent = 0.97, Leading = 1.3;

    private readonly List<Shape> marks = [];

    public double Width { get; } = width;

    public double Y { get; private set; }

    public void Add(params IEnumerable<Shape> shapes) => marks.AddRange(shapes);

    public void Space(double px) => Y += px;

    public static double LineHeight(TextStyle style) => style.Size * Leading;

    /// <summary>One line at a place of its own, cut to the room there is; the cursor stays.</summary>
    /// <param name="x">Where its anchor stands.</param>
    /// <param name="top">Top of the line.</param>
    public void Put(double x, double top, double room, string text, TextStyle style, TextLook look, TextAnchor anchor = TextAnchor.Start)
    {
        if (TextFit.Fit(text, room, style) is { Kind: not FitKind.Nothing } fitted)
            marks.Add(new TextRun(new(x, top + style.Size * Ascent), fitted.Text, style, look, anchor));
    }

    /// <summary>
    /// Which edition it is, flush with the right end: a draft is told from a published version by a frame, not by a word alone.
    /// </summary>
    /// <returns>px that are left for what stands before it.</returns>
    public double Stamp(string edition, bool isDraft, double top, TextStyle style)
    {
        const double Pad = 8;
        var stamp = TextWidths.Of(edition, style) + 2 * Pad;
        if (isDraft)
            marks.Add(new Box(new(Width - stamp, top, stamp, 19), Looks.EventUnsure, 3));
        Put(isDraft ? Width - Pad : Width, top + 3.5, stamp, edition, style, Looks.Ink, TextAnchor.End);
        return Width - stamp;
    }

    /// <summary>One line, and on to the next.</summary>
    public void Line(string text, TextStyle style, TextLook look)
    {
        Put(0, Y, Width, text, style, look);
        Y += LineHeight(style);
    }

    /// <summary>As many lines as the text needs, and on to what follows.</summary>
    public void Paragraph(string text, TextStyle style, TextLook look)
    {
        foreach (var line in TextWrap.Lines(text, Width, style))
            Line(line, style, look);
    }

    public void Rule(MarkLook look)
    {
        marks.Add(new Line(new(0, Y), new(Width, Y), look));
    }

    public TrackDrawing Track(string id, string label) => new(id, label, Y, marks.ToValueList(), []);
}
