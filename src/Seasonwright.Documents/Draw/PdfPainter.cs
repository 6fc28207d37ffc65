using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;
using System.Text;
using Seasonwright.Core;
using SkiaSharp;

namespace Seasonwright.Documents.Draw;

/// <summary>
/// Paints sheets as a PDF: strokes, fills and text in the committed fonts, never a bitmap. Every text is shaped by
/// <see cref="FontFace"/>, so its width in print is the width it has in the layout and in the browser. The same sheets
/// give the same bytes.
/// </summary>
public static class PdfPainter
{
    private static readonly ConcurrentDictionary<FontWeight, Lazy<SKTypeface>> Typefaces = new();

    /// <param name="title">What the file holds, for its properties.</param>
    /// <param name="day">The day its properties name as the one it was made on: a clock would make every file another.</param>
    /// <param name="sheets">One page each, in order; at least one.</param>
    /// <param name="scheme">Light or grey; the paper's own ground is left bare.</param>
    public static byte[] File(string title, DateOnly day, ValueList<SheetDrawing> sheets, Scheme scheme)
    {
        ArgumentOutOfRangeException.ThrowIfZero(sheets.Count, nameof(sheets));
        using var pdf = new MemoryStream();
        var made = day.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        var properties = new SKDocumentPdfMetadata
        {
            Title = PlainText.Clean(title),
            Creator = "Seasonwright",
            Producer = "Seasonwright",
            Creation = made,
            Modified = made,
            RasterDpi = SKDocumentPdfMetadata.DefaultRasterDpi,
            EncodingQuality = SKDocumentPdfMetadata.DefaultEncodingQuality,
        };
        using (var document = SKDocument.CreatePdf(pdf, properties))
        {
            foreach (var sheet in sheets)
            {
                using var page = document.BeginPage((float)sheet.Width, (float)sheet.Height);
                page.Translate((float)sheet.Margin, (float)sheet.Margin);
                page.Scale((float)sheet.PointsPerPx);
                using var brush = new Brush(page, scheme);
                foreach (var (track, top) in sheet.Tracks.Stacked())
                {
                    page.Save();
                    page.Translate(0, (float)top);
                    brush.Paint(track.Marks);
                    page.Restore();
                }
                document.EndPage();
            }
            document.Close();
        }
        return pdf.ToArray();
    }

    [SuppressMessage("Reliability", "CA2000", Justification = "The few shared typefaces live as long as the process.")]
    private static SKTypeface TypefaceOf(FontWeight weight) => Typefaces.GetOrAdd(weight, static w => new Lazy<SKTypeface>(() =>
    {
        using var file = FontFile.Of(w).Open();
        using var data = SKData.Create(file);
        return SKTypeface.FromData(data) ?? throw new InvalidOperationException($"The font of weight {w} cannot be read.");
    })).Value;

    /// <summary>One page being painted, with the paints of its looks.</summary>
    private sealed class Brush(SKCanvas page, Scheme scheme) : IDisposable
    {
        private readonly Dictionary<Tint, SKPaint> fills = [];
        private readonly Dictionary<MarkLook, SKPaint> strokes = [];

        public void Paint(IEnumerable<Shape> shapes)
        {
            foreach (var shape in shapes)
                Paint(shape);
        }

        public void Dispose()
        {
            foreach (var paint in fills.Values.Concat(strokes.Values))
                paint.Dispose();
        }

        private void Paint(Shape shape)
        {
            switch (shape)
            {
                case Box box:
                    var frame = SKRect.Create((float)box.Area.X, (float)box.Area.Y, (float)box.Area.Width, (float)box.Area.Height);
                    // As SVG has it: a corner is never rounder than half its side.
                    var corner = (float)Math.Min(box.Corner, Math.Min(box.Area.Width, box.Area.Height) / 2);
                    Both(box.Look, paint => page.DrawRoundRect(frame, corner, corner, paint));
                    break;
                case Hatch hatch:
                    foreach (var (from, to) in hatch.Strokes())
                        page.DrawLine(At(from), At(to), Stroke(hatch.Look));
                    break;
                case Line line:
                    page.DrawLine(At(line.From), At(line.To), Stroke(line.Look));
                    break;
                case Polyline polyline:
                    Path(polyline.Points, closed: false, polyline.Look);
                    break;
                case Polygon polygon:
                    Path(polygon.Points, closed: true, polygon.Look);
                    break;
                case Circle circle:
                    Both(circle.Look, paint => page.DrawCircle(At(circle.Centre), (float)circle.Radius, paint));
                    break;
                case TextRun text:
                    Text(text);
                    break;
                case Group group:
                    Paint(group.Shapes);
                    break;
                default:
                    throw new ArgumentException($"No painting for {shape.GetType().Name}.", nameof(shape));
            }
        }

        private void Path(ValueList<Point> points, bool closed, MarkLook look)
        {
            if (points.Count == 0)
                return;
            using var line = new SKPathBuilder();
            line.AddPoly([.. points.Select(At)], closed);
            using var path = line.Detach();
            Both(look, paint => page.DrawPath(path, paint));
        }

        private void Text(TextRun text)
        {
            var face = FontFace.Of(text.Style.Weight);
            var shaped = face.Shape(text.Text);
            if (shaped.Glyphs.IsEmpty)
                return;
            var size = text.Style.Size / face.UnitsPerEm;
            using var font = new SKFont(TypefaceOf(text.Style.Weight), (float)text.Style.Size) { Subpixel = true, LinearMetrics = true };
            using var builder = new SKTextBlobBuilder();
            var letters = Encoding.UTF8.GetBytes(text.Text);
            // The letters go with the glyphs, so that what is copied from the page is what was written.
            var run = builder.AllocatePositionedTextRun(font, shaped.Glyphs.Length, letters.Length);
            run.SetGlyphs([.. shaped.Glyphs.Select(glyph => glyph.Id)]);
            run.SetPositions([.. shaped.Glyphs.Select(glyph => new SKPoint((float)(glyph.X * size), (float)(-glyph.Y * size)))]);
            run.SetClusters([.. shaped.Glyphs.Select(glyph => (uint)glyph.TextByte)]);
            run.SetText(letters);
            using var blob = builder.Build();
            var left = text.At.X - text.Anchor switch
            {
                TextAnchor.Start => 0,
                TextAnchor.Middle => shaped.Advance * size / 2,
                TextAnchor.End => shaped.Advance * size,
                _ => throw new ArgumentException($"No painting for {text.Anchor}.", nameof(text)),
            };
            page.DrawText(blob, (float)left, (float)text.At.Y, Fill(text.Look.Fill));
        }

        private void Both(MarkLook look, Action<SKPaint> draw)
        {
            if (look.Fill is { } fill)
                draw(Fill(fill));
            if (look.Stroke is not null)
                draw(Stroke(look));
        }

        private SKPaint Fill(Tint tint)
        {
            if (!fills.TryGetValue(tint, out var paint))
                fills[tint] = paint = new SKPaint { Color = Colour(tint), IsAntialias = true };
            return paint;
        }

        private SKPaint Stroke(MarkLook look)
        {
            if (strokes.TryGetValue(look, out var paint))
                return paint;
            using var dashes = look.Dash is { } dash ? SKPathEffect.CreateDash([(float)dash, (float)dash], 0) : null;
            return strokes[look] = new SKPaint
            {
                Color = Colour(look.Stroke!),
                IsAntialias = true,
                IsStroke = true,
                StrokeWidth = (float)look.StrokeWidth,
                PathEffect = dashes,
            };
        }

        private SKColor Colour(Tint tint)
        {
            var rgb = tint.In(scheme);
            return new SKColor(rgb.Red, rgb.Green, rgb.Blue);
        }

        private static SKPoint At(Point point) => new((float)point.X, (float)point.Y);
    }
}
