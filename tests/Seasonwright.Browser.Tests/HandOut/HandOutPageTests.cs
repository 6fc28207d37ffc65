using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.HandOut;

/// <summary>The page that hands out, and what it hands out as it looks elsewhere.</summary>
public sealed class HandOutPageTests(BrowserFixture browser, UnchangedDemo demo)
{
    [Theory]
    [InlineData(360, true)]
    [InlineData(1440, false)]
    public async Task The_page_fits_and_can_be_read_by_everyone(int width, bool dark)
    {
        await using var window = await OpenAsync(width, dark);
        await window.Page.Locator("details > summary").First.ClickAsync();
        await window.AssertFitsAsync(768);
        await window.AssertAccessibleAsync();
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task Every_button_hands_out_its_file_in_the_edition_that_was_chosen()
    {
        await using var window = await OpenAsync();
        var page = window.Page;
        foreach (var (file, name, begins) in new[]
        {
            ("poster.pdf", "v2-poster-a3.pdf", "%PDF-"), ("poster.svg", "v2-poster-a3.svg", "<svg "), ("head-coach.pdf", "v2-head-coach.pdf", "%PDF-"),
            ("head-coach.html", "v2-head-coach.html", "<!DOCTYPE html>"), ("calendar.ics", ".ics", "BEGIN:VCALENDAR"), ("week.pdf", ".pdf", "%PDF-"),
            ("workbook.xlsx", "v2-workbook.xlsx", "PK"), ("season.json", "v2-season.json", "{"),
        })
        {
            var (saved, path) = await SaveAsync(page, file);
            Assert.StartsWith("harbour-vale-", saved, StringComparison.Ordinal);
            Assert.EndsWith(name, saved, StringComparison.Ordinal);
            Assert.StartsWith(begins, Encoding.Latin1.GetString(await File.ReadAllBytesAsync(path)), StringComparison.Ordinal);
        }

        await page.GetByLabel("The draft as it stands").CheckAsync();
        await page.Locator("#paper").SelectOptionAsync("letter");
        await page.GetByLabel("in greys").CheckAsync();
        await page.Locator("details > summary").First.ClickAsync();
        await page.GetByLabel("Notes", new() { Exact = true }).CheckAsync();
        await page.GetByLabel("Load", new() { Exact = true }).UncheckAsync();
        var (draft, drawn) = await SaveAsync(page, "poster.svg");
        Assert.EndsWith("draft-poster-letter-grey.svg", draft, StringComparison.Ordinal);
        var tracks = XDocument.Load(drawn).Descendants().Select(element => (string?)element.Attribute("data-track")).OfType<string>().ToList();
        Assert.Contains("notes", tracks, StringComparer.Ordinal);
        Assert.DoesNotContain("load", tracks, StringComparer.Ordinal);
        // The picture beside the choices is the same poster.
        Assert.Contains("edition=draft", await page.Locator("img.preview").GetAttributeAsync("src"), StringComparison.Ordinal);
        Assert.True(await page.EvaluateAsync<bool>("() => new Promise(done => { const img = document.querySelector('img.preview'); const ready = () => done(img.naturalWidth > 0); img.complete ? ready() : img.addEventListener('load', ready); })"));
    }

    /// <summary>The season got weeks since the version: the file is not made of another week without a word.</summary>
    [Fact]
    public async Task A_week_that_the_version_does_not_have_is_said()
    {
        await using var window = await OpenAsync();
        var page = window.Page;
        await page.EvaluateAsync("() => { document.querySelector('#week').selectedOptions[0].value = 99; }");
        await page.Locator("button[formaction$='/week.pdf']").ClickAsync();
        await Assertions.Expect(page.Locator(".sheet .refused")).ToContainTextAsync("no such week");
        await window.AssertAccessibleAsync();
    }

    [Fact]
    public async Task Which_matches_are_key_is_seen_only_where_that_was_switched_on()
    {
        await using var window = await OpenAsync();
        var (_, hidden) = await SaveAsync(window.Page, "poster.svg");
        Assert.DoesNotContain("match-key", await MarksAsync(hidden), StringComparison.Ordinal);
        await window.Page.GetByLabel("Show which matches are key").CheckAsync();
        var (_, shown) = await SaveAsync(window.Page, "poster.svg");
        Assert.Contains("match-key", await MarksAsync(shown), StringComparison.Ordinal);

        static async Task<string> MarksAsync(string path) => (await File.ReadAllTextAsync(path)).Split("</style>")[1];
    }

    [Theory]
    [InlineData(360, false)]
    [InlineData(1200, true)]
    public async Task The_head_coach_s_page_opens_from_a_file_with_everything_shut(int width, bool dark)
    {
        await using var giving = await OpenAsync();
        var (_, path) = await SaveAsync(giving.Page, "head-coach.html");
        await using var window = await browser.OpenAsync(demo.Workspace, "about:blank", width, dark: dark);
        await window.Page.Context.SetOfflineAsync(true);
        List<string> asked = [];
        window.Page.Request += (_, request) => asked.Add(request.Url);
        await window.Page.GotoAsync(new Uri(path).AbsoluteUri);
        await Assertions.Expect(window.Page.Locator("h1")).ToContainTextAsync("Harbour Vale");
        await Assertions.Expect(window.Page.Locator("h2").First).ToHaveTextAsync("What I need from practice");
        Assert.True(await window.Page.EvaluateAsync<bool>("() => document.fonts.ready.then(fonts => [...fonts].some(font => font.family.includes('Inter') && font.status === 'loaded'))"));
        Assert.All(asked, url => Assert.True(url.StartsWith("file:", StringComparison.Ordinal) || url.StartsWith("data:", StringComparison.Ordinal), url));
        await window.AssertFitsAsync();
        // The page forbids scripts to itself: axe is let in by the tool's own door.
        await window.AssertAccessibleAsync();
        Assert.Empty(window.Complaints);
    }

    /// <summary>Poppler's word boxes of the PDF against the browser's own lengths of the SVG; half a px of the drawing.</summary>
    [Theory]
    [InlineData("a3")]
    [InlineData("letter")]
    public async Task What_is_printed_is_as_wide_as_what_is_seen(string paper)
    {
        await using var giving = await OpenAsync();
        await giving.Page.Locator("#paper").SelectOptionAsync(paper);
        var (_, svg) = await SaveAsync(giving.Page, "poster.svg");
        var (_, pdf) = await SaveAsync(giving.Page, "poster.pdf");
        await using var window = await browser.OpenAsync(demo.Workspace, new Uri(svg).AbsoluteUri);
        var seen = await window.Page.EvaluateAsync<SeenText[]>("""
            () => document.fonts.ready.then(() => [...document.querySelectorAll('text')].filter(text => text.getNumberOfChars() > 0).map(text => {
              const place = point => new DOMPoint(point.x, point.y).matrixTransform(text.getCTM());
              const [from, to] = [place(text.getStartPositionOfChar(0)), place(text.getEndPositionOfChar(text.getNumberOfChars() - 1))];
              return { text: text.textContent, from: from.x * .75, to: to.x * .75, y: from.y * .75 };
            }))
            """);
        var drawing = XDocument.Load(svg).Root!;
        var pointsPerPx = Number(((string)drawing.Attribute("width")!).Replace("pt", "", StringComparison.Ordinal)) / Number(((string)drawing.Attribute("viewBox")!).Split(' ')[2]);
        XNamespace html = "http://www.w3.org/1999/xhtml";
        var printed = XDocument.Parse(await BoxesAsync(pdf)).Descendants(html + "word").Select(word => (
            Left: Number((string)word.Attribute("xMin")!), Right: Number((string)word.Attribute("xMax")!), Top: Number((string)word.Attribute("yMin")!), Bottom: Number((string)word.Attribute("yMax")!))).ToList();
        Assert.True(seen.Length > 200, $"{seen.Length} texts");
        Assert.All(seen, text =>
        {
            var row = printed.Where(word => word.Top < text.Y && text.Y < word.Bottom + 0.5).ToList();
            Assert.True(row.Exists(word => Math.Abs(word.Left - text.From) <= pointsPerPx / 2), $"Nothing printed begins where '{text.Text}' is seen to, at {text.From:0.00}.");
            Assert.True(row.Exists(word => Math.Abs(word.Right - text.To) <= pointsPerPx / 2), $"Nothing printed ends where '{text.Text}' is seen to, at {text.To:0.00}.");
        });
    }

    private async Task<BrowserWindow> OpenAsync(int width = 1440, bool dark = false)
    {
        var window = await browser.OpenAsync(demo.Workspace, "/year", width, dark: dark);
        await window.Page.GetByRole(AriaRole.Link, new() { Name = "Hand out" }).ClickAsync();
        await Assertions.Expect(window.Page.Locator("h1")).ToHaveTextAsync("Hand out");
        return window;
    }

    private static async Task<(string Name, string Path)> SaveAsync(IPage page, string file)
    {
        var download = await page.RunAndWaitForDownloadAsync(() => page.Locator($"button[formaction$='/{file}']").ClickAsync());
        var path = Path.Combine(Directory.CreateTempSubdirectory("seasonwright-handed-out-").FullName, download.SuggestedFilename);
        await download.SaveAsAsync(path);
        return (download.SuggestedFilename, path);
    }

    private static async Task<string> BoxesAsync(string pdf)
    {
        using var reader = Process.Start(new ProcessStartInfo("pdftotext", ["-bbox", pdf, "-"]) { RedirectStandardOutput = true, UseShellExecute = false })!;
        var text = await reader.StandardOutput.ReadToEndAsync();
        await reader.WaitForExitAsync();
        Assert.Equal(0, reader.ExitCode);
        return text;
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private sealed class SeenText
    {
        public string Text { get; set; } = "";

        public double From { get; set; }

        public double To { get; set; }

        public double Y { get; set; }
    }
}
