using CsCheck;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Tests.Draw;

public sealed class PdfPainterTests
{
    private static readonly DateOnly Day = new(2027, 10, 18);

    [Fact]
    public void Any_drawing_is_painted_and_twice_the_same() => Shapes.Tracks.Sample(
        track =>
        {
            var sheet = new SheetDrawing("Year", 842, 595, 20, 0.5, [track, track]);
            var pdf = PdfPainter.File("Year", Day, [sheet, sheet], Scheme.Light);
            Assert.Equal("%PDF-"u8.ToArray(), pdf[..5]);
            Assert.Equal(pdf, PdfPainter.File("Year", Day, [sheet, sheet], Scheme.Light));
        },
        iter: 200);

    [Fact]
    public void No_page_is_no_file() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PdfPainter.File("Year", Day, [], Scheme.Light));
}
