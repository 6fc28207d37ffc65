using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Lists;

/// <summary>The page that takes breaks and other dates in. The lists are the invented samples under tests/Cases/events, and some lines of our own.</summary>
public sealed class BreaksPageTests(BrowserFixture browser)
{
    private static readonly string Cases = Path.Combine(WorkspaceProcess.Root, "tests", "Cases", "events");

    [Fact]
    public async Task The_last_question_takes_lines_as_people_write_them_and_ends_on_the_year()
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await browser.OpenAsync(workspace, "/seasons/new");
        var page = window.Page;
        await OpenAsync(page, "2026-08-03");
        await page.FillAsync("#f-text", "Autumn holiday 12-18 October\nExams: 17 Jan - 28 Jan\nHall closed 23 Dec until 2 Jan\n");
        await Assertions.Expect(page.Locator(".rows tbody tr")).ToHaveCountAsync(3);
        await Assertions.Expect(page.Locator(".rows tbody tr").First).ToContainTextAsync("Mon 12 Oct – Sun 18 Oct 2026");
        await window.AssertAccessibleAsync();
        await ListWindow.TakeAsync(page);
        await Assertions.Expect(page.Locator("svg.drawing [data-item^=event]")).ToHaveCountAsync(3);
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task Days_that_the_list_leaves_open_are_typed_and_a_wrong_answer_is_told_and_kept()
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await browser.OpenAsync(workspace, "/seasons/new");
        var page = window.Page;
        await OpenAsync(page, "2026-08-03");
        await page.SetInputFilesAsync("#f-file", Path.Combine(Cases, "events-12-notice.txt"));
        var question = page.Locator(".question", new() { HasText = "Exams begin 10 May" });
        var typed = question.Locator("[data-free]");
        await typed.FillAsync("sometime");
        await typed.PressAsync("Tab");
        await Assertions.Expect(question.Locator(".wrong")).ToContainTextAsync("sometime");
        await typed.FillAsync("10 May - 21 May 2027");
        await typed.PressAsync("Tab");
        await Assertions.Expect(page.Locator(".rows")).ToContainTextAsync("Mon 10 May – Fri 21 May 2027");
    }

    [Theory]
    [InlineData(390, true)]
    public async Task It_fits_and_can_be_read_by_everyone(int width, bool dark)
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await browser.OpenAsync(workspace, "/seasons/new", width, dark: dark);
        var page = window.Page;
        await OpenAsync(page, "2026-08-03");
        await page.SetInputFilesAsync("#f-file", Path.Combine(Cases, "events-10-breaks.csv"));
        await page.Locator(".rows").WaitForAsync();
        foreach (var summary in await page.Locator("summary").AllAsync()) await summary.ClickAsync();
        await window.AssertFitsAsync(768);
        await window.AssertAccessibleAsync();
        Assert.Empty(window.Complaints);
    }

    private static async Task OpenAsync(IPage page, string first)
    {
        await ListWindow.StartSeasonAsync(page, first);
        await page.ClickAsync("a.quiet");
        await page.WaitForURLAsync("**/breaks?new=true");
    }
}
