using System.Globalization;
using System.Text;

namespace Seasonwright.Documents.Draw;

/// <summary>
/// Paints drawings as SVG with classes and presentation attributes only, no style attribute. The same drawing gives
/// the same bytes.
/// </summary>
public static class SvgPainter
{
    /// <summary>
    /// One track as a <c>g</c> element for an <c>svg</c> of class <c>drawing</c> and role <c>grid</c>; y runs from the
    /// track's own top. Cells come first so that grasped items lie above them: a cell is
    /// <c>&lt;rect class="cell" role="gridcell" id="TRACK-wWEEK|TRACK-dDATE" data-week [data-date]&gt;</c> inside
    /// <c>&lt;g class="track" data-track&gt;</c>; a graspable group carries <c>data-item</c>.
    /// </summary>
    public static string Track(TrackDrawing track) => Track(track, new Point(0, 0));

    /// <inheritdoc cref="Track(TrackDrawing)"/>
    /// <param name="track">The track.</param>
    /// <param name="at">Where its top left corner lies.</param>
    public static string Track(TrackDrawing track, Point at)
    {
        var svg = new SvgMarkup();
        Paint(svg, track, at, "gridcell");
        return svg.ToString();
    }

    /// <summary>Some cells of a track, as they stand in <see cref="Track(TrackDrawing)"/>.</summary>
    public static string Cells(string track, IEnumerable<Cell> cells)
    {
        var svg = new SvgMarkup();
        Paint(svg, track, cells, "gridcell");
        return svg.ToString();
    }

    /// <summary>Some marks of a track, as they stand in <see cref="Track(TrackDrawing)"/>.</summary>
    public static string Marks(IEnumerable<Shape> marks)
    {
        var svg = new SvgMarkup();
        Paint(svg, marks);
        return svg.ToString();
    }

    /// <summary>
    /// A sheet as a whole file on its own, in one scheme, with style and fonts inside: it looks the same on a machine that
    /// has none of them. As large as the paper, with the paper's ground.
    /// </summary>
    public static string File(SheetDrawing sheet, Scheme scheme)
    {
        var page = new Area(0, 0, sheet.WidthInPx, sheet.HeightInPx);
        var svg = new SvgMarkup();
        svg.Open("svg").With("xmlns", "http://www.w3.org/2000/svg").With("class", "drawing")
            .With("width", string.Create(CultureInfo.InvariantCulture, $"{sheet.Width:0.##}pt"))
            .With("height", string.Create(CultureInfo.InvariantCulture, $"{sheet.Height:0.##}pt"))
            .With("viewBox", string.Create(CultureInfo.InvariantCulture, $"0 0 {page.Width:0.##} {page.Height:0.##}"))
            .With("role", sheet.Tracks.Any(track => track.Cells.Count > 0) ? "table" : "img").With("aria-label", sheet.Title).Begin();
        svg.Open("title").CloseWith(sheet.Title, "title");
        svg.Open("style").CloseWith(Stylesheet.ForFile(scheme), "style");
        Paint(svg, new Box(page, Looks.Ground));
        foreach (var (track, top) in sheet.Tracks.Stacked())
            Paint(svg, track, new Point(sheet.MarginInPx, sheet.MarginInPx + top), "cell");
        svg.End("svg");
        return svg.ToString() + "\n";
    }

    private static void Paint(SvgMarkup svg, TrackDrawing track, Point at, string cellRole)
    {
        svg.Open("g").With("class", "track").With("data-track", track.Id);
        if (at != default)
            svg.With("transform", string.Create(CultureInfo.InvariantCulture, $"translate({at.X:0.##} {at.Y:0.##})"));
        svg.Begin();
        if (track.Cells.Count > 0)
        {
            svg.Open("g").With("role", "row").With("aria-label", track.Label).Begin();
            Paint(svg, track.Id, track.Cells, cellRole);
            svg.End("g");
        }
        svg.Open("g").With("pointer-events", "none");
        if (track.Cells.Count > 0)
            svg.With("aria-hidden", "true");
        svg.Begin();
        Paint(svg, track.Marks);
        svg.End("g");
        svg.End("g");
    }

    private static void Paint(SvgMarkup svg, string track, IEnumerable<Cell> cells, string role)
    {
        foreach (var cell in cells)
            Paint(svg, track, cell, role);
    }

    private static void Paint(SvgMarkup svg, IEnumerable<Shape> shapes)
    {
        foreach (var shape in shapes)
            Paint(svg, shape);
    }

    private static void Paint(SvgMarkup svg, string track, Cell cell, string role)
    {
        var week = cell.Span.Week.ToString(CultureInfo.InvariantCulture);
        var date = cell.Span.Day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        svg.Open("rect").With("role", role).With("class", "cell")
            .With("id", date is null ? $"{track}-w{week}" : $"{track}-d{date}")
            .With("data-week", week);
        if (date is not null)
            svg.With("data-date", date);
        Place(svg, cell.Area).With("fill", "none").With("pointer-events", "all").With("aria-label", cell.Label).Close();
    }

    private static void Paint(SvgMarkup svg, Shape shape)
    {
        switch (shape)
        {
            case Box box:
                Place(svg.Open("rect").With("class", box.Look.Name), box.Area);
                if (box.Corner > 0)
                    svg.With("rx", box.Corner);
                svg.Close();
                break;
            case Hatch hatch:
                Paint(svg, hatch);
                break;
            case Line line:
                svg.Open("line").With("class", line.Look.Name).With("x1", line.From.X).With("y1", line.From.Y)
                    .With("x2", line.To.X).With("y2", line.To.Y).Close();
                break;
            case Polyline polyline:
                svg.Open("polyline").With("class", polyline.Look.Name).With("points", polyline.Points).Close();
                break;
            case Polygon polygon:
                svg.Open("polygon").With("class", polygon.Look.Name).With("points", polygon.Points).Close();
                break;
            case Circle circle:
                svg.Open("circle").With("class", circle.Look.Name).With("cx", circle.Centre.X)
                    .With("cy", circle.Centre.Y).With("r", circle.Radius).Close();
                break;
            case TextRun text:
                Paint(svg, text);
                break;
            case Group group:
                svg.Open("g").With("role", "img").With("aria-label", group.Label);
                if (group.Item is { } item)
                    svg.With("data-item", item).With("pointer-events", "all");
                svg.Begin();
                Paint(svg, group.Shapes);
                svg.End("g");
                break;
            default:
                throw new ArgumentException($"No painting for {shape.GetType().Name}.", nameof(shape));
        }
    }

    private static void Paint(SvgMarkup svg, Hatch hatch)
    {
        var path = new StringBuilder();
        foreach (var (from, to) in hatch.Strokes())
            path.Append(CultureInfo.InvariantCulture, $"M{from.X:0.##} {from.Y:0.##}L{to.X:0.##} {to.Y:0.##}");
        svg.Open("path").With("class", hatch.Look.Name).With("d", path.ToString()).Close();
    }

    private static void Paint(SvgMarkup svg, TextRun text)
    {
        svg.Open("text").With("class", text.Look.Name).With("x", text.At.X).With("y", text.At.Y)
            .With("font-size", text.Style.Size);
        if (text.Style.Weight != FontWeight.Regular)
            svg.With("font-weight", (double)text.Style.Weight);
        if (text.Anchor != TextAnchor.Start)
            svg.With("text-anchor", text.Anchor == TextAnchor.Middle ? "middle" : "end");
        svg.CloseWith(text.Text, "text");
    }

    private static SvgMarkup Place(SvgMarkup svg, Area area) =>
        svg.With("x", area.X).With("y", area.Y).With("width", area.Width).With("height", area.Height);
}
