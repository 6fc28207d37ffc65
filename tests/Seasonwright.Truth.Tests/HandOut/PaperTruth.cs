using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Posters;

namespace Seasonwright.Truth.Tests.HandOut;

/// <summary>
/// What is printed, as programs that are not ours read it: page, fonts, pictures and text by poppler (pdfinfo, pdffonts,
/// pdfimages, pdftotext), the file's structure by qpdf. Sizes of paper: ISO 216 and ASME Y14.1.
/// </summary>
public sealed partial class PaperTruth
{
    private static readonly DateOnly Anchor = new(2027, 10, 18);

    /// <summary>Millimetres and inches of the standards, in points of 1/72 inch, lying.</summary>
    public static TheoryData<string, double, double> Papers => new()
    {
        { "a3", 420 / 25.4 * 72, 297 / 25.4 * 72 },
        { "a4", 297 / 25.4 * 72, 210 / 25.4 * 72 },
        { "tabloid", 17 * 72, 11 * 72 },
        { "letter", 11 * 72, 8.5 * 72 },
    };

    [Theory]
    [MemberData(nameof(Papers))]
    public async Task A_poster_is_one_sound_page_of_its_paper_with_embedded_fonts_and_no_picture(string paper, double width, double height)
    {
        foreach (var scheme in new[] { Scheme.Light, Scheme.Grey })
        {
            var info = await SoundAsync(HandOuts.Poster(Demo.Shared(Anchor), new PosterChoices(PaperSize.Find(paper)!, scheme)).Bytes);
            Assert.Matches(@"Pages:\s+1\n", info);
            var size = PageSize().Match(info);
            Assert.InRange(Number(size.Groups["width"].Value), width - 0.5, width + 0.5);
            Assert.InRange(Number(size.Groups["height"].Value), height - 0.5, height + 0.5);
        }
    }

    [Theory]
    [InlineData("a4", 210 / 25.4 * 72, 297 / 25.4 * 72)]
    [InlineData("letter", 8.5 * 72, 11 * 72)]
    public async Task A_sheet_for_the_hand_is_sound_and_upright(string paper, double width, double height)
    {
        var (shared, size) = (Demo.Shared(Anchor), PaperSize.Find(paper)!);
        var headCoach = await SoundAsync(HandOuts.HeadCoachPaper(shared, Anchor.AddDays(100), size).Bytes);
        Assert.Matches(@"Pages:\s+[23]\n", headCoach);
        var week = await SoundAsync(HandOuts.WeekSheet(shared, shared.Season.Weeks[13], size).Bytes);
        Assert.Matches(@"Pages:\s+1\n", week);
        Assert.All([headCoach, week], info => Assert.InRange(Number(PageSize().Match(info).Groups["width"].Value), width - 0.5, width + 0.5));
        Assert.All([headCoach, week], info => Assert.InRange(Number(PageSize().Match(info).Groups["height"].Value), height - 0.5, height + 0.5));
    }

    /// <summary>What pdfinfo says of a file that qpdf finds sound, whose fonts are all embedded and that holds no picture.</summary>
    private static async Task<string> SoundAsync(byte[] pdf)
    {
        using var file = Kept(pdf);
        await Outside.RunAsync("qpdf", "--check", file.Path);
        Assert.Empty(Rows(await Outside.RunAsync("pdfimages", "-list", file.Path)));
        var fonts = Rows(await Outside.RunAsync("pdffonts", file.Path));
        Assert.NotEmpty(fonts);
        // A name, "CID TrueType", the encoding, then: embedded, a subset, with the letters of its glyphs.
        Assert.All(fonts, font => Assert.Matches(@"\+Inter-\w+ +CID TrueType +Identity-H +yes yes yes ", font));
        return await Outside.RunAsync("pdfinfo", file.Path);
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public async Task Every_text_stands_where_it_was_laid_out_and_is_as_wide_within_half_a_pixel(string paper, double width, double height)
    {
        Assert.True(width > height);
        var poster = Poster.Of(Demo.Shared(Anchor), new PosterChoices(PaperSize.Find(paper)!));
        using var file = Kept(poster.Pdf(new(null, Anchor), Scheme.Light));
        var words = Words(await Outside.RunAsync("pdftotext", "-bbox", file.Path, "-"));
        var sheet = poster.Sheet;
        var halfPixel = sheet.PointsPerPx / 2;
        var smallest = double.PositiveInfinity;
        foreach (var (text, left, baseline) in Texts(sheet))
        {
            var from = sheet.Margin + left * sheet.PointsPerPx;
            var to = from + text.Width * sheet.PointsPerPx;
            var y = sheet.Margin + baseline * sheet.PointsPerPx;
            var row = words.Where(word => word.Top < y && y < word.Bottom + 0.5).ToList();
            // Words that stand close are read as one: only the edges that are free are asked for.
            Assert.True(row.Exists(word => Math.Abs(word.Left - from) <= halfPixel), $"Nothing begins where '{text.Text}' does, at {from:0.00}, {y:0.00}.");
            Assert.True(row.Exists(word => Math.Abs(word.Right - to) <= halfPixel), $"Nothing ends where '{text.Text}' does, at {to:0.00}, {y:0.00}.");
            smallest = Math.Min(smallest, text.Style.Size * sheet.PointsPerPx);
        }
        // interface.md: 7 pt on a wall, 6 pt in the hand.
        Assert.InRange(smallest, paper is "a3" or "tabloid" ? 6.999 : 5.999, 12);
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public async Task The_whole_year_is_on_every_paper_with_a_key_to_its_signs(string paper, double width, double height)
    {
        Assert.True(width > height);
        var poster = Poster.Of(Demo.Shared(Anchor), new PosterChoices(PaperSize.Find(paper)!));
        Assert.Empty(poster.LeftOut);
        using var file = Kept(poster.Pdf(new(null, Anchor), Scheme.Light));
        var read = Letters(await Outside.RunAsync("pdftotext", "-layout", file.Path, "-"));
        Assert.Contains("Emphasis", read, StringComparison.Ordinal);
        Assert.Contains("homeawayneutralgroundgroundnotyetknownfriendlyononeofthesedays", read, StringComparison.Ordinal);
        Assert.Contains("3hardestweekofitsblock4easierweekthatendsityesonthatday", read, StringComparison.Ordinal);
        Assert.DoesNotContain("…", read, StringComparison.Ordinal);
        Assert.DoesNotContain("?", read, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_copied_from_a_poster_is_what_was_written()
    {
        var shared = Demo.Shared(Anchor);
        var poster = Poster.Of(shared, new PosterChoices(PaperSize.A3));
        using var file = Kept(poster.Pdf(shared.Edition, Scheme.Light));
        var read = Letters(await Outside.RunAsync("pdftotext", "-raw", file.Path, "-"));
        Assert.All(Texts(poster.Sheet), text => Assert.Contains(Letters(text.Text.Text), read, StringComparison.Ordinal));
        Assert.Contains(Letters($"Version 2 (Cup, second round), Mon 18 Oct 2027"), read, StringComparison.Ordinal);
    }

    private static string Letters(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    private static IEnumerable<(TextRun Text, double Left, double Baseline)> Texts(SheetDrawing sheet) =>
        from track in sheet.Tracks.Stacked()
        from text in Texts(track.Track.Marks)
        let left = text.At.X - text.Anchor switch { TextAnchor.Start => 0, TextAnchor.Middle => text.Width / 2, _ => text.Width }
        select (text, left, track.Top + text.At.Y);

    private static IEnumerable<TextRun> Texts(IEnumerable<Shape> shapes) => shapes.SelectMany(shape => shape switch
    {
        TextRun text => [text],
        Documents.Draw.Group group => Texts(group.Shapes),
        _ => Enumerable.Empty<TextRun>(),
    });

    private static List<(string Text, double Left, double Top, double Right, double Bottom)> Words(string boxes)
    {
        XNamespace html = "http://www.w3.org/1999/xhtml";
        return [.. XDocument.Parse(boxes).Descendants(html + "word").Select(word =>
            (word.Value, Of(word, "xMin"), Of(word, "yMin"), Of(word, "xMax"), Of(word, "yMax")))];

        static double Of(XElement word, string name) => Number(word.Attribute(name)!.Value);
    }

    /// <summary>Rows of a table beneath its two lines of heading.</summary>
    private static string[] Rows(string table) => [.. table.Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2)];

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static KeptFile Kept(byte[] bytes) => new(bytes);

    private sealed class KeptFile : IDisposable
    {
        public KeptFile(byte[] bytes) => File.WriteAllBytes(Path, bytes);

        public string Path { get; } = System.IO.Path.GetTempFileName();

        public void Dispose() => File.Delete(Path);
    }

    [GeneratedRegex(@"Page size:\s+(?<width>[\d.]+) x (?<height>[\d.]+) pts", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex PageSize();
}
